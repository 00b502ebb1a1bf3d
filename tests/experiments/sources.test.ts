import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { parsePath, resolvePath } from "../../sim/asked/plan/index.ts";

interface Written {
  sources?: { path: string; kind: string; note: string }[];
  limits?: { name: string; source: string }[];
  line?: unknown;
}

const FOLDER = resolve(import.meta.dirname, "../../experiments");
const FILES = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));
const text = (name: string) => readFileSync(join(FOLDER, name), "utf8");
const PLANS = FILES.filter((name) => (JSON.parse(text(name)) as Written).line !== undefined);

function valueAt(json: unknown, path: string): unknown {
  const { place } = resolvePath(json, parsePath(path)!);
  return (place!.parent as Record<PropertyKey, unknown>)[place!.key];
}

describe("what the examples claim", () => {
  it("is looked at in all of them", () => {
    expect(PLANS.length).toBeGreaterThan(25);
  });

  it.each(PLANS)("%s calls published only single figures, each in a line of its own with its source", (name) => {
    const json = JSON.parse(text(name)) as Written;
    for (const { path, kind, note } of json.sources ?? []) {
      if (kind === "invented") continue;
      expect(kind).toBe("published");
      expect([path, typeof valueAt(json, path)]).toEqual([path, "string"]);
      expect(note).toMatch(/Lebas|Regulation \((EC|EU)\)|Schlachtverordnung/);
    }
  });

  it.each(PLANS)("%s has such a line for each limit that is no house rule", (name) => {
    const { sources, limits = [] } = JSON.parse(text(name)) as Written;
    const published = (sources ?? []).filter(({ kind }) => kind === "published").map(({ path }) => path);
    for (const limit of limits)
      if (!limit.source.startsWith("House rule")) expect(published).toContain(`limits["${limit.name}"].max`);
  });

  // The trade's own rates and reasons are checked in tests/outside/trade.test.ts; an example that repeats them reads like a catalogue.
  it.each(FILES)("%s repeats no rate or reason of the trade", (name) => {
    expect(text(name)).not.toMatch(/common practice|all-in-one|1,?600 ?(\/h|heads)|"2\.25 s"|loose hair|are built for/);
  });
});
