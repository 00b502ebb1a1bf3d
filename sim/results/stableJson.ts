/**
 * JSON text that depends on nothing but the data: object keys in code-point order, numbers as the language prints them
 * (shortest text that reads back to the same bits), a list of plain values on one line. Ends with a line break.
 *
 * Infinity ("no limit" in a day record) becomes null, as does undefined in a list; an undefined property is left out.
 * NaN is refused with the path to it: a missing value must be null before it comes here.
 */
export function stableJson(value: unknown): string {
  return `${render(value, "", "")}\n`;
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

function renderList(list: readonly unknown[], indent: string, path: string): string {
  const inner = `${indent}  `;
  const items = list.map((item, index) => render(item, inner, `${path}[${index}]`));
  const plain = list.every((item) => typeof item !== "object" || item === null);
  if (plain) return `[${items.join(", ")}]`;
  return `[\n${items.map((item) => inner + item).join(",\n")}\n${indent}]`;
}

function renderObject(object: Record<string, unknown>, indent: string, path: string): string {
  const inner = `${indent}  `;
  const keys = Object.keys(object)
    .filter((key) => object[key] !== undefined)
    .sort();
  if (keys.length === 0) return "{}";
  const lines = keys.map((key) => {
    const where = path === "" ? key : `${path}.${key}`;
    return `${inner}${JSON.stringify(key)}: ${render(object[key], inner, where)}`;
  });
  return `{\n${lines.join(",\n")}\n${indent}}`;
}
