import type { Notice } from '@pitwright/engine';

/** Notices that stand beside one piece. */
export const noticesOf = (notices: readonly Notice[], pieceId: string): Notice[] =>
  notices.filter((notice) => notice.concerns.pieceId === pieceId);

/** Notices that stand beside one formula. */
export const noticesOfFormula = (notices: readonly Notice[], formulaId: string): Notice[] =>
  notices.filter((notice) => notice.concerns.formulaId === formulaId);

/** Notices that concern the whole cook. */
export const generalNotices = (notices: readonly Notice[]): Notice[] =>
  notices.filter(({ concerns }) => concerns.pieceId === undefined && concerns.formulaId === undefined);

const LEVELS = ['stop', 'caution', 'information'] as const;

/** Once each, the gravest first: what many pieces and formulas share is said once on a sheet. */
function distinct(notices: readonly Notice[]): Notice[] {
  const seen = new Set<string>();
  return LEVELS.flatMap((level) =>
    notices.filter((notice) => {
      const key = `${notice.id} ${JSON.stringify(notice.params)}`;
      if (notice.level !== level || seen.has(key)) return false;
      seen.add(key);
      return true;
    }),
  );
}

/** What the foot of the fridge sheet has room for. */
const MOST_ON_SHEET = 4;

/** What a kitchen needs at hand: allergens that a guest named, raw and cooked, leftovers. */
export const kitchenNotices = (notices: readonly Notice[]): Notice[] =>
  distinct(
    notices.filter((notice) =>
      /allergens-named|honey|two-hours|brush|rub-hands|leftovers|thermometer|frozen/.test(notice.id),
    ),
  ).slice(0, MOST_ON_SHEET);
