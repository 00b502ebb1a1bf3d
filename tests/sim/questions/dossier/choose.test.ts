import { describe, expect, it } from "vitest";
import { chooseKind, isUndominated, type OwnerRow } from "../../../../sim/questions/dossier/choose.ts";

const ranged = (mean: number) => ({ mean, low: mean - 1, high: mean + 1 });

function row(name: string, changes: Partial<OwnerRow> = {}): OwnerRow {
  return {
    ...{ name, shifts: 1, capital: 100, open: [], people: 10, employed: 12, squareMetres: 500, kilowatts: 50 },
    ...{ cubicMetres: 10, costPerKg: ranged(2), overtimeSeconds: ranged(0), limits: [], spare: ranged(0.1) },
    ...{ yearsUntilTooSmall: null, value: ranged(50), best: 0.5, loss: 0, obstacles: [], undominated: true },
    ...changes,
  };
}

const outside = (share: number) => [{ name: "stun to stick", outside: share, source: "" }];

describe("chooseKind", () => {
  it("takes what is worth most", () => {
    const rows = [row("a"), row("b", { value: ranged(70), best: 0.4 }), row("c", { value: ranged(60), best: 0.1 })];
    expect(chooseKind(rows)).toEqual({ row: 1, by: "value", rivals: [2, 0], hindered: null });
  });

  it("puts animals before money: a kind that leaves more heads outside a limit is never built", () => {
    const rows = [row("kind", { limits: outside(0) }), row("rich", { limits: outside(0.001), value: ranged(999) })];
    expect(chooseKind(rows).row).toBe(0);
  });

  it("builds nothing that the site cannot bear, and says which of them only that hinders", () => {
    const hindered = row("better", { value: ranged(90), obstacles: ["electricity: 90 kW needed, the site has 60"] });
    expect(chooseKind([row("a"), hindered])).toMatchObject({ row: 0, hindered: 1 });
    expect(chooseKind([hindered])).toMatchObject({ row: null, hindered: null });
    const worse = { ...hindered, limits: outside(0.01) };
    expect(chooseKind([row("a"), worse]).hindered).toBeNull();
  });

  it("goes by the cost of a kilogram where a price is missing, and by people where no money is known", () => {
    const cheap = row("cheap", { value: null, best: null, costPerKg: ranged(1.5) });
    expect(chooseKind([row("a"), cheap])).toMatchObject({ row: 1, by: "cost" });
    const few = row("few", { value: null, best: null, costPerKg: null, people: 6, shifts: 2 });
    const more = row("more", { value: null, best: null, costPerKg: null, people: 10 });
    expect(chooseKind([few, more])).toMatchObject({ row: 1, by: "people" });
  });
});

describe("isUndominated", () => {
  it("is no kind that another beats in one thing and equals in all others", () => {
    const rows = [row("a"), row("b", { capital: 90 }), row("c", { capital: 120, spare: ranged(0.2) })];
    expect(rows.map((each) => isUndominated(each, rows))).toEqual([false, true, true]);
  });

  it("is every kind of those that are alike, and none that may not be built", () => {
    const rows = [row("a"), row("b"), row("c", { value: ranged(99), obstacles: ["floor"] })];
    expect(rows.map((each) => isUndominated(each, rows))).toEqual([true, true, false]);
  });
});
