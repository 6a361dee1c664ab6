import { findCut } from '@pitwright/engine';
import { type CutId, type Quantity, quantity } from '@pitwright/model';

/** What one usually weighs: an example beside an empty line, never taken for told. */
export const usualMass = (cut: CutId): Quantity<'mass'> => quantity('mass', findCut(cut)?.massKg ?? 1, 'kg');

/** How thick its thickest place usually is. */
export const usualThickness = (cut: CutId): Quantity<'length'> => {
  const known = findCut(cut);
  const thicknessM = known ? (2 * known.halfThicknessM) / known.rulerFactor : 0.04;
  return quantity('length', Math.round(1000 * thicknessM), 'mm');
};
