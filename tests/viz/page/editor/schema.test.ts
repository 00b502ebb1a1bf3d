import { describe, expect, it } from "vitest";
import { planJsonSchema } from "../../../../sim/asked/plan/index.ts";
import { fieldKind, firstValue, resolved, type Schema, shapeOf } from "../../../../viz/page/editor/schema.ts";

const ROOT = planJsonSchema() as Schema;
const line = ROOT.properties!.line!.items!;
const station = line.oneOf![0]!;
const kindOf = (schema: Schema) => fieldKind(resolved(schema, ROOT)).kind;

/** Every schema inside, with its path. */
function* within(schema: Schema, path = "", depth = 0): Generator<[string, Schema]> {
  if (depth > 12) return;
  const found = resolved(schema, ROOT);
  yield [path, found];
  for (const [key, inner] of Object.entries(found.properties ?? {})) yield* within(inner, `${path}.${key}`, depth + 1);
  if (found.items) yield* within(found.items, `${path}[]`, depth + 1);
  for (const [index, shape] of (found.oneOf ?? found.anyOf ?? []).entries())
    yield* within(shape, `${path}|${index}`, depth + 1);
}

describe("the plan's schema as a form", () => {
  it("has a kind of field for every part of it, and a first value for each that its own kind fits", () => {
    let parts = 0;
    for (const [path, schema] of within(ROOT)) {
      const { kind } = fieldKind(schema);
      const first = firstValue(schema, ROOT);
      expect(first, path).not.toBeUndefined();
      if (kind === "list") expect(Array.isArray(first), path).toBe(true);
      if (kind === "number") expect(typeof first, path).toBe("number");
      parts++;
    }
    expect(parts).toBeGreaterThan(400);
  });

  it("tells the shapes of stages by their kind, of times by their type", () => {
    expect(kindOf(line)).toBe("shapes");
    expect(["station", "dwell", "chain"].map((kind) => shapeOf({ kind }, line.oneOf!, ROOT))).toEqual([0, 1, 2]);
    const cycle = resolved(station.properties!.cycle!, ROOT);
    const shapes = cycle.anyOf!;
    expect(shapes.map(kindOf)).toEqual(["text", "one of"]);
    expect(shapeOf("4 s", shapes, ROOT)).toBe(0);
    expect(shapeOf({ gamma: {} }, shapes, ROOT)).toBe(1);
    expect(kindOf(station.properties!.breakdowns!)).toBe("list");
    expect(kindOf(station.properties!.positions!)).toBe("number");
    expect(kindOf(ROOT.properties!.money!)).toBe("object");
    expect(kindOf(ROOT.properties!.day!.properties!.closing!)).toBe("one of");
  });
});
