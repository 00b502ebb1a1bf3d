import { describe, expect, it } from "vitest";
import { steps } from "../../../../sim/day/line/index.ts";
import type { LayoutRoom, Rectangle, Spot } from "../../../../sim/questions/dossier/index.ts";
import { plantLayout } from "../../../../sim/questions/dossier/index.ts";
import { does } from "../../../../sim/text/kinds/index.ts";
import { CHAINS, FERNCOTE, LARGE, SMALL, USUAL } from "../../../support/layoutCases.ts";

const CASES = [SMALL, USUAL, LARGE, FERNCOTE, CHAINS].map((of) => of());
/** Metres: far below what anybody draws. */
const NOTHING = 1e-6;

function overlap(a: Rectangle, b: Rectangle): boolean {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const along = Math.min(a.y + a.depth, b.y + b.depth) - Math.max(a.y, b.y);
  return across > NOTHING && along > NOTHING;
}

function isWithin(inner: Rectangle, outer: Rectangle): boolean {
  return (
    inner.x >= outer.x - NOTHING &&
    inner.y >= outer.y - NOTHING &&
    inner.x + inner.width <= outer.x + outer.width + NOTHING &&
    inner.y + inner.depth <= outer.y + outer.depth + NOTHING
  );
}

function pairs<Thing>(things: readonly Thing[]): [Thing, Thing][] {
  return things.flatMap((a, index) => things.slice(index + 1).map((b): [Thing, Thing] => [a, b]));
}

const lengthOf = (points: readonly Spot[]) =>
  points.slice(1).reduce((sum, { x, y }, index) => sum + Math.hypot(x - points[index]!.x, y - points[index]!.y), 0);
const inside = (rooms: readonly LayoutRoom[]) => rooms.filter(({ kind }) => kind !== "yard");

describe.each(CASES)("the layout of $name", ({ plan, layout, days }) => {
  const { rooms, rail, workPlaces, items, doors, wallMetres } = layout;

  it("has no two rooms that overlap, all of them within the building, the yard outside", () => {
    expect(pairs(rooms).filter(([a, b]) => overlap(a, b))).toEqual([]);
    expect(inside(rooms).filter((room) => !isWithin(room, layout.building))).toEqual([]);
    expect(rooms.filter((room) => room.kind === "yard" && overlap(room, layout.building))).toEqual([]);
    expect(rooms.filter((room) => !isWithin(room, layout.bounds))).toEqual([]);
  });

  it("leaves nothing in the building but rooms and walls of the stated thickness, and its areas add up", () => {
    const rows = new Map<number, LayoutRoom[]>();
    for (const room of inside(rooms)) rows.set(room.y, [...(rows.get(room.y) ?? []), room]);
    for (const row of rows.values()) {
      const clear = row.reduce((sum, { width }) => sum + width, 0);
      expect(clear + (row.length + 1) * wallMetres).toBeCloseTo(layout.building.width, 6);
      expect(new Set(row.map(({ depth }) => depth.toFixed(6))).size).toBe(1);
    }
    const deep = [...rows.values()].reduce((sum, [first]) => sum + first!.depth, 0);
    expect(deep + (rows.size + 1) * wallMetres).toBeCloseTo(layout.building.depth, 6);
    const rowOf = (kind: string) => layout.areas.find((each) => each.kind === kind)!.squareMetres;
    const floor = inside(rooms).reduce((sum, { width, depth }) => sum + width * depth, 0);
    expect(floor + rowOf("walls")).toBeCloseTo(layout.building.width * layout.building.depth, 6);
    expect(rowOf("building")).toBeCloseTo(floor + rowOf("walls"), 6);
    for (const { squareMetres, width, depth, neededSquareMetres } of rooms) {
      expect(squareMetres).toBeCloseTo(width * depth, 9);
      expect(squareMetres).toBeGreaterThan(neededSquareMetres - 1e-4);
    }
  });

  it("has every work place, stack, hook rail and container in its room and none on another", () => {
    const room = (name: string) => rooms.find((each) => each.name === name)!;
    const things = [...workPlaces, ...items];
    expect(things.filter((thing) => !isWithin(thing, room(thing.room)))).toEqual([]);
    for (const { name } of rooms)
      expect(pairs(things.filter((thing) => thing.room === name)).filter(([a, b]) => overlap(a, b))).toEqual([]);
  });

  it("has a work place for every position of the plan's line", () => {
    const positions = steps(plan).flatMap((step) =>
      does(step, "work") && !does(step, "handle crates") ? [{ name: step.name, positions: step.of.positions }] : [],
    );
    expect(positions.length).toBeGreaterThan(8);
    for (const { name, positions: count } of positions)
      expect(workPlaces.filter(({ stage }) => stage === name)).toHaveLength(count);
  });

  it("draws the rail in one piece, each stage as long as the plan makes it", () => {
    for (const [index, { points, metres }] of rail.entries()) {
      expect(lengthOf(points)).toBeCloseTo(metres, 9);
      if (index === 0) continue;
      const before = rail[index - 1]!.points.at(-1)!;
      expect(Math.hypot(points[0]!.x - before.x, points[0]!.y - before.y)).toBeLessThan(NOTHING);
    }
    expect(layout.stages.length).toBeGreaterThan(5);
    for (const { plannedMetres, drawnMetres } of layout.stages) expect(drawnMetres).toBeCloseTo(plannedMetres, 9);
  });

  it("gives every way at least the length that the plan's time makes, and says what was added", () => {
    for (const { plannedMetres, plannedSeconds, metresPerSecond, drawnMetres } of layout.ways) {
      expect(plannedMetres).toBeCloseTo(plannedSeconds * metresPerSecond, 9);
      expect(drawnMetres).toBeGreaterThan(plannedMetres - NOTHING);
    }
  });

  it("bends nothing between stunning and sticking, so that no stunned head takes longer than the plan says", () => {
    const first = rail.findIndex(({ stage, use }) => stage === "stunning" && use === "positions");
    const last = rail.findLastIndex(({ stage, use }) => stage === "sticking" && use === "positions");
    const spots = rail.slice(first, last + 1).flatMap(({ points }) => points);
    expect(first).toBeGreaterThan(-1);
    expect(new Set(spots.map(({ x }) => x.toFixed(6))).size).toBe(1);
    expect(rail.slice(first, last + 1).filter(({ use }) => use === "joins")).toEqual([]);
  });

  it("goes from dirty to clean and never back", () => {
    const order = [
      "lairage",
      "hanging",
      "kill",
      "skinning",
      "evisceration",
      "chilling",
      "cutting and packing",
      "dispatch",
    ];
    const row = rooms
      .filter(({ lineRoom, name }) => lineRoom !== null || name === "dispatch")
      .toSorted((a, b) => a.x - b.x);
    const places = row.map(({ name }) => order.indexOf(name));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    for (const stretch of rail) expect(rooms.find(({ name }) => name === stretch.room)!.kind).not.toBe("people");
  });

  it("keeps people's and product's doors apart, and the two sides: nobody gets from one to the other but through both changing rooms", () => {
    const use = new Map<string, Set<string>>();
    for (const door of doors) {
      const key = `${door.x.toFixed(3)} ${door.y.toFixed(3)}`;
      use.set(key, (use.get(key) ?? new Set()).add(door.use));
    }
    expect([...use.values()].filter((uses) => uses.size > 1)).toEqual([]);
    const reach = (start: string, without: readonly string[] = []): Set<string> => {
      const found = new Set([start]);
      for (const name of found)
        for (const { from, to, use: by } of doors) {
          if (by !== "people" || (from !== name && to !== name)) continue;
          const other = from === name ? to : from;
          if (other !== null && !without.includes(other)) found.add(other);
        }
      return found;
    };
    const unclean = reach("corridor, unclean side", ["break room"]);
    expect(unclean).not.toContain("corridor, clean side");
    expect(reach("corridor, unclean side", ["changing room, clean side"])).not.toContain("corridor, clean side");
    const everywhere = reach("break room");
    for (const { name, lineRoom } of rooms) if (lineRoom !== null) expect(everywhere).toContain(name);
  });

  it("has every door in a wall between its two rooms, wide enough for the people of the largest shift", () => {
    const around = ({ x, y, width, depth }: Rectangle) => ({
      x: x - wallMetres,
      y: y - wallMetres,
      width: width + 2 * wallMetres,
      depth: depth + 2 * wallMetres,
    });
    for (const door of doors) {
      const spot = { x: door.x, y: door.y, width: 0, depth: 0 };
      for (const name of [door.from, door.to]) {
        if (name === null) continue;
        const room = rooms.find((each) => each.name === name)!;
        expect(isWithin(spot, around(room)), `${door.from} to ${door.to}`).toBe(true);
        expect(
          door.upright
            ? room.x < door.x && door.x < room.x + room.width
            : room.y < door.y && door.y < room.y + room.depth,
        ).toBe(false);
      }
    }
  });

  it("hangs every hook of the plan and stacks every crate of its lairage", () => {
    const hooks = plan.line.flatMap((stage) =>
      "headsPerHook" in stage && stage.dwell.kind === "chilling" ? [Math.ceil(stage.places / stage.headsPerHook)] : [],
    );
    const held = (what: string) =>
      items.filter((item) => item.what === what).reduce((sum, { holds }) => sum + holds, 0);
    expect(held("chiller rail")).toBe(hooks.reduce((sum, each) => sum + each, 0));
    expect(layout.chiller!.hooksPerSquareMetre).toBeCloseTo(layout.chiller!.hooks / layout.chiller!.squareMetres, 9);
    expect(held("crate stack")).toBe(plan.liveHandling!.toHanging.at(-1)!.places);
  });

  it("comes out the same a second time", () => {
    expect(plantLayout(plan, days)).toEqual(layout);
  });
});

describe("a layout", () => {
  it("of a plan with places and positions has these lengths, worked by hand: places x 0.3 m + positions x 1.2 m or, machines, 1.8 m", () => {
    const { layout } = FERNCOTE();
    const metres = Object.fromEntries(layout.stages.map(({ stage, drawnMetres }) => [stage, drawnMetres]));
    expect(metres.hanging).toBeCloseTo(3 * 1.2, 9);
    expect(metres.stunning).toBeCloseTo(3 * 0.3 + 1.2, 9);
    expect(metres.bleeding).toBeCloseTo(36 * 0.3, 9);
    expect(metres.skinning).toBeCloseTo(4 * 0.3 + 1.8, 9);
    expect(metres.evisceration).toBeCloseTo(5 * 0.3 + 3 * 1.2, 9);
    // 600 heads/h / 0.92 x 0.3 m = 195.65 m/h.
    expect(layout.ways[0]!.metresPerSecond * 3600).toBeCloseTo(195.652, 3);
    expect(layout.ways[0]!.plannedMetres).toBeCloseTo((10 * 195.652) / 3600, 4);
  });

  it("of chains is as long as they are, at their speed", () => {
    const { layout, plan } = CHAINS();
    const chains = plan.line.filter((stage) => "secondsPerShackle" in stage);
    const total = layout.stages.reduce(
      (sum, { places, placeMetres, positions, positionMetres }) =>
        sum + places * placeMetres + positions * positionMetres,
      0,
    );
    expect(chains.length).toBeGreaterThan(1);
    const own = chains.reduce((sum, { places, pitchMetres }) => sum + places * pitchMetres!, 0);
    const onChains = new Set(
      chains.flatMap(({ name, stations }) => [name, ...stations.map((station) => station.name)]),
    );
    const drawn = layout.stages
      .filter(({ stage }) => onChains.has(stage))
      .reduce((sum, { drawnMetres }) => sum + drawnMetres, 0);
    expect(drawn).toBeCloseTo(own, 6);
    expect(total).toBeGreaterThan(own);
    expect(layout.ways[0]!.metresPerSecond).toBeCloseTo(chains[0]!.pitchMetres! / chains[0]!.secondsPerShackle, 9);
  });

  it("grows with what the plan asks of it", () => {
    const floor = [SMALL(), USUAL(), LARGE()].map(({ layout }) => layout.areas.at(-1)!.squareMetres);
    expect(floor[1]! / floor[0]!).toBeGreaterThan(1.3);
    expect(floor[2]! / floor[1]!).toBeGreaterThan(2);
    expect(floor[2]! / floor[1]!).toBeLessThan(10);
  });

  it("follows the figures of the plan's site", () => {
    const { plan, days } = USUAL();
    const wider = {
      given: { "line.pitch": 0.6, "rooms.wall": 0.3 },
      rooms: { "final trim": "skinning" as const },
      categories: {},
    };
    const layout = plantLayout({ ...plan, site: wider }, days);
    expect(layout.wallMetres).toBe(0.3);
    expect(layout.stages.find(({ stage }) => stage === "bleeding")!.drawnMetres).toBeCloseTo(
      2 * USUAL().layout.stages.find(({ stage }) => stage === "bleeding")!.drawnMetres,
      9,
    );
    expect(layout.figures.find(({ key }) => key === "line.pitch")).toMatchObject({ value: "600 mm", source: "given" });
    expect(USUAL().layout.figures.find(({ key }) => key === "line.pitch")).toMatchObject({
      value: "0.3 m",
      source: "assumed",
    });
  });

  it("needs a day", () => {
    expect(() => plantLayout(USUAL().plan, [])).toThrow(RangeError);
  });
});
