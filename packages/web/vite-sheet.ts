import type { Plugin } from 'vite';
import { DRAWING_STYLE } from '../draw/src/tokens/style.ts';
import { themeVariables } from '../draw/src/tokens/themes.ts';

const NAME = 'virtual:sheet.css';
const RESOLVED = `\0${NAME}`;

/**
 * The colours of the three lights and the look of the marks, taken from packages/draw at build time, so that screens
 * and printed sheets have one source. A file of the build, not a style element: the content policy allows no other.
 */
export function sheetStyle(): Plugin {
  return {
    name: 'pitwright-sheet-style',
    resolveId: (id) => (id === NAME ? RESOLVED : undefined),
    load(id) {
      if (id !== RESOLVED) return undefined;
      const rule = (selector: string, theme: 'paper' | 'lamp' | 'sun' | 'print') =>
        `${selector}{${themeVariables(theme)}}`;
      return [
        rule(':root,[data-theme=paper]', 'paper'),
        rule('[data-theme=lamp]', 'lamp'),
        rule('[data-theme=sun]', 'sun'),
        `@media print{${rule(':root,[data-theme]', 'print')}}`,
        `.drawing{${DRAWING_STYLE}}`,
      ].join('\n');
    },
  };
}
