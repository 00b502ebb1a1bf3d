const ELEMENT = 1;
const TEXT = 3;

/**
 * A picture as text, well-formed XML with its name space, attributes in alphabetical order: the same bytes from every
 * document implementation. Also fit to stand inside an HTML page.
 */
export function svgText(element: Element): string {
  return serialise(element, true);
}

function serialise(node: Node, root: boolean): string {
  if (node.nodeType === TEXT) return escapeXml(node.nodeValue ?? "");
  if (node.nodeType !== ELEMENT) return "";
  const element = node as Element;
  // localName keeps its case in every document implementation; tagName does not.
  const name = element.localName;
  const attributes = [...element.attributes]
    .filter((attribute) => attribute.name !== "xmlns")
    .map((attribute) => ` ${attribute.name}="${escapeXml(attribute.value)}"`)
    .sort()
    .join("");
  const space = root ? ' xmlns="http://www.w3.org/2000/svg"' : "";
  const content = [...element.childNodes].map((child) => serialise(child, false)).join("");
  return content === "" ? `<${name}${space}${attributes}/>` : `<${name}${space}${attributes}>${content}</${name}>`;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML forbids
const FORBIDDEN_IN_XML = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/gu;

function escapeXml(text: string): string {
  return text
    .replace(FORBIDDEN_IN_XML, "\uFFFD")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");
}
