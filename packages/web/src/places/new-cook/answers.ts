import {
  type Bite,
  type Cook,
  type CutId,
  fromSi,
  type Piece,
  type Pit,
  type PitType,
  quantity,
  type Recipe,
  type Stage,
} from '@pitwright/model';
import { Temporal } from 'temporal-polyfill';
import { sensible } from './sensible.ts';
import { SKIES, type Sky, WINDS, type Wind } from './skies.ts';

/** One line of meat as answered. Masses stay text until they are read. */
export interface MeatAnswer {
  readonly key: string;
  readonly cut: CutId;
  readonly count: number;
  readonly mass: string;
  readonly bite: Bite;
  /** From a recipe: its own stages are kept. */
  readonly from?: Piece;
}

/** The answers of a new cook: twelve at most, each with something sensible in it from the start. */
export interface Answers {
  readonly meats: readonly MeatAnswer[];
  readonly adults: number;
  readonly children: number;
  /** `2027-09-12` and `18:00` on the wall of the zone. */
  readonly day: string;
  readonly hour: string;
  readonly pit: PitType | { readonly kept: Pit };
  readonly heat: string;
  readonly sky: Sky;
  readonly wind: Wind;
  readonly name: string;
}

export type Units = 'us' | 'metric';

export function meatAnswer(cut: CutId, units: Units, key: string): MeatAnswer {
  const known = sensible(cut);
  return {
    key,
    cut: known.cut,
    count: known.count,
    mass: units === 'us' ? `${known.massLb} lb` : `${known.massKg} kg`,
    bite: known.bite,
  };
}

/** Saturday to come, at least two days ahead, so that there is a day before. */
function nextSaturday(today: Temporal.PlainDate): Temporal.PlainDate {
  const ahead = (6 - today.dayOfWeek + 7) % 7;
  return today.add({ days: ahead < 2 ? ahead + 7 : ahead });
}

export function firstAnswers(units: Units, zone: string, key: string): Answers {
  return {
    meats: [meatAnswer('loin-back-ribs', units, key)],
    adults: 4,
    children: 0,
    day: nextSaturday(Temporal.Now.plainDateISO(zone)).toString(),
    hour: '18:00',
    pit: 'kettle',
    heat: units === 'us' ? '250 °F' : '120 °C',
    sky: 'mild',
    wind: 'still',
    name: '',
  };
}

/** The same, with the pieces of a recipe on the pit. */
export function answersFrom(recipe: Recipe, answers: Answers, massText: (piece: Piece) => string): Answers {
  return {
    ...answers,
    name: recipe.name,
    meats: recipe.pieces.map((piece) => ({
      key: piece.id,
      cut: piece.cut,
      count: piece.count,
      mass: massText(piece),
      bite: piece.bite,
      from: piece,
    })),
  };
}

/** Serving hour in UTC. @throws RangeError where the clock skips that hour on that day */
export function tableAt(answers: Answers, zone: string): string {
  return Temporal.PlainDateTime.from(`${answers.day}T${answers.hour}`)
    .toZonedDateTime(zone, { disambiguation: 'reject' })
    .toInstant()
    .toString();
}

/** Half an hour of serving window: common practice, no source. */
const WINDOW_MIN = 30;

const pitOf = (answers: Answers, id: string, name: string, temperature: Pit['temperature']): Pit =>
  typeof answers.pit === 'string'
    ? { id, name, type: answers.pit, temperature, gauge: 'grate' }
    : { ...answers.pit.kept, temperature };

/** The cook that the answers make. Masses and heat must have been read already. */
export function cookOf(
  answers: Answers,
  given: {
    readonly id: string;
    readonly zone: string;
    readonly name: string;
    readonly pitName: string;
    readonly weatherWords: string;
    readonly masses: readonly NonNullable<Piece['mass']>[];
    readonly heat: Pit['temperature'];
    readonly recipe?: Recipe;
  },
): Cook {
  const at = tableAt(answers, given.zone);
  const sky = SKIES[answers.sky];
  return {
    id: given.id,
    name: given.name,
    isDemo: false,
    ...(given.recipe ? { recipe: { id: given.recipe.id, version: given.recipe.version } } : {}),
    rules: 'home-us',
    rulesTold: false,
    zone: given.zone,
    table: { at, until: Temporal.Instant.from(at).add({ minutes: WINDOW_MIN }).toString() },
    chanceAsked: 0.9,
    guests: { adults: answers.adults, children: answers.children },
    hands: [{ id: 'you', name: 'You', sleeps: { from: '23:00', to: '06:30' } }],
    kitchen: { burners: 1, ovens: 1 },
    weather: {
      air: quantity('temperature', sky.airC, '°C'),
      relativeHumidity: sky.relativeHumidity,
      wind: quantity('speed', WINDS[answers.wind], 'm/s'),
      words: given.weatherWords,
    },
    pit: pitOf(answers, 'pit', given.pitName, given.heat),
    pieces: answers.meats.map((meat, index) => pieceOf(meat, index, given.masses[index]!, given.heat)),
    ...(given.recipe?.labels && { labels: given.recipe.labels }),
    formulas: given.recipe?.formulas ?? [],
  };
}

/** As one would set it: a heat of a proposed stage in steps of five of the degrees that the pit's is written in. */
function asSet(heat: Stage['pit'], like: Pit['temperature']): Stage['pit'] {
  if (!heat || like.writtenIn !== '°F') return heat;
  return quantity('temperature', 5 * Math.round(fromSi('temperature', heat.si, '°F') / 5), '°F');
}
const stageAsSet = (stage: Stage, like: Pit['temperature']): Stage => {
  const pit = asSet(stage.pit, like);
  return pit ? { ...stage, pit } : stage;
};

function pieceOf(
  meat: MeatAnswer,
  index: number,
  mass: NonNullable<Piece['mass']>,
  heat: Pit['temperature'],
): Piece {
  const letter = String.fromCharCode(65 + index);
  const isAsInRecipe = meat.from && meat.from.cut === meat.cut && meat.from.bite === meat.bite;
  return {
    ...(isAsInRecipe ? meat.from : {}),
    id: letter.toLowerCase(),
    letter,
    cut: meat.cut,
    count: meat.count,
    mass,
    bite: meat.bite,
    stages: isAsInRecipe
      ? meat.from!.stages
      : sensible(meat.cut)
          .stages(meat.bite)
          .map((stage) => stageAsSet(stage, heat)),
  };
}
