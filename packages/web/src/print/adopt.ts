/** Names of the page's own making that a style attribute may set: `--row:5px`. */
const OWN_PROPERTY = /^(--[a-z-]+):(.+)$/;

/**
 * Takes written markup into the page node by node. Style attributes are set through the object model: the content
 * policy of the server lets none stand in markup.
 */
export function adopt(markup: string, into: Element): void {
  const written = new DOMParser().parseFromString(markup, 'text/html');
  into.replaceChildren(...[...written.body.childNodes].map((node) => copyOf(node)));
}

function copyOf(node: Node): Node {
  if (!(node instanceof Element)) return document.createTextNode(node.textContent ?? '');
  const copy = document.createElementNS(node.namespaceURI, node.localName);
  for (const { name, value } of node.attributes) {
    const own = name === 'style' ? OWN_PROPERTY.exec(value) : null;
    if (own && copy instanceof HTMLElement) copy.style.setProperty(own[1]!, own[2]!);
    else if (name !== 'style') copy.setAttribute(name, value);
  }
  copy.append(...[...node.childNodes].map((child) => copyOf(child)));
  return copy;
}
