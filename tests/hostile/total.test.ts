import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Fault, formatFault, readPlan, type TextFiles } from "../../sim/asked/plan/index.ts";
import { readStudy } from "../../sim/asked/study/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { readResults, stableJson } from "../../sim/days/results/index.ts";
import { readImprove, readImprovement } from "../../sim/questions/improve/index.ts";
import { readOptions, readOptionsResult } from "../../sim/questions/options/index.ts";
import { readDemand } from "../../sim/questions/size/index.ts";
import { handMadeResults } from "../support/handMadeResults.ts";

const ROOT = resolve(import.meta.dirname, "../../experiments");

interface Reader {
  file: string;
  /** Of the values that are put in the place of another, how many; large plans take long to read. */
  runs: number;
  read(json: unknown, files: TextFiles): readonly Fault[];
}

const READERS: Reader[] = [
  { file: "plans/every-part.json", runs: 80, read: (json, files) => readPlan(json, files).faults },
  { file: "plans/sallowfield-compact.json", runs: 80, read: (json) => readPlan(json).faults },
  { file: "demand/weekly.json", runs: 30, read: (json, files) => readDemand(json, files).faults },
  ...[
    "first-plan/first-study.json",
    "studies/screening.json",
    "studies/choose-the-best.json",
    "studies/lorries.json",
  ].map(
    (file): Reader => ({
      file,
      runs: 15,
      read: (json, files) => readStudy(json, files, { knownResponses: responsesOf }).faults,
    }),
  ),
  { file: "options/ferncote-offers.json", runs: 20, read: (json, files) => readOptions(json, files).faults },
  { file: "improve/ferncote-places.json", runs: 20, read: (json, files) => readImprove(json, files).faults },
];

/** What breaks programs that make text of whatever they are given, or look a name up in an object. */
const ODD: unknown[] = [
  { toString: 1, valueOf: 2 },
  { kind: { toString: null, valueOf: null } },
  JSON.parse('{"__proto__": {"toString": 1}}'),
  JSON.parse('{"__proto__": null, "kind": "station"}'),
  { constructor: null, hasOwnProperty: 1 },
  { constructor: { prototype: null } },
  [{ toString: [], valueOf: {} }],
  { length: 1e9 },
  ...["__proto__", "toString", "constructor", "valueOf", "", "1e999 s", "\u0000", "\ud800"],
  ...[null, 0, -0, 1e308, -1, 0.5, true, [], {}, [[]]],
  { set: { toString: 1 } },
];

const oddKey = fc.constantFrom("toString", "valueOf", "__proto__", "constructor", "kind", "name", "from", "x");

const anyJson = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...ODD) },
  { weight: 1, arbitrary: fc.jsonValue({ maxDepth: 2 }) },
  {
    weight: 1,
    arbitrary: fc
      .dictionary(oddKey, fc.oneof(fc.constantFrom(...ODD), fc.jsonValue({ maxDepth: 1 })), { maxKeys: 3 })
      .map((each) => JSON.parse(JSON.stringify(each))),
  },
);

describe("no reader throws for any JSON value at any place", () => {
  for (const { file, runs, read } of READERS) {
    it(file, () => {
      const path = resolve(ROOT, file);
      const json: unknown = JSON.parse(readFileSync(path, "utf8"));
      const files = { readText: (name: string) => readFileSync(resolve(dirname(path), name), "utf8") };
      expect(read(json, files)).toEqual([]);
      const places = placesOf(json);
      fc.assert(
        fc.property(fc.nat(places.length - 1), anyJson, (place, value) => {
          for (const fault of read(withValue(json, places[place]!, value), files)) {
            expect(typeof formatFault(fault)).toBe("string");
          }
        }),
        { seed: 26, numRuns: runs },
      );
    });
  }

  it("as a whole, or nested ten thousand deep", () => {
    const deep: unknown = JSON.parse("[".repeat(10_000) + "]".repeat(10_000));
    const key: unknown = JSON.parse(`${'{"a":'.repeat(5000)}1${"}".repeat(5000)}`);
    const wholes = [...ODD, undefined, deep, key, { plan: deep, line: deep, week: key }];
    const readers = [readPlan, readStudy, readDemand, readOptions, readImprove];
    for (const whole of wholes) {
      for (const read of readers) expect(read(whole).faults).not.toEqual([]);
      for (const read of [readImprovement, readOptionsResult]) expect(read(whole)).toBeNull();
    }
    for (const text of [
      "[".repeat(10_000) + "]".repeat(10_000),
      `{"format":2,"variants":${"[".repeat(9000)}${"]".repeat(9000)}}`,
    ]) {
      expect(readResults(text).problem).toMatch(/run it again|name the folder/);
    }
    for (const odd of ODD) expect(readResults(JSON.stringify(odd)).results).toBeNull();
  });
});

it("a results.json with any value in any place is read or refused in words", () => {
  const json: unknown = JSON.parse(stableJson(handMadeResults()));
  const places = placesOf(json);
  fc.assert(
    fc.property(fc.nat(places.length - 1), anyJson, (place, value) => {
      const { results, problem } = readResults(JSON.stringify(withValue(json, places[place]!, value)));
      expect(results === null ? problem : "").toEqual(expect.any(String));
    }),
    { seed: 26, numRuns: 100 },
  );
});

it("a choice that is an object with a toString of its own is told with its path", () => {
  const path = resolve(ROOT, "plans/sallowfield-compact.json");
  const json: unknown = JSON.parse(readFileSync(path, "utf8"));
  const { faults } = readPlan(withValue(json, ["line", 1, "kind"], { toString: 1, valueOf: 2 }));
  expect(faults.map((fault) => fault.path)).toContain("line[1].kind");
});

type Step = string | number;

function placesOf(json: unknown, at: Step[] = []): Step[][] {
  if (typeof json !== "object" || json === null) return [at];
  const inside = Object.entries(json).flatMap(([key, each]) =>
    placesOf(each, [...at, Array.isArray(json) ? Number(key) : key]),
  );
  return at.length === 0 ? inside : [at, ...inside];
}

function withValue(json: unknown, [step, ...rest]: readonly Step[], value: unknown): unknown {
  if (step === undefined) return value;
  const copy = (Array.isArray(json) ? [...json] : { ...(json as object) }) as Record<Step, unknown>;
  copy[step] = withValue(copy[step], rest, value);
  return copy;
}
