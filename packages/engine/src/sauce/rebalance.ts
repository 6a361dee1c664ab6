/// <reference path="./quadprog.d.ts" />
/**
 * The least change of a formula that brings back sweet, sour, salt, heat and thickness after a swap: a small convex
 * quadratic programme at one finished mass, where all five are linear in the masses of the lines.
 */
import type { Said } from '@pitwright/model';
import { solveQP } from 'quadprog';
import type { Ingredient } from '../food/data/ingredients.ts';
import { addBatches, type Batch, type BatchLine, batchMassG, batchPerGram, potAndLate } from './batch.ts';
import { evaporate } from './evaporation.ts';
import { jndAt, stepsApart, TASTES, type Taste, tastesOf } from './jnd.ts';
import { waterForMass } from './target.ts';

export interface RebalanceLine extends BatchLine {
  readonly locked?: boolean;
}

export interface Rebalance {
  /** What it should taste like, per 100 g finished. */
  readonly wanted: Readonly<Record<Taste, number>>;
  /** The formula after the swap. */
  readonly lines: readonly RebalanceLine[];
  /** What may be added that is not in it yet: sugar, vinegar, salt, cayenne, tomato paste. */
  readonly mayAdd?: readonly Ingredient[];
  readonly finishedG: number;
}

export interface LineShift {
  readonly ingredient: Ingredient;
  readonly beforeG: number;
  readonly afterG: number;
}

export interface Rebalanced {
  readonly shifts: readonly LineShift[];
  readonly finished: Batch;
  readonly waterOffG: number;
  /** Noticeable steps from what was wanted, before and after. */
  readonly stepsBefore: Readonly<Record<Taste, number>>;
  readonly stepsAfter: Readonly<Record<Taste, number>>;
  readonly said: readonly Said[];
}

export type RebalanceAnswer =
  | ({ readonly ok: true } & Rebalanced)
  | { readonly ok: false; readonly problems: readonly Said[] };

/** One step off counts as much as changing a line by 300 %: taste first, then little change. */
const TASTE_WEIGHT = 9;
/** Lines smaller than this count as this when their change is called large or small [g per kg finished]. */
const SMALL_LINE = 8;
/** A line that was not there costs more than changing one that is. */
const NEW_LINE_COST = 2;
/** Grams of a finished step that a cook does not weigh. */
const UNWEIGHED_G = 0.05;
const ROUNDS = 6;
/** Relative change that is small beside the others: each round makes changing such lines dearer, so that few lines change. */
const FEW_LINES = 0.03;
/** A change smaller than this share of its line is left undone in the last round. */
const NOT_WORTH = 0.04;
const LEFT_ALONE = 1e6;

/** Batch at the finished mass, or undefined where it is too little or too much to get there by boiling. */
function finish(
  lines: readonly BatchLine[],
  finishedG: number,
): { batch: Batch; waterOffG: number } | undefined {
  const { pot, late } = potAndLate(lines);
  const waterOffG = waterForMass(pot, finishedG - batchMassG(late));
  return waterOffG === undefined
    ? undefined
    : { batch: addBatches(evaporate(pot, waterOffG), late), waterOffG };
}

const stepsFrom = (wanted: Readonly<Record<Taste, number>>, b: Batch): Record<Taste, number> => {
  const now = tastesOf(b);
  return Object.fromEntries(TASTES.map((t) => [t, stepsApart(t, wanted[t], now[t])])) as Record<
    Taste,
    number
  >;
};

/** Change of each taste for one more gram of a line, in steps at the finished mass. `acidKept` is what a simmer leaves of acetic acid. */
function stepsPerGram(
  i: Ingredient,
  wanted: Rebalance['wanted'],
  finishedG: number,
  acidKept: number,
): number[] {
  const gram = batchPerGram(i);
  const kept: Batch = { ...gram, acidsG: { ...gram.acidsG, acetic: gram.acidsG.acetic * acidKept } };
  const tastes = tastesOf(kept, finishedG);
  return TASTES.map((taste) => tastes[taste] / jndAt(taste, wanted[taste]));
}

interface Programme {
  /** Rows: tastes; columns: lines. */
  readonly effects: readonly (readonly number[])[];
  /** Steps to go. */
  readonly toGo: readonly number[];
  readonly costs: readonly number[];
  readonly lowest: readonly number[];
  /** Least sum of changes: the raw batch must not be lighter than the finished one. */
  readonly leastSum: number;
}

/** Masses to change [g]. The solver counts arrays from 1. */
function solve({ effects, toGo, costs, lowest, leastSum }: Programme): number[] | undefined {
  const n = costs.length;
  const oneBased = (values: readonly number[]): number[] => [0, ...values];
  const d = costs.map((cost, i) =>
    costs.map(
      (_, j) =>
        2 * TASTE_WEIGHT * effects.reduce((sum, row) => sum + row[i]! * row[j]!, 0) +
        (i === j ? 2 * cost : 0),
    ),
  );
  const linear = costs.map(
    (_, i) => 2 * TASTE_WEIGHT * effects.reduce((sum, row, k) => sum + row[i]! * toGo[k]!, 0),
  );
  const constraints = costs.map((_, i) => [...costs.map((__, j) => (i === j ? 1 : 0)), 1]);
  const result = solveQP(
    oneBased(d.map(oneBased) as unknown as number[]) as unknown as number[][],
    oneBased(linear),
    [[], ...constraints.map(oneBased)],
    oneBased([...lowest, leastSum]),
  );
  const solution = result.solution.slice(1, n + 1);
  return result.message === '' && solution.every(Number.isFinite) ? solution : undefined;
}

function saidOf(shifts: readonly LineShift[], stepsAfter: Record<Taste, number>): Said[] {
  const said: Said[] = [];
  for (const { ingredient, beforeG, afterG } of shifts) {
    const change = afterG - beforeG;
    if (Math.abs(change) < Math.max(UNWEIGHED_G, 0.005 * beforeG)) continue;
    const params = {
      name: ingredient.name,
      change: { kind: 'mass', si: Math.abs(change) / 1000 },
      to: { kind: 'mass', si: afterG / 1000 },
    } as const;
    if (beforeG === 0) said.push({ id: 'sauce.rebalance-add', params });
    else if (afterG < UNWEIGHED_G) said.push({ id: 'sauce.rebalance-leave-out', params });
    else said.push({ id: change > 0 ? 'sauce.rebalance-more' : 'sauce.rebalance-less', params });
  }
  if (said.length === 0) said.push({ id: 'sauce.rebalance-nothing' });
  for (const taste of TASTES) {
    const steps = stepsAfter[taste];
    if (Math.abs(steps) >= 1)
      said.push({
        id: steps > 0 ? 'sauce.rebalance-still-more' : 'sauce.rebalance-still-less',
        params: { taste, steps: Math.abs(steps) },
      });
  }
  return said;
}

/** Solves for the least change, with the acid that the simmer drives off fed back in a few rounds. */
export function rebalance(given: Rebalance): RebalanceAnswer {
  const { wanted, lines, finishedG } = given;
  const added = (given.mayAdd ?? []).filter(
    (i) => !lines.some((line) => line.ingredient.id === i.id && !line.locked),
  );
  const all: RebalanceLine[] = [...lines, ...added.map((ingredient) => ({ ingredient, massG: 0 }))];
  const free = all.map((line, i) => ({ line, i })).filter(({ line }) => !line.locked);
  const start = finish(lines, finishedG);
  const rawG = lines.reduce((sum, line) => sum + line.massG, 0);
  if (start === undefined)
    return {
      ok: false,
      problems: [
        {
          id: 'sauce.rebalance-no-mass',
          params: { raw: { kind: 'mass', si: rawG / 1000 }, wanted: { kind: 'mass', si: finishedG / 1000 } },
        },
      ],
    };
  if (free.length === 0) return { ok: false, problems: [{ id: 'sauce.rebalance-all-locked' }] };
  const stepsBefore = stepsFrom(wanted, start.batch);
  let masses = all.map((line) => line.massG);
  let now = start;
  const floorG = (SMALL_LINE * finishedG) / 1000;
  const scaleOf = (line: RebalanceLine): number => Math.max(line.massG, floorG);
  const relative = ({ line, i }: { line: RebalanceLine; i: number }): number =>
    Math.abs(masses[i]! - line.massG) / scaleOf(line);
  for (let round = 0; round < ROUNDS; round++) {
    const isLast = round === ROUNDS - 1;
    const { pot, late } = potAndLate(all.map((line, i) => ({ ...line, massG: masses[i]! })));
    const simmeredG = now.batch.acidsG.acetic - late.acidsG.acetic;
    const acidKept = pot.acidsG.acetic > 0 ? simmeredG / pot.acidsG.acetic : 1;
    const current = stepsFrom(wanted, now.batch);
    const perLine = free.map(({ line }) =>
      stepsPerGram(line.ingredient, wanted, finishedG, line.isLate ? 1 : acidKept),
    );
    // Changes count from the formula as it was, so each round's move adds to what is moved already.
    const moved = free.map(({ line, i }) => masses[i]! - line.massG);
    const target = TASTES.map(
      (taste, k) => -current[taste] + moved.reduce((sum, m, j) => sum + m * perLine[j]![k]!, 0),
    );
    const change = solve({
      effects: TASTES.map((_, k) => perLine.map((row) => row[k]!)),
      toGo: target,
      costs: free.map((entry) => {
        const scale = scaleOf(entry.line);
        const cost = (entry.line.massG === 0 ? NEW_LINE_COST : 1) / (scale * scale);
        if (round === 0) return cost;
        if (isLast && relative(entry) < NOT_WORTH) return cost * LEFT_ALONE;
        return (cost * FEW_LINES) / (relative(entry) + FEW_LINES);
      }),
      lowest: free.map(({ line }) => -line.massG),
      leastSum: finishedG - rawG,
    });
    if (change === undefined) return { ok: false, problems: [{ id: 'sauce.rebalance-no-answer' }] };
    masses = all.map((line) => line.massG);
    free.forEach(({ line, i }, j) => {
      const next = line.massG + change[j]!;
      masses[i] = next < 1e-9 ? 0 : next;
    });
    const next = finish(
      all.map((line, i) => ({ ...line, massG: masses[i]! })),
      finishedG,
    );
    if (next === undefined) return { ok: false, problems: [{ id: 'sauce.rebalance-no-answer' }] };
    now = next;
  }
  const shifts = all.map((line, i) => ({
    ingredient: line.ingredient,
    beforeG: line.massG,
    afterG: masses[i]!,
  }));
  const stepsAfter = stepsFrom(wanted, now.batch);
  return {
    ok: true,
    shifts: shifts.filter((shift) => shift.beforeG > 0 || shift.afterG > UNWEIGHED_G),
    finished: now.batch,
    waterOffG: now.waterOffG,
    stepsBefore,
    stepsAfter,
    said: saidOf(shifts, stepsAfter),
  };
}

/** Finished tastes of a formula: what a swap should come back to. */
export function wantedFrom(
  lines: readonly BatchLine[],
  waterOffG: number,
): { wanted: Record<Taste, number>; finishedG: number } {
  const { pot, late } = potAndLate(lines);
  const finished = addBatches(evaporate(pot, waterOffG), late);
  return { wanted: tastesOf(finished), finishedG: batchMassG(finished) };
}

/** One liquid for another of equal volume. */
export function swapLine(lines: readonly RebalanceLine[], index: number, other: Ingredient): RebalanceLine[] {
  return lines.map((line, i) =>
    i === index
      ? {
          ...line,
          ingredient: other,
          massG: (line.massG / line.ingredient.densityGPerMl) * other.densityGPerMl,
        }
      : line,
  );
}
