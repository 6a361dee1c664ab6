import type { Notice } from '@pitwright/engine';

/** Notices that stand beside one piece. */
export const noticesOf = (notices: readonly Notice[], pieceId: string): Notice[] =>
  notices.filter((notice) => notice.concerns.pieceId === pieceId);

/** What a notice says, whatever it stands beside. */
const sameAs = (notice: Notice): string => `${notice.id} ${JSON.stringify(notice.params)}`;

/** Notices that concern several pieces alike, once each, with the pieces. */
export function sharedNotices(
  notices: readonly Notice[],
): { readonly notice: Notice; readonly pieceIds: readonly string[] }[] {
  const byWords = new Map<string, { notice: Notice; pieceIds: string[] }>();
  for (const notice of notices) {
    const { pieceId } = notice.concerns;
    if (pieceId === undefined) continue;
    const known = byWords.get(sameAs(notice));
    if (known) {
      if (!known.pieceIds.includes(pieceId)) known.pieceIds.push(pieceId);
    } else byWords.set(sameAs(notice), { notice, pieceIds: [pieceId] });
  }
  return [...byWords.values()].filter(({ pieceIds }) => pieceIds.length > 1);
}

/** Notices that concern this piece alone. */
export function ownNotices(notices: readonly Notice[], pieceId: string): Notice[] {
  const shared = new Set(sharedNotices(notices).map(({ notice }) => sameAs(notice)));
  return noticesOf(notices, pieceId).filter((notice) => !shared.has(sameAs(notice)));
}

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
      const key = sameAs(notice);
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
