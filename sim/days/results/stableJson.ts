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
 * The same text in parts: results of thousands of variants are longer than one text may be. Objects come key by key as far as
 * three levels down, and the lists in them element by element.
 */
export function* stableJsonParts(value: unknown): Generator<string> {
  yield* parts(value, "", "", 0);
  yield "\n";
}

const MAX_DEPTH = 3;

function* parts(value: unknown, indent: string, path: string, depth: number): Generator<string> {
  const inner = `${indent}  `;
  if (depth > MAX_DEPTH || isSmall(value, indent)) {
    yield render(value, indent, path);
  } else if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) {
      yield `${index === 0 ? "[" : ","}\n${inner}${render(item, inner, `${path}[${index}]`)}`;
    }
    yield `\n${indent}]`;
  } else {
    const object = value as Record<string, unknown>;
    for (const [index, key] of presentKeys(object).entries()) {
      yield `${index === 0 ? "{" : ","}\n${inner}${JSON.stringify(key)}: `;
      yield* parts(object[key], inner, path === "" ? key : `${path}.${key}`, depth + 1);
    }
    yield `\n${indent}}`;
  }
}

/** Of one line, or nothing in it. */
function isSmall(value: unknown, indent: string): boolean {
  if (isPlain(value)) return true;
  if (Array.isArray(value)) return isPlainList(value);
  const object = value as Record<string, unknown>;
  const keys = presentKeys(object);
  return keys.length === 0 || isRow(object, keys, indent);
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
  const oneLine = isRow(object, keys, indent);
  const inner = oneLine ? "" : `${indent}  `;
  const lines = keys.map((key) => {
    const where = path === "" ? key : `${path}.${key}`;
    return `${inner}${JSON.stringify(key)}: ${render(object[key], inner, where)}`;
  });
  return oneLine ? `{${lines.join(", ")}}` : `{\n${lines.join(",\n")}\n${indent}}`;
}

function isRow(object: Record<string, unknown>, keys: readonly string[], indent: string): boolean {
  return indent !== "" && keys.every((key) => isPlain(object[key]));
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
