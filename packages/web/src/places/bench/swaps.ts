import { findIngredient, type Ingredient } from '@pitwright/engine/sauce';
import type { Formula } from '@pitwright/model';

/** What stands in for what, the most usual first. */
const FAMILIES: Readonly<Record<string, readonly string[]>> = {
  liquid: [
    'apple_juice',
    'water',
    'cola',
    'pineapple_juice',
    'orange_juice',
    'coffee_brewed',
    'tea_black',
    'beer_regular',
    'stout',
    'ginger_ale',
    'root_beer',
    'wine_red',
    'apple_cider_cloudy',
    'cherry_juice_tart',
    'stock_beef',
    'stock_chicken',
  ],
  sweet: [
    'sugar_white',
    'honey',
    'sugar_brown_packed',
    'molasses',
    'maple_syrup',
    'agave_syrup',
    'corn_syrup_dark',
    'sorghum_syrup',
    'jam_apricot',
  ],
  sour: [
    'vinegar_cider_5',
    'lemon_juice',
    'vinegar_white_5',
    'lime_juice',
    'vinegar_malt_5',
    'vinegar_red_wine_6',
    'vinegar_rice_4',
    'vinegar_balsamic_6',
    'tamarind',
  ],
  heat: ['cayenne', 'chipotle_ground', 'paprika', 'hot_sauce_vinegar', 'jalapeno_raw', 'chile_red_raw'],
};

const SOUR_JUICES = new Set(['lemon_juice', 'lime_juice']);

function familyOf({ id, category }: Ingredient): keyof typeof FAMILIES | undefined {
  if (SOUR_JUICES.has(id) || category === 'vinegar' || id === 'tamarind') return 'sour';
  if (category === 'liquid' || category === 'juice' || category === 'soft_drink') return 'liquid';
  if (category === 'sugar' || category === 'syrup') return 'sweet';
  return FAMILIES.heat!.includes(id) ? 'heat' : undefined;
}

export const isLiquid = (ingredient: Ingredient | undefined): boolean =>
  ingredient !== undefined && familyOf(ingredient) === 'liquid';

/** What may stand in this one's place. */
export function othersFor(ingredient: Ingredient): readonly Ingredient[] {
  const family = familyOf(ingredient);
  return (family ? FAMILIES[family]! : []).flatMap((id) => {
    const other = id === ingredient.id ? undefined : findIngredient(id);
    return other && other.densityGPerMl > 0 ? [other] : [];
  });
}

/** The lines that something else could stand in for. */
export const swappable = (formula: Formula): readonly { readonly index: number; readonly name: string }[] =>
  formula.lines.flatMap((line, index) => {
    const ingredient = findIngredient(line.ingredient);
    return ingredient && familyOf(ingredient) ? [{ index, name: ingredient.name }] : [];
  });
