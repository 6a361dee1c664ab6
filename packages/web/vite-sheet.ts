import type { Plugin } from 'vite';
import { DRAWING_STYLE } from '../draw/src/tokens/style.ts';
import { themeVariables } from '../draw/src/tokens/themes.ts';

const SHEET = 'virtual:sheet.css';
const PAPER = 'virtual:paper.css';
const resolved = (name: string): string => `\0${name}`;

/** The colours of the three lights and the look of the marks, for the app. */
function appStyle(): string {
  const rule = (selector: string, theme: 'paper' | 'lamp' | 'sun' | 'print') =>
    `${selector}{${themeVariables(theme)}}`;
  return [
    rule(':root,[data-theme=paper]', 'paper'),
    rule('[data-theme=lamp]', 'lamp'),
    rule('[data-theme=sun]', 'sun'),
    `@media print{${rule(':root,[data-theme]', 'print')}}`,
    `.drawing{${DRAWING_STYLE}}`,
  ].join('\n');
}

/**
 * Style that packages/draw and packages/paper own, as files of the build, so that screens and printed sheets have one
 * source. Not style elements: the content policy allows none.
 *
 * @param sheetStyle of packages/paper, loaded by the build
 */
export function ownStyle(sheetStyle: () => string): Plugin {
  const made: Readonly<Record<string, () => string>> = { [SHEET]: appStyle, [PAPER]: sheetStyle };
  return {
    name: 'pitwright-own-style',
    resolveId: (id) => (made[id] ? resolved(id) : undefined),
    load: (id) => (id.startsWith('\0') ? made[id.slice(1)]?.() : undefined),
  };
}
