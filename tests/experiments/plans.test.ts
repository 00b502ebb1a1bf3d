import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { formatFault, readPlan } from "../../sim/asked/plan/index.ts";
import { type BoundSeconds, runDay } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";
import { relativeError } from "../support/relativeError.ts";

const FOLDER = resolve(import.meta.dirname, "../../experiments/plans");
const FILES = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".json"));

function read(name: string) {
  const path = join(FOLDER, name);
  const readText = (other: string) => readFileSync(join(dirname(path), other), "utf8");
  return readPlan(JSON.parse(readFileSync(path, "utf8")), { readText });
}

describe("every plan in experiments/", () => {
  it("is there", () => {
    expect(FILES.length).toBeGreaterThan(15);
  });

  for (const name of FILES) {
    it(`${name} is sound, says that it is invented, and names the source of every limit`, () => {
      const { plan, faults } = read(name);
      expect(faults.map(formatFault)).toEqual([]);
      expect(plan!.sources[0]).toMatchObject({ path: "", kind: "invented" });
      for (const limit of plan!.limits) expect(limit.source.length).toBeGreaterThan(20);
    });

    it(`${name} runs to its end with heads, crates, people and kilograms conserved at every event, and every second owed to a cause`, () => {
      const { plan } = read(name);
      const day = runDay(compileLine(plan!), { seed: "experiments", replication: 0, check: true, binding: true });
      expect(day.status).toBe("finished");
      expect(day.heads.out.carcass).toBeGreaterThan(400);
      const sum = (masses: Record<string, number>) => Object.values(masses).reduce((total, kg) => total + kg, 0);
      const { liveKg, fromBeforeKg = 0, byProductsKg, outKg, onLineKg } = day.masses;
      expect(relativeError(sum(byProductsKg) + sum(outKg) + onLineKg, liveKg + fromBeforeKg)).toBeLessThan(1e-9);
      const owed = (bound: BoundSeconds[]) => bound.reduce((total, { seconds }) => total + seconds, 0);
      expect(relativeError(owed(day.binding!.day), day.finishSeconds)).toBeLessThan(1e-12);
      if (plan!.supply.kind !== "saturated")
        expect(relativeError(owed(day.binding!.work!), day.workFinishSeconds)).toBeLessThan(1e-12);
    });
  }
});
