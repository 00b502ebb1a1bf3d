import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../../sim");
const text = (path: string) => readFileSync(join(ROOT, path), "utf8");

/** Every key of a published schema, those of its parts too. */
function keysOf(schema: unknown): string[] {
  if (typeof schema !== "object" || schema === null) return [];
  const { properties } = schema as { properties?: unknown };
  const own = typeof properties === "object" && properties !== null ? Object.keys(properties) : [];
  return [...own, ...Object.values(schema).flatMap(keysOf)];
}

/** Text in code marks: single words of it, and what stands between the fences of an example. */
function codeWords(markdown: string): Set<string> {
  const code = [...markdown.matchAll(/```[\s\S]*?```|`[^`]+`/g)].map(([found]) => found);
  return new Set(code.flatMap((found) => [...(found.match(/[$\w]+/g) ?? []), ...(found.match(/\w+(?:-\w+)+/g) ?? [])]));
}

describe("the reference of each file that people write", () => {
  it.each([
    ["asked/plan", "plan", []],
    ["asked/study", "study", []],
    ["questions/size", "demand", ["asked/plan"]],
    ["questions/options", "options", ["asked/study"]],
    ["questions/improve", "improve", ["questions/options", "asked/study"]],
  ])(
    "of %s describes every key there is in %s.schema.json, itself or in a file that it sends to",
    (room, kind, others) => {
      const words = codeWords([room, ...others].map((each) => text(`${each}/README.md`)).join("\n"));
      const keys = new Set(keysOf(JSON.parse(text(`${room}/${kind}.schema.json`))));
      expect(keys.size).toBeGreaterThan(20);
      // For editors, and the same in every file.
      keys.delete("$schema");
      expect([...keys].filter((key) => !words.has(key))).toEqual([]);
    },
  );
});
