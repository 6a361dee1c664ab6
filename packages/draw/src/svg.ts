import type { Drawing } from './drawing.ts';
import type { Mark } from './mark.ts';

const NAMES: Readonly<Record<string, string>> = { className: 'class' };
/** SVG attributes that keep their capitals. */
const CAPITALS = new Set([
  'viewBox',
  'patternUnits',
  'patternTransform',
  'clipPathUnits',
  'preserveAspectRatio',
]);

const svgName = (name: string): string =>
  NAMES[name] ?? (CAPITALS.has(name) ? name : name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`));

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

/** One mark and all within it as SVG text. */
function markToSvg({ tag, attributes, children, text }: Mark): string {
  const written = Object.entries(attributes)
    .map(([name, value]) => ` ${svgName(name)}="${escaped(String(value))}"`)
    .join('');
  const inner = (text === undefined ? '' : escaped(text)) + (children ?? []).map(markToSvg).join('');
  return inner ? `<${tag}${written}>${inner}</${tag}>` : `<${tag}${written}/>`;
}

/** A drawing as one SVG element, an image with its sentence as label. */
export function toSvg({ width, height, marks, sentence }: Drawing): string {
  const open = `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escaped(sentence)}" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">`;
  return `${open}${marks.map(markToSvg).join('')}</svg>`;
}
