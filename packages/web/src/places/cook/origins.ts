import type { Origin } from '../../parts/ask.tsx';
import { useWords } from '../../words.tsx';

const FIGURES = [
  'ready',
  'on-time',
  'bite',
  'middle',
  'surface',
  'bark',
  'colour',
  'juiciness',
  'salt',
  'yield',
] as const;
export type Figure = (typeof FIGURES)[number];

/** What the figures of a piece are, what they rest on and how sure they are. */
export function useOrigins(members?: number): Readonly<Record<Figure, Origin>> {
  const { text } = useWords();
  const counted = members === undefined ? '' : ` ${text('web.origin.counted', { members })}`;
  const of = (figure: Figure): Origin => ({
    meaning: text(`web.origin.${figure}.meaning`),
    source: text(`web.origin.${figure}.source`),
    doubt: `${text(`web.origin.${figure}.doubt`)}${counted}`,
  });
  return Object.fromEntries(FIGURES.map((figure) => [figure, of(figure)])) as Record<Figure, Origin>;
}
