/** One element with its attributes; what it holds is text or elements, in the order given. */
export type XmlElement = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly content: string | readonly XmlElement[];
};

/** An element; null where it would be empty, which the standard forbids. */
export function element(
  name: string,
  content: string | readonly (XmlElement | null)[],
  attributes: Readonly<Record<string, string>> = {},
): XmlElement | null {
  if (typeof content === "string") return content === "" ? null : { name, attributes, content };
  const held = content.filter((each) => each !== null);
  return held.length === 0 ? null : { name, attributes, content: held };
}

/** The document as UTF-8 text, one element to a line. */
export function xmlDocument(root: XmlElement): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${written(root, "")}`;
}

function written({ name, attributes, content }: XmlElement, indent: string): string {
  const said = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
  const open = `${indent}<${name}${said.join("")}>`;
  if (typeof content === "string") return `${open}${escaped(content)}</${name}>\n`;
  const inner = content.map((each) => written(each, `${indent}  `)).join("");
  return `${open}\n${inner}${indent}</${name}>\n`;
}

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
};

/** Text without the characters that XML 1.0 has no place for, such as most controls and half surrogates. */
function escaped(text: string): string {
  return text
    .replaceAll(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, "")
    .replaceAll(/[&<>"]/g, (sign) => entities[sign] ?? sign);
}
