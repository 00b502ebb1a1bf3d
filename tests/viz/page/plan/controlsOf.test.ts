import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { formatFault, readPlan, setPathInPlace } from "../../../../sim/asked/plan/index.ts";
import { changesOf } from "../../../../viz/page/plan/control.ts";
import { controlsOf } from "../../../../viz/page/plan/controlsOf.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

const FOLDER = resolve(import.meta.dirname, "../../../../experiments/plans");
const PLANS = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));

function read(name: string) {
  const path = join(FOLDER, name);
  const files = { readText: (other: string) => readFileSync(join(dirname(path), other), "utf8") };
  // The page plays the usual day of a plan with a week.
  const { week: _, ...json } = JSON.parse(readFileSync(path, "utf8"));
  return { json, files };
}

const changed = (moves: Record<string, number>, plan: unknown = SMALL_PLAN) => changesOf(plan, controlsOf(plan), moves);

describe("controlsOf", () => {
  it.each(PLANS)("gives %s controls whose middle value leaves a sound plan, each by itself", (name) => {
    const { json, files } = read(name);
    const controls = controlsOf(json);
    expect(controls.length).toBeGreaterThan(3);
    for (const control of controls) {
      // More people, places and time are always sound; fewer may contradict the rest, and are told then.
      const value = Math.min(control.max, control.base + control.step);
      const variant = structuredClone(json);
      for (const [path, set] of Object.entries(changesOf(json, controls, { [control.id]: value }))) {
        expect(setPathInPlace(variant, path, set)).toBeNull();
      }
      expect(JSON.stringify(variant)).not.toBe(JSON.stringify(json));
      expect(readPlan(variant, files).faults.map(formatFault), control.id).toEqual([]);
    }
  });

  it.each(PLANS)("lets the people of a crew of %s go down to as few as its positions take, and no further", (name) => {
    const { json, files } = read(name);
    const controls = controlsOf(json).filter(({ path }) => path.startsWith("crews"));
    for (const control of controls) {
      const variant = structuredClone(json);
      for (const [path, set] of Object.entries(changesOf(json, controls, { [control.id]: control.min }))) {
        expect(setPathInPlace(variant, path, set)).toBeNull();
      }
      expect(readPlan(variant, files).faults.map(formatFault), control.id).toEqual([]);
    }
  });

  it("sets nothing for a control at its base, and for what the plan does not have", () => {
    const controls = controlsOf(SMALL_PLAN);
    expect(changed(Object.fromEntries(controls.map(({ id, base }) => [id, base])))).toEqual({});
    expect(changed({ "line.nothing.buffer": 3 })).toEqual({});
    expect(controlsOf("no plan")).toEqual([]);
  });

  it("changes counts, times and their variation, together where they stand in one place", () => {
    expect(changed({ "line.skinning.positions": 4, "line.skinning.buffer": 8 })).toEqual({
      "line.skinning.positions": 4,
      "line.skinning.buffer": 8,
    });
    expect(changed({ "line.skinning.cycle mean": 30, "line.skinning.cycle cv": 0.5 })).toEqual({
      "line.skinning.cycle": { lognormal: { mean: "30 s", cv: 0.5 } },
    });
    expect(changed({ "line.hanging.rate": 400 })).toEqual({ "line.hanging.rate": "400 /h" });
    expect(changed({ "line.bleeding.dwell mean": 100, "line.bleeding.dwell cv": 0.2 })).toEqual({
      "line.bleeding.dwell": { lognormal: { mean: "100 s", cv: 0.2 } },
    });
    expect(changed({ "line.skinning.cycle cv": 0 })).toEqual({ "line.skinning.cycle": "26 s" });
  });

  it("changes people in every shift that has some, lorries after the first, and stops", () => {
    expect(changed({ "crews.dressing.people": 5 })).toEqual({ "crews.dressing.people": { early: 5 } });
    expect(changed({ "supply.loads shift": -20 })).toEqual({
      "supply.loads": [SMALL_PLAN.supply.loads[0], { ...SMALL_PLAN.supply.loads[1], at: "06:10" }],
    });
    // No lorry comes before the clock starts.
    expect(changed({ "supply.loads shift": -120 })["supply.loads"]).toMatchObject([{}, { at: "05:30" }]);
    expect(changed({ "line.stunning.breakdowns.jam.uptime mean": 600 })).toEqual({
      "line.stunning.breakdowns.jam.uptime": { exponential: { mean: "600 s" } },
    });
    expect(changed({ "line.hanging.breakdowns": 6 })["line.hanging.breakdowns"]).toMatchObject([
      { uptime: { exponential: { mean: "600 s" } } },
    ]);
    expect(changed({ "day.breaks.coffee.length": 20 })).toEqual({ "day.breaks.coffee.length": "20 min" });
  });

  it("names stages with odd names so that their paths can be read", () => {
    const plan = { ...SMALL_PLAN, line: SMALL_PLAN.line.map((stage) => ({ ...stage, name: `${stage.name} no. "1"` })) };
    const set = changed({ 'line["skinning no. \\"1\\""].positions': 4 }, plan);
    expect(setPathInPlace(structuredClone(plan), Object.keys(set)[0]!, 4)).toBeNull();
  });
});
