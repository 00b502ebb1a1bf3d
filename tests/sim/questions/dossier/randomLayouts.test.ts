import fc from "fast-check";
import { expect, it } from "vitest";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import {
  connectionSheet,
  equipmentList,
  plantLayout,
  type Rectangle,
} from "../../../../sim/questions/dossier/index.ts";
import { layoutChart, layoutSheet, serverDocument } from "../../../../viz/index.ts";
import { randomPlan } from "../../../support/randomPlans.ts";

const NOTHING = 1e-6;

function overlap(a: Rectangle, b: Rectangle): boolean {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  return across > NOTHING && Math.min(a.y + a.depth, b.y + b.depth) - Math.max(a.y, b.y) > NOTHING;
}

it("any plan can be drawn, listed and connected: rooms large enough and apart, everything in its room, every figure a number", () => {
  fc.assert(
    fc.property(randomPlan, (plan) => {
      const days = [runDay(compileLine(plan), { seed: "random", replication: 0, traces: "binned" })];
      const layout = plantLayout(plan, days);
      const { rooms } = layout;
      expect(rooms.flatMap((a, index) => rooms.slice(index + 1).filter((b) => overlap(a, b)))).toEqual([]);
      for (const { squareMetres, neededSquareMetres, name } of rooms)
        expect(squareMetres, name).toBeGreaterThan(neededSquareMetres - 1e-4);
      for (const { stage, plannedMetres, drawnMetres } of layout.stages)
        expect(drawnMetres, stage).toBeCloseTo(plannedMetres, 6);
      for (const thing of [...layout.workPlaces, ...layout.items]) {
        const room = rooms.find(({ name }) => name === thing.room)!;
        expect(thing.x >= room.x - NOTHING && thing.x + thing.width <= room.x + room.width + NOTHING, thing.room).toBe(
          true,
        );
        expect(thing.y >= room.y - NOTHING && thing.y + thing.depth <= room.y + room.depth + NOTHING, thing.room).toBe(
          true,
        );
      }
      for (const { rows } of connectionSheet(plan, layout, days).parts)
        for (const { what, value } of rows) expect(Number.isFinite(value) && value >= 0, what).toBe(true);
      for (const { name, number } of equipmentList(plan, layout, days)) expect(number, name).toBeGreaterThan(0);
      expect(layoutSheet(layout, serverDocument()).widthMillimetres).toBeGreaterThan(0);
      expect(layoutChart(layout, { document: serverDocument() }).querySelectorAll("#rooms rect")).toHaveLength(
        rooms.length,
      );
    }),
    { numRuns: 12, seed: 22 },
  );
});
