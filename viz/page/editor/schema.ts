/** The part of JSON Schema that the published plan schema uses. */
export interface Schema {
  type?: string | string[];
  description?: string;
  default?: unknown;
  examples?: unknown[];
  enum?: unknown[];
  const?: unknown;
  properties?: Record<string, Schema>;
  required?: string[];
  additionalProperties?: boolean | Schema;
  maxProperties?: number;
  items?: Schema;
  anyOf?: Schema[];
  oneOf?: Schema[];
  minimum?: number;
  maximum?: number;
  $ref?: string;
  $defs?: Record<string, Schema>;
}

/** What kind of field a schema asks for. */
export type FieldKind =
  | { kind: "text" | "number" | "yes or no"; schema: Schema }
  | { kind: "choice"; schema: Schema; values: unknown[] }
  | { kind: "object"; schema: Schema }
  /** Exactly one of its keys. */
  | { kind: "one of"; schema: Schema }
  /** Names chosen freely, one schema for all values. */
  | { kind: "table"; schema: Schema; values: Schema }
  | { kind: "list"; schema: Schema; items: Schema }
  /** One of several shapes: which one, the value itself tells. */
  | { kind: "shapes"; schema: Schema; shapes: Schema[] };

/** Follows a reference, and looks through "or null": what is left out is told by the key's absence. */
export function resolved(schema: Schema, root: Schema): Schema {
  if (schema.$ref !== undefined) {
    const name = schema.$ref.replace("#/$defs/", "");
    return resolved({ ...root.$defs?.[name], ...withoutRef(schema) }, root);
  }
  const shapes = schema.anyOf?.filter(({ type }) => type !== "null");
  if (shapes?.length === 1) return resolved({ ...shapes[0], ...withoutShapes(schema) }, root);
  return shapes === undefined ? schema : { ...schema, anyOf: shapes };
}

function withoutRef({ $ref: _, ...rest }: Schema): Schema {
  return rest;
}

function withoutShapes({ anyOf: _, ...rest }: Schema): Schema {
  return rest;
}

/** `schema` must be resolved. */
export function fieldKind(schema: Schema): FieldKind {
  const shapes = schema.oneOf ?? schema.anyOf;
  if (shapes !== undefined) return { kind: "shapes", schema, shapes };
  if (schema.enum !== undefined) return { kind: "choice", schema, values: schema.enum };
  if (schema.const !== undefined) return { kind: "choice", schema, values: [schema.const] };
  const type = Array.isArray(schema.type) ? schema.type.find((each) => each !== "null") : schema.type;
  if (type === "array") return { kind: "list", schema, items: schema.items ?? {} };
  if (type === "object") {
    if (schema.properties === undefined && typeof schema.additionalProperties === "object") {
      return { kind: "table", schema, values: schema.additionalProperties };
    }
    return { kind: schema.maxProperties === 1 ? "one of" : "object", schema };
  }
  if (type === "boolean") return { kind: "yes or no", schema };
  return { kind: type === "number" || type === "integer" ? "number" : "text", schema };
}

/** The shape that a value has: by its "kind", else by its type; the first one when it has none of them. */
export function shapeOf(value: unknown, shapes: readonly Schema[], root: Schema): number {
  const index = shapes.findIndex((shape) => fits(value, resolved(shape, root)));
  return Math.max(0, index);
}

function fits(value: unknown, shape: Schema): boolean {
  const { kind } = fieldKind(shape);
  if (Array.isArray(value)) return kind === "list";
  if (typeof value === "object" && value !== null) {
    const tag = shape.properties?.kind?.const;
    if (tag !== undefined) return (value as { kind?: unknown }).kind === tag;
    return kind === "object" || kind === "one of" || kind === "table";
  }
  if (typeof value === "number") return kind === "number";
  return kind === "text" || kind === "choice";
}

/** A first value for a new field: its example, its default where that says something, or what its kind begins with. */
export function firstValue(schema: Schema, root: Schema): unknown {
  const found = resolved(schema, root);
  if (found.examples !== undefined) return found.examples[0];
  if (found.default !== undefined && found.default !== null) return structuredClone(found.default);
  const field = fieldKind(found);
  switch (field.kind) {
    case "choice":
      return field.values[0];
    case "number":
      return found.minimum ?? 1;
    case "yes or no":
      return true;
    case "list":
      return [];
    case "table":
      return {};
    case "shapes":
      return firstValue(field.shapes[0] ?? {}, root);
    case "one of": {
      const [key, inner] = Object.entries(found.properties ?? {})[0] ?? [];
      return key === undefined ? {} : { [key]: firstValue(inner!, root) };
    }
    case "object":
      return Object.fromEntries(
        (found.required ?? []).map((key) => [key, firstValue(found.properties?.[key] ?? {}, root)]),
      );
    case "text":
      return "";
  }
}

/** What to call a shape in a list of shapes. */
export function shapeName(shape: Schema, root: Schema): string {
  const found = resolved(shape, root);
  const tag = found.properties?.kind?.const;
  if (typeof tag === "string") return tag;
  const field = fieldKind(found);
  if (field.kind === "text") return "a text or quantity";
  if (field.kind === "number") return "a number";
  if (field.kind === "list") return "a list";
  return field.kind === "one of" ? "a distribution" : "by name";
}
