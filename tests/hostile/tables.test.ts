import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readObserved } from "../../sim/questions/calibrate/index.ts";
import { readTimes } from "../../sim/questions/fit/index.ts";
import { readSmallPlan } from "../support/readSmallPlan.ts";

const TABLES = join(import.meta.dirname, "corpus", "csv");
const NAMES = readdirSync(TABLES).filter((name) => name.endsWith(".csv"));
const PLAN = readSmallPlan();

/** What a table is read by, each giving faults or something to work on. */
const READERS = {
  times: (text: string) => readTimes(text, { unit: "s", by: null }),
  "times by name": (text: string) => readTimes(text, { unit: "s", by: "who" }),
  "observed days": (text: string) => readObserved(text, PLAN),
};

describe.each(Object.entries(READERS))("a table of %s", (_, read) => {
  it.each(NAMES)("%s is read or refused in words", (name) => {
    const { faults } = read(readFileSync(join(TABLES, name), "utf8"));
    for (const fault of faults) expect(fault.found).not.toBe("");
  });

  it("of any text is read or refused in words", () => {
    const cell = fc.oneof(
      fc.string(),
      fc.double().map(String),
      fc.constantFrom("5", "600+", ">600", "", '"', ";", ",", "\n", "=1", "\uFEFF", "__proto__", "skinning (s)", "who"),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 8 }), (rows) => {
        const { faults } = read(rows.map((row) => row.join(",")).join("\n"));
        for (const fault of faults) expect(fault.found).not.toBe("");
      }),
      { seed: 20270307, numRuns: 300 },
    );
  });
});
