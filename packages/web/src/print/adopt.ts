/** Names of the page's own making that a style attribute may set: `--row:5px`. */
const OWN_PROPERTY = /^(--[a-z-]+):(.+)$/;

/** Under this name a style attribute is read without being one: the policy reports one even in a page that is only read. */
const READ_AS = 'data-own-style';

/**
 * Takes written markup into the page node by node. Style attributes are set through the object model: the content
 * policy of the server lets none stand in markup. A quote within text is written as an entity, so that what looks like
 * the attribute is the attribute.
 */
export function adopt(markup: string, into: Element): void {
  const read = markup
    .replaceAll(' style="', ` ${READ_AS}="`)
    // What the sheets look like came with the page.
    .replaceAll(/<style>.*?<\/style>/gs, '');
  const written = new DOMParser().parseFromString(read, 'text/html');
  into.replaceChildren(...[...written.body.childNodes].map((node) => copyOf(node)));
}

function copyOf(node: Node): Node {
  if (!(node instanceof Element)) return document.createTextNode(node.textContent ?? '');
  const copy = document.createElementNS(node.namespaceURI, node.localName);
  for (const { name, value } of node.attributes) {
    const own = name === READ_AS ? OWN_PROPERTY.exec(value) : null;
    if (own && copy instanceof HTMLElement) copy.style.setProperty(own[1]!, own[2]!);
    else if (name !== READ_AS) copy.setAttribute(name, value);
  }
  copy.append(...[...node.childNodes].map((child) => copyOf(child)));
  return copy;
}
