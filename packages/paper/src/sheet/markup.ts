const REPLACED: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text for HTML. */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => REPLACED[sign]!);

/** An element around markup that is escaped already. */
export const element = (tag: string, className: string, inner: string): string =>
  `<${tag}${className ? ` class="${className}"` : ''}>${inner}</${tag}>`;

/** A box for the pencil. */
export const tickBox = '<span class="box"></span>';
