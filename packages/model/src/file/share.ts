import type { Cook, Hand, Place } from '../nouns.ts';
import type { Said } from '../said.ts';

/** What a copy leaves behind unless it is ticked. */
export type Private = 'coordinates' | 'allergies' | 'names';

/**
 * A copy that may be given away: without latitude and longitude, what guests cannot eat, and the names of hands
 * (the first becomes You, the others Hand 2, Hand 3 …). The altitude stays, because the plan needs it. Notes are free
 * text that no program can judge, so what holds a note is said.
 *
 * @param ticked  what the person sharing wants to keep in
 */
export function withoutPrivate(
  cook: Cook,
  ticked: readonly Private[] = [],
): { readonly cook: Cook; readonly said: readonly Said[] } {
  const { place, ...rest } = cook;
  const { allergies, ...guests } = cook.guests;
  const kept = (what: Private): boolean => ticked.includes(what);
  const shared: Cook = {
    ...rest,
    guests: kept('allergies') && allergies ? { ...guests, allergies } : guests,
    hands: kept('names') ? cook.hands : cook.hands.map(nameless),
    ...placeOf(place, kept('coordinates')),
  };
  const count = countNotes(shared);
  return { cook: shared, said: count === 0 ? [] : [{ id: 'file.notes-shared', params: { count } }] };
}

function placeOf(place: Place | undefined, hasCoordinates: boolean): { place?: Place } {
  if (place === undefined) return {};
  if (hasCoordinates) return { place };
  return place.altitude ? { place: { altitude: place.altitude } } : {};
}

/** The id goes too: it follows from the name. */
function nameless(hand: Hand, index: number): Hand {
  return index === 0
    ? { ...hand, id: 'you', name: 'You' }
    : { ...hand, id: `hand-${index + 1}`, name: `Hand ${index + 1}` };
}

/** Every note of the cook, of its pit, pieces, stages, formulas and their lines. */
function countNotes(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  const own = 'note' in value && value.note !== undefined ? 1 : 0;
  return Object.values(value).reduce((sum: number, child) => sum + countNotes(child), own);
}
