import fc from "fast-check";
import { expect, it } from "vitest";
import { formatFault, parseJson, readPlan } from "../../sim/asked/plan/index.ts";
import { csvColumn } from "../../sim/asked/plan/schema/csvColumn.ts";
import { readStudy } from "../../sim/asked/study/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { stableJson } from "../../sim/days/results/index.ts";
import { runSingleDay } from "../../sim/days/run/index.ts";
import { time } from "../../sim/text/units/index.ts";
import { SMALL_PLAN } from "../support/smallPlan.ts";
import { wholePlan } from "../support/wholePlan.ts";

// biome-ignore lint/suspicious/noExplicitAny: a document of any shape
type Loose = any;
const FILES = { readText: () => "s\n5\n" };

/** Every place in a document, as the object or list that holds it and the key there. */
function places(value: Loose): [Loose, string][] {
  if (typeof value !== "object" || value === null) return [];
  return Object.keys(value).flatMap((key) => [[value, key] as [Loose, string], ...places(value[key])]);
}

/** Puts values into places of a document, in place; both are picked by number. */
function change(
  document: Loose,
  changes: readonly [number, Loose][],
  fits: (value: Loose) => boolean = () => true,
): void {
  for (const [choice, value] of changes) {
    const all = places(document).filter(([holder, key]) => fits(holder[key]));
    const [holder, key] = all[choice % all.length]!;
    holder[key] = typeof value === "function" ? value(holder[key]) : structuredClone(value);
  }
}

const junk = fc.oneof(
  fc.constantFrom(null, true, 0, -1, 2.5, 1e300, "", [], {}, [null], [[]], "__proto__", "constructor", "4 s", "50 %"),
  fc.jsonValue({ maxDepth: 2 }),
);

it("text of any kind is JSON with its value or has a first fault, with its line and column", () => {
  const text = fc.oneof(fc.string({ unit: "binary", maxLength: 200 }), fc.json(), fc.string({ unit: "grapheme" }));
  fc.assert(
    fc.property(text, (written) => {
      const { value, fault } = parseJson(written);
      if (fault === null) expect(value).toEqual(JSON.parse(written.replace(/^\uFEFF/, "")));
      else expect(formatFault(fault)).toMatch(/^line \d+, column \d+: [^\n]+; /);
    }),
    { seed: 20270303, numRuns: 800 },
  );
});

it("a study with up to three parts replaced by anything is read or refused, every fault with words", () => {
  const STUDY = {
    name: "Study",
    plan: SMALL_PLAN,
    seed: 7,
    replications: { until: { response: "headsPerHour", halfWidth: "2 %", atLeast: 10, atMost: 50 } },
    controls: [{ response: "deadOnArrival", mean: 2 }],
    responses: ["headsPerHour", "finish"],
    design: {
      factorial: {
        factors: [
          { name: "places", path: "line.skinning.buffer", levels: [2, 6] },
          {
            name: "way",
            options: [
              { name: "a", set: { "line.skinning.positions": 2 } },
              { name: "b", remove: ["notes"] },
            ],
          },
        ],
      },
    },
  };
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(), junk), { minLength: 1, maxLength: 3 }), (changes) => {
      const study: Loose = structuredClone(STUDY);
      change(study, changes);
      const reading = readStudy(study, FILES, { knownResponses: responsesOf });
      expect(reading.study === null).toBe(reading.faults.length > 0);
      for (const fault of reading.faults) expect(fault.found).not.toBe("");
    }),
    { seed: 20270304, numRuns: 80 },
  );
  expect(({} as Loose).polluted).toBeUndefined();
});

it("a sound plan of absurd figures ends, or is stopped in words; no figure of a result is lost to NaN", () => {
  const figures = ["0", "1e-300", "1e-9", "0.001", "1", "7.3", "1000", "1e9", "1e300"];
  const counts = [0, 1, 2, 3, 50, 1000, 100_000, 0.5, 1e-9];
  const isFigure = (value: Loose): boolean =>
    typeof value === "number" || (typeof value === "string" && /^\d[\d.]* /.test(value));
  const absurd = fc.tuple(fc.nat(), fc.nat()).map(([choice, which]): [number, Loose] => {
    const figure = (before: Loose) =>
      typeof before === "number"
        ? counts[which % counts.length]
        : before.replace(/^[\d.]+/, figures[which % figures.length]);
    return [choice, figure];
  });
  let sound = 0;
  fc.assert(
    fc.property(fc.array(absurd, { minLength: 1, maxLength: 3 }), (changes) => {
      const plan: Loose = wholePlan();
      Object.assign(plan.supply.loads[0], { crates: 6, headsPerCrate: 5 });
      plan.supply.loads[0].repeat.times = 2;
      change(plan, changes, isFigure);
      const reading = readPlan(plan, FILES);
      if (reading.plan === null) return;
      sound += 1;
      try {
        stableJson(runSingleDay(reading.plan, "1", "binned", { gambrel: "1", command: "c", mostEvents: 20_000 }));
      } catch (error) {
        expect(["DayTooLong", "PlantTooFull"]).toContain((error as Error).name);
      }
    }),
    { seed: 20270305, numRuns: 100 },
  );
  expect(sound).toBeGreaterThan(30);
});

it("a table of any text gives numbers of 0 or more, or a fault", () => {
  const cell = fc.oneof(
    fc.string(),
    fc.double().map(String),
    fc.constantFrom("5", "", '"', ";", ",", "\n", "=1", "\uFEFF"),
  );
  const table = fc.array(fc.array(cell, { maxLength: 3 }), { maxLength: 8 });
  fc.assert(
    fc.property(table, (rows) => {
      const text = ["s,who", ...rows.map((row) => row.join(","))].join("\n");
      const reading = csvColumn({ csv: "x.csv", column: "s", unit: "s" }, time, { readText: () => text });
      if (reading.fault !== null) expect(reading.fault.found).not.toBe("");
      else expect(reading.value!.every((value) => value >= 0 && Number.isFinite(value))).toBe(true);
    }),
    { seed: 20270306, numRuns: 1000 },
  );
});
