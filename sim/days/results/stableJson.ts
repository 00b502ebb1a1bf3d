/**
 * JSON text that depends on nothing but the data: object keys in code-point order, numbers as the language prints them
 * (shortest text that reads back to the same bits), a list or an object of plain values on one line. Ends with a line break.
 *
 * Infinity ("no limit" in a day record) becomes null, as does undefined in a list; an undefined property is left out.
 * NaN is refused with the path to it: a missing value must be null before it comes here.
 */
export function stableJson(value: unknown): string {
  return [...stableJsonParts(value)].join("");
}

/**
 * The same text in parts: results of thousands of variants are longer than one text may be. The lists that an object
 * holds come element by element, all else in one part.
 */
export function* stableJsonParts(value: unknown): Generator<string> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    yield `${render(value, "", "")}\n`;
    return;
  }
  const object = value as Record<string, unknown>;
  const keys = presentKeys(object);
  yield keys.length === 0 ? "{}" : "{\n";
  for (const [index, key] of keys.entries()) {
    yield `  ${JSON.stringify(key)}: `;
    yield* propertyParts(object[key], key);
    yield index < keys.length - 1 ? ",\n" : "\n}";
  }
  yield "\n";
}

function* propertyParts(value: unknown, path: string): Generator<string> {
  if (!Array.isArray(value) || isPlainList(value)) {
    yield render(value, "  ", path);
    return;
  }
  for (const [index, item] of value.entries()) {
    yield index === 0 ? "[\n    " : ",\n    ";
    yield render(item, "    ", `${path}[${index}]`);
  }
  yield "\n  ]";
}

function render(value: unknown, indent: string, path: string): string {
  if (typeof value === "number") return renderNumber(value, path);
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  return Array.isArray(value)
    ? renderList(value, indent, path)
    : renderObject(value as Record<string, unknown>, indent, path);
}

function renderNumber(value: number, path: string): string {
  if (Number.isNaN(value))
    throw new RangeError(`stableJson: no number at ${path || "the top"}; a missing value is null`);
  return Number.isFinite(value) ? JSON.stringify(value) : "null";
}

/** A longer list of plain values is a column of data: a blank after each of its commas would be a quarter of its size. */
const FEW = 64;

function renderList(list: readonly unknown[], indent: string, path: string): string {
  const inner = `${indent}  `;
  const items = list.map((item, index) => render(item, inner, `${path}[${index}]`));
  if (isPlainList(list)) return `[${items.join(list.length > FEW ? "," : ", ")}]`;
  return `[\n${items.map((item) => inner + item).join(",\n")}\n${indent}]`;
}

function renderObject(object: Record<string, unknown>, indent: string, path: string): string {
  const keys = presentKeys(object);
  if (keys.length === 0) return "{}";
  const isRow = indent !== "" && keys.every((key) => isPlain(object[key]));
  const inner = isRow ? "" : `${indent}  `;
  const lines = keys.map((key) => {
    const where = path === "" ? key : `${path}.${key}`;
    return `${inner}${JSON.stringify(key)}: ${render(object[key], inner, where)}`;
  });
  return isRow ? `{${lines.join(", ")}}` : `{\n${lines.join(",\n")}\n${indent}}`;
}

function isPlainList(list: readonly unknown[]): boolean {
  return list.every(isPlain);
}

function isPlain(item: unknown): boolean {
  return typeof item !== "object" || item === null;
}

function presentKeys(object: Record<string, unknown>): string[] {
  return Object.keys(object)
    .filter((key) => object[key] !== undefined)
    .sort();
}
