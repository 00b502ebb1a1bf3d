import fc from "fast-check";
import { expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { wholePlan } from "../../../support/wholePlan.ts";
import type { Loose } from "./wholeMessages.ts";

const SEED = 20270118;
const NO_FILES = { readText: () => "" };

/** Every place in the document, as the object or array that holds it and the key there. */
function places(value: Loose): [Loose, string][] {
  if (typeof value !== "object" || value === null) return [];
  return Object.keys(value).flatMap((key) => [[value, key] as [Loose, string], ...places(value[key])]);
}

/** What may stand anywhere by mistake: other kinds, names of stages and of nothing, quantities of other families. */
const junk = fc.oneof(
  fc.constantFrom(null, true, 0, -1, 2.5, 1e9, "", [], {}, [null], [[]], { name: 5 }, { to: "trim" }, ["trim", 3]),
  fc.constantFrom("trim", "hanging", "kill chain", "sticking", "nothing", "4 s", "-4 s", "4 kg", "5 EUR/kg", "50 %"),
  fc.jsonValue({ maxDepth: 2 }),
);

it("reads or refuses a plan with up to three parts replaced by anything, and never breaks down", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(), junk), { minLength: 1, maxLength: 3 }), (changes) => {
      const plan = wholePlan();
      for (const [choice, value] of changes) {
        const all = places(plan);
        const [holder, key] = all[choice % all.length] as [Loose, string];
        holder[key] = structuredClone(value);
      }
      const { plan: read, faults } = readPlan(plan, NO_FILES);
      expect(read === null).toBe(faults.length > 0);
      for (const fault of faults) expect(fault.found).not.toBe("");
    }),
    { seed: SEED, numRuns: 1000 },
  );
});
