import type { Cook, Said } from '@pitwright/model';
import type { CookForecast } from '../forecast/types.ts';
import { type Price, priceCook } from '../schedule/price.ts';
import type { Alternative, CookPlan } from '../schedule/types.ts';
import { type Variant, variantsOf } from './variants.ts';

/** Foresees the pieces named of a cook; the caller says how many members, where and with which seed. */
export type Foresee = (cook: Cook, pieceIds: readonly string[]) => CookForecast;

/** Members of a preview; the plan's own columns are cut to as many. */
interface Preview {
  readonly members: number;
  readonly foresee: Foresee;
}

/** A way counts as help when it lifts the chance by so much. */
const HELP = 0.05;
const MOST_WAYS = 4;
/** Sleep that makes a night worth another way [s]. */
const NIGHT_MATTERS_S = 1800;

/**
 * The plan with other ways beside it: what a night could be spared, and what would reach the chance asked.
 * Each way is foreseen with the preview's members and priced by its own best starts, and so is the cook as it stands,
 * over the same members and draws. What is shown is the plan's own figure and the difference between the two, which
 * the few members know far better than either level; the plan's own row is the plan.
 */
export function withAlternatives(
  plan: CookPlan,
  cook: Cook,
  forecast: CookForecast,
  preview: Preview,
): CookPlan {
  const base = firstMembers(forecast, preview.members);
  const asItStands = priceCook(cook, base);
  const isShort = plan.chanceAllOnTime < plan.chanceAsked;
  const ownPrice: Price = {
    ...asItStands,
    chanceAllOnTime: plan.chanceAllOnTime,
    nightWorkS: plan.nightWorkS,
    firstOnAt: plan.firstOnAt,
  };
  const priced = variantsOf(cook)
    .filter((variant) => (variant.about === 'night' ? plan.nightWorkS > NIGHT_MATTERS_S : isShort))
    .map((variant) => ({
      variant,
      price: besideOwn(priceCook(variant.cook, foreseen(variant, base, preview)), asItStands, ownPrice),
    }));
  const ofNight = priced.filter(({ variant }) => variant.about === 'night');
  const ofChance = priced
    .filter(({ price }) => price.chanceAllOnTime >= plan.chanceAllOnTime + HELP)
    .sort((a, b) => b.price.chanceAllOnTime - a.price.chanceAllOnTime)
    .slice(0, MOST_WAYS);
  const tend: Alternative[] = ofNight.length
    ? [
        {
          id: 'tend',
          said: { id: 'alternative.tend' },
          buys: [{ id: 'price.as-asked' }],
          costs:
            plan.nightWorkS > 0 ? [{ id: 'price.sleep-lost', params: { seconds: plan.nightWorkS } }] : [],
          ...figures(ownPrice),
          isAdvised: false,
        },
      ]
    : [];
  const alternatives = advised(
    [...tend, ...ofNight.map((one) => alternativeOf(one.variant, one.price, ownPrice))],
    plan.chanceAsked,
  );
  return {
    ...plan,
    alternatives,
    // A way that stands in both lists is the same way in both.
    wouldReach: ofChance.map(
      ({ variant, price }) =>
        alternatives.find(({ id }) => id === variant.id) ?? alternativeOf(variant, price, ownPrice),
    ),
  };
}

/** A way's price as its difference from the same cook over the same members, laid on the plan's own figures. */
function besideOwn(price: Price, asItStands: Price, own: Price): Price {
  const chance = own.chanceAllOnTime + price.chanceAllOnTime - asItStands.chanceAllOnTime;
  return {
    ...price,
    chanceAllOnTime: Math.min(1, Math.max(0, chance)),
    nightWorkS: Math.max(0, own.nightWorkS + price.nightWorkS - asItStands.nightWorkS),
  };
}

function foreseen(variant: Variant, base: CookForecast, preview: Preview): CookForecast {
  if (variant.pieceIds.length === 0) return base;
  const changed = preview.foresee(variant.cook, variant.pieceIds);
  return {
    ...base,
    pieces: variant.cook.pieces.map(
      (piece) =>
        changed.pieces.find((one) => one.pieceId === piece.id) ??
        base.pieces.find((one) => one.pieceId === piece.id)!,
    ),
  };
}

/** The first members alone: members are the same whatever their number. */
function firstMembers(forecast: CookForecast, members: number): CookForecast {
  if (forecast.members <= members) return forecast;
  return {
    ...forecast,
    members,
    pieces: forecast.pieces.map((piece) => ({
      ...piece,
      members,
      readyS: piece.readyS.subarray(0, members),
      pastBiteS: piece.pastBiteS.subarray(0, members),
    })),
  };
}

const figures = (price: Price): Pick<Alternative, 'chanceAllOnTime' | 'nightWorkS' | 'firstOnAt'> => ({
  chanceAllOnTime: price.chanceAllOnTime,
  nightWorkS: price.nightWorkS,
  firstOnAt: price.firstOnAt,
});

function alternativeOf(variant: Variant, price: Price, base: Price): Alternative {
  const buys: Said[] = [];
  const costs: Said[] = [...variant.costs];
  const spared = base.nightWorkS - price.nightWorkS;
  if (spared >= 600) buys.push({ id: 'price.sleep-won', params: { seconds: spared } });
  if (spared <= -600) costs.push({ id: 'price.sleep-lost', params: { seconds: -spared } });
  const gained = price.chanceAllOnTime - base.chanceAllOnTime;
  if (gained >= HELP)
    buys.push({ id: 'price.chance-won', params: { from: base.chanceAllOnTime, to: price.chanceAllOnTime } });
  if (gained <= -HELP)
    costs.push({
      id: 'price.chance-lost',
      params: { from: base.chanceAllOnTime, to: price.chanceAllOnTime },
    });
  return { id: variant.id, said: variant.said, buys, costs, ...figures(price), isAdvised: false };
}

/** The objective's own order: the chance asked, then sleep; among equals the one that changes least, which is first. */
function advised(alternatives: readonly Alternative[], asked: number): Alternative[] {
  const shortOf = (one: Alternative): number => Math.max(0, asked - (one.chanceAllOnTime ?? 0));
  const best = [...alternatives].sort(
    (a, b) =>
      Math.round((shortOf(a) - shortOf(b)) / HELP) ||
      Math.round(((a.nightWorkS ?? 0) - (b.nightWorkS ?? 0)) / NIGHT_MATTERS_S),
  )[0];
  return alternatives.map((one) => ({ ...one, isAdvised: one === best }));
}
