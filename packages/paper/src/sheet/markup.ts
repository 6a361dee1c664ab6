import { unbroken } from '@pitwright/words';

const REPLACED: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text for HTML, each figure on one line with its unit. */
export const escaped = (text: string): string => unbroken(text).replace(/[&<>"]/g, (sign) => REPLACED[sign]!);

/** An element around markup that is escaped already. */
export const element = (tag: string, className: string, inner: string): string =>
  `<${tag}${className ? ` class="${className}"` : ''}>${inner}</${tag}>`;

/** A box for the pencil. */
export const tickBox = '<span class="box"></span>';

/** More than a page holds; what does not fit is cut off. */
const NOTE_LINES = 30;
/** Lines for the pencil in what is left of a page. */
export const noteLines = `<div class="notes">${'<i></i>'.repeat(NOTE_LINES)}</div>`;
