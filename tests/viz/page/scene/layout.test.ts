import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { type LineSketch, recordCourse } from "../../../../sim/course/index.ts";
import { compileLine } from "../../../../sim/line/index.ts";
import { readPlan } from "../../../../sim/plan/index.ts";
import { layoutOf } from "../../../../viz/page/scene/layout.ts";
import { stageUnder } from "../../../../viz/page/scene/stageUnder.ts";

const FOLDER = resolve(import.meta.dirname, "../../../../experiments/plans");

function sketchOf(name: string): LineSketch {
  const readText = (other: string) => readFileSync(join(FOLDER, other), "utf8");
  const { plan } = readPlan(JSON.parse(readText(name)), { readText });
  return recordCourse(compileLine(plan!), { seed: "layout", replication: 0 }).sketch;
}

const PLANS = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));
const SKETCHES = new Map(PLANS.map((name) => [name, sketchOf(name)]));

describe("layoutOf", () => {
  it.each(PLANS)("places every stage of %s once, in line order, without overlap, at any width", (name) => {
    const sketch = SKETCHES.get(name)!;
    for (const width of [340, 964, 1500]) {
      const layout = layoutOf(sketch, width);
      const missing = sketch.stages.filter(({ kind }, stage) => kind !== "crates" && layout.stages[stage] === null);
      expect(missing.map((stage) => stage.name)).toEqual([]);
      let [row, x] = [0, 0];
      for (const place of layout.stages) {
        if (place === null || place.look === "siding" || sketch.stages[place.stage]!.kind === "chain station") continue;
        if (sketch.stages[place.stage]!.offLine) continue;
        if (place.row > row) [row, x] = [place.row, 0];
        expect(place.row).toBe(row);
        expect(place.cell.from).toBeGreaterThanOrEqual(x - 0.01);
        x = place.cell.to;
        expect(x).toBeLessThanOrEqual(width + 0.01);
      }
    }
  });

  it("finds the stage under a point: the one whose cell it is in", () => {
    const sketch = SKETCHES.get("ferncote.json")!;
    const layout = layoutOf(sketch, 964);
    for (const place of layout.stages) {
      if (place === null || place.look === "siding") continue;
      const y = layout.rows[place.row]!.y + 60;
      expect(stageUnder(layout, (place.cell.from + place.cell.to) / 2, y)).toBe(place.stage);
    }
    expect(stageUnder(layout, 1, 1)).toBe(-1);
  });
});
