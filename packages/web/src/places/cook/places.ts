import type { PlaceLink } from '../../parts/strip.tsx';
import type { Words } from '../../words.tsx';

/** The places of one cook that exist. */
export const cookPlaces = (id: string, text: Words['text']): readonly PlaceLink[] => [
  { href: '/', name: text('web.place.shelf') },
  { href: `/cook/${id}`, name: text('web.place.cook') },
  { href: `/cook/${id}/guests`, name: text('web.place.guests') },
  { href: `/cook/${id}/bench`, name: text('bench.place') },
  { href: `/cook/${id}/run-sheet`, name: text('web.place.run-sheet') },
];
