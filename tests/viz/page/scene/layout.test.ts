import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { type LineSketch, recordCourse } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { layoutOf, SIZE, stageUnder } from "../../../../viz/page/scene/layout.ts";

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

  it("keeps off-line stages in the row of the stage that sends to them where that costs no row", () => {
    for (const [name, width] of [
      ["ferncote.json", 964],
      ["parts/trim-and-return.json", 964],
      ["every-part.json", 1500],
    ] as const) {
      const sketch = SKETCHES.get(name)!;
      const layout = layoutOf(sketch, width);
      const sidings = layout.stages.filter((place) => place?.look === "siding");
      expect(sidings.length).toBeGreaterThan(0);
      for (const place of sidings) expect(place!.row).toBe(layout.stages[sketch.stages[place!.stage]!.sentFrom]!.row);
    }
    expect(layoutOf(SKETCHES.get("tavelmoss-chains.json")!, 964).rows.length).toBe(3);
    expect(layoutOf(SKETCHES.get("every-part.json")!, 964).rows.length).toBe(4);
  });

  it("leaves room below the crates for the name of the station that holds the line back, and writes nothing under 11 pixels", () => {
    for (const width of [340, 964, 1500]) {
      for (const sketch of SKETCHES.values()) {
        const { rows, scale } = layoutOf(sketch, width);
        if (sketch.supply === "loads") expect(rows[0]!.height).toBeGreaterThanOrEqual(SIZE.yardWords * scale);
        expect(SIZE.text * scale).toBeGreaterThanOrEqual(10.999);
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
