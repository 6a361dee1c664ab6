/** What a label of our own would say of a batch. */
import { type Batch, batchMassG, saltG, sugarsG } from './batch.ts';

export interface Nutrition {
  readonly servingG: number;
  readonly energyKcal: number;
  readonly fatG: number;
  readonly carbohydrateG: number;
  readonly sugarsG: number;
  readonly fibreG: number;
  readonly proteinG: number;
  readonly saltG: number;
  readonly alcoholG: number;
}

/** One serving [g] of the finished batch, by the table's own energy factors; carbohydrate holds fibre and acids, as USDA counts it. */
export function nutrition(b: Batch, servingG: number): Nutrition {
  const share = servingG / batchMassG(b);
  const carbohydrateG =
    sugarsG(b) +
    b.fibreG +
    b.restG +
    Object.values(b.acidsG).reduce((sum, g) => sum + g, 0) -
    b.vinegarAceticG;
  return {
    servingG,
    energyKcal: b.energyKcal * share,
    fatG: b.fatG * share,
    carbohydrateG: carbohydrateG * share,
    sugarsG: sugarsG(b) * share,
    fibreG: b.fibreG * share,
    proteinG: b.proteinG * share,
    saltG: saltG(b) * share,
    alcoholG: b.ethanolG * share,
  };
}
