/**
 * A pot on a burner: heat in, water out. The temperature climbs until what evaporates takes all the heat; if that is
 * the boiling point the pot is limited by energy, below it by its open surface.
 */
import { saturationPressurePa } from '../air/saturation.ts';
import { latentHeatJKg } from '../air/water.ts';
import { type Batch, batchMassG } from './batch.ts';
import { boilingTemperatureC } from './boiling.ts';
import { LID_SHARE, type Lid, wallLossW } from './cooktop.ts';
import { evaporate } from './evaporation.ts';
import { stillAirFlux } from './openSurface.ts';
import { batchDensity, batchSpecificHeat, waterActivityOf } from './solution.ts';

/** How the pot is heated: a told power into the food, or a flame turned until it just simmers. */
export type Heating =
  | { readonly by: 'power'; readonly netW: number }
  /** Held this far below the boil [K]: 5 smiles, 2 bubbles lazily, 1 bubbles all over. */
  | { readonly by: 'held'; readonly belowBoilK: number; readonly heatUpNetW: number };

export interface Pan {
  readonly diameterM: number;
  readonly heightM: number;
}

export interface Kitchen {
  readonly pressurePa: number;
  readonly airC: number;
  readonly airHumidityRatio: number;
}

export interface SimmerSetup {
  readonly pan: Pan;
  readonly heating: Heating;
  readonly lid: Lid;
  readonly kitchen: Kitchen;
  readonly startC: number;
  /** Multiplies the still-air law: its doubt, or wind (1.3–2 outdoors). */
  readonly surfaceFactor?: number;
  /** Where to stop [g of water off]; missing: at the end of the table. */
  readonly waterOffG?: number;
}

export interface SimmerPoint {
  readonly timeS: number;
  readonly sauceC: number;
  readonly massG: number;
  readonly waterOffG: number;
  /** [kg/s] */
  readonly rateKgS: number;
  readonly limitedBy: 'energy' | 'surface';
}

/** What the pot is at some water driven off; everything a step needs. */
interface Node {
  readonly massG: number;
  readonly waterActivity: number;
  readonly boilingC: number;
  readonly heatCapacity: number;
  readonly volumeM3: number;
}

export interface SimmerTable {
  readonly waterOffG: number;
  readonly at: (waterOffG: number) => Node;
}

const NODES = 9;

/** The batch along its simmer, down to `waterOffG` driven off, interpolated between nine compositions. */
export function simmerTable(batch: Batch, waterOffG: number, pressurePa: number): SimmerTable {
  const nodes: Node[] = [];
  let b = batch;
  for (let i = 0; i < NODES; i++) {
    if (i > 0 && waterOffG > 0) b = evaporate(b, waterOffG / (NODES - 1));
    const massG = batchMassG(b);
    const activityAt = waterActivityOf(b);
    nodes.push({
      massG,
      waterActivity: activityAt(25),
      boilingC: boilingTemperatureC(activityAt, pressurePa),
      heatCapacity: (massG / 1000) * batchSpecificHeat(b),
      volumeM3: massG / 1000 / batchDensity(b),
    });
  }
  const at = (offG: number): Node => {
    if (waterOffG <= 0) return nodes[0]!;
    const place = Math.min(NODES - 1, Math.max(0, (offG / waterOffG) * (NODES - 1)));
    const i = Math.min(NODES - 2, Math.floor(place));
    const share = place - i;
    const [a, z] = [nodes[i]!, nodes[i + 1]!];
    const mix = (x: number, y: number): number => x + (y - x) * share;
    return {
      massG: mix(a.massG, z.massG),
      waterActivity: mix(a.waterActivity, z.waterActivity),
      boilingC: mix(a.boilingC, z.boilingC),
      heatCapacity: mix(a.heatCapacity, z.heatCapacity),
      volumeM3: mix(a.volumeM3, z.volumeM3),
    };
  };
  return { waterOffG, at };
}

const LONGEST_STEP_S = 20;
/** A simmer that has not got there in this time never will. */
const LONGEST_S = 12 * 3600;

/** Share of the air at the surface that is vapour, at most. */
const NEARLY_ALL_VAPOUR = 0.99;

const panAreaM2 = (pan: Pan): number => (Math.PI * pan.diameterM * pan.diameterM) / 4;

/** Vapour leaving the surface at a temperature below the boil [kg/s]. */
function surfaceRate(setup: SimmerSetup, node: Node, sauceC: number): number {
  const { kitchen, pan, lid } = setup;
  const flux = stillAirFlux({
    waterC: sauceC,
    // At the boil itself the humidity ratio has no end, while the law is flat: it is held a hair below.
    waterActivity: Math.min(
      node.waterActivity,
      (NEARLY_ALL_VAPOUR * kitchen.pressurePa) / saturationPressurePa(sauceC),
    ),
    airC: kitchen.airC,
    airHumidityRatio: kitchen.airHumidityRatio,
    pressurePa: kitchen.pressurePa,
  });
  return Math.max(0, flux) * panAreaM2(pan) * LID_SHARE[lid] * (setup.surfaceFactor ?? 1);
}

const lossW = (setup: SimmerSetup, node: Node, sauceC: number): number =>
  wallLossW(setup.pan.diameterM, node.volumeM3 / panAreaM2(setup.pan), sauceC, setup.kitchen.airC);

interface Step {
  readonly sauceC: number;
  readonly rateKgS: number;
  readonly limitedBy: SimmerPoint['limitedBy'];
}

/** Zero of a falling function whose value at `high` is known and negative: false position, the stale end halved (Illinois). */
function zeroOf(f: (x: number) => number, low: number, high: number, fHigh: number): number {
  let [a, fa] = [low, f(low)];
  let [b, fb] = [high, fHigh];
  if (fa <= 0) return a;
  for (let i = 0; i < 60; i++) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (Math.abs(fx) < 0.01 || b - a < 1e-6) return x;
    if (fx > 0) {
      [a, fa] = [x, fx];
      fb /= 2;
    } else {
      [b, fb] = [x, fx];
      fa /= 2;
    }
  }
  return (a + b) / 2;
}

/** One step under a told power, implicit in the temperature: the heat left over falls steadily as it rises. */
function powerStep(setup: SimmerSetup, node: Node, sauceC: number, netW: number, dtS: number): Step {
  const capacity = node.heatCapacity / dtS;
  const surplus = (t: number): number =>
    netW - lossW(setup, node, t) - surfaceRate(setup, node, t) * latentHeatJKg(t) - capacity * (t - sauceC);
  const boil = surplus(node.boilingC);
  if (boil >= 0) {
    const open = surfaceRate(setup, node, node.boilingC);
    const extra = (boil / latentHeatJKg(node.boilingC)) * LID_SHARE[setup.lid];
    return { sauceC: node.boilingC, rateKgS: open + extra, limitedBy: 'energy' };
  }
  const t = zeroOf(surplus, Math.min(sauceC, setup.kitchen.airC), node.boilingC, boil);
  return { sauceC: t, rateKgS: surfaceRate(setup, node, t), limitedBy: 'surface' };
}

function step(setup: SimmerSetup, node: Node, sauceC: number, dtS: number): Step {
  const { heating } = setup;
  if (heating.by === 'power') return powerStep(setup, node, sauceC, heating.netW, dtS);
  const holdC = node.boilingC - heating.belowBoilK;
  if (sauceC < holdC) {
    const up = powerStep(setup, node, sauceC, heating.heatUpNetW, dtS);
    if (up.sauceC < holdC) return up;
  }
  return { sauceC: holdC, rateKgS: surfaceRate(setup, node, holdC), limitedBy: 'surface' };
}

export interface SimmerCurve {
  readonly points: readonly SimmerPoint[];
  /** Until the water was off [s]; ∞ where it never is. */
  readonly totalS: number;
  /** Until it came within 3 K of the hottest it gets [s]. */
  readonly heatingS: number;
}

const SETTLED_K = 3;

/** The whole simmer from `startC` until the water is off, in steps of at most 20 s. */
export function simmerCurve(table: SimmerTable, setup: SimmerSetup): SimmerCurve {
  const goalG = setup.waterOffG ?? table.waterOffG;
  let offG = 0;
  let timeS = 0;
  let sauceC = setup.startC;
  const points: SimmerPoint[] = [
    { timeS, sauceC, waterOffG: 0, massG: table.at(0).massG, rateKgS: 0, limitedBy: 'surface' },
  ];
  let totalS = Infinity;
  while (timeS < LONGEST_S) {
    const now = step(setup, table.at(offG), sauceC, LONGEST_STEP_S);
    const gainG = now.rateKgS * 1000 * LONGEST_STEP_S;
    const isSettled = now.sauceC - sauceC < 0.01;
    const isLast = goalG > 0 ? offG + gainG >= goalG : isSettled;
    const share = isLast && goalG > 0 ? (goalG - offG) / gainG : 1;
    timeS += LONGEST_STEP_S * share;
    offG += gainG * share;
    sauceC = now.sauceC;
    points.push({ timeS, waterOffG: offG, massG: table.at(offG).massG, ...now });
    if (isLast) {
      totalS = timeS;
      break;
    }
    // Nothing gets warmer and at this rate it would take longer than anyone stays.
    if (isSettled && now.rateKgS * 1000 * (LONGEST_S - timeS) < goalG - offG) break;
  }
  const hottestC = points.reduce((most, point) => Math.max(most, point.sauceC), -Infinity);
  const heatingS = points.find((point) => point.sauceC >= hottestC - SETTLED_K)!.timeS;
  return { points, totalS, heatingS };
}

/** Depth of the sauce over the pan's height; over two thirds there is no room for foam (judgement). */
export const fillShare = (batch: Batch, pan: Pan): number =>
  batchMassG(batch) / 1000 / batchDensity(batch) / panAreaM2(pan) / pan.heightM;
export const FOAM_ROOM = 2 / 3;
