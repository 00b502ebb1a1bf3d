import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { flowWarnings, formatFault, readPlan } from "../../../../../sim/asked/plan/index.ts";

type Json = Record<string, unknown>;

const station = (name: string, crew: unknown, more: Json = {}) => ({
  ...{ name, kind: "station", work: "manual", cycle: "10 s", buffer: null, crew },
  ...more,
});

/** Invented: three stations, one crew each, heads every 10 s for an hour from 06:00. */
function file(changes: Json = {}): Json {
  return {
    name: "crews",
    day: { start: "06:00", shifts: [{ name: "early", from: "06:00", to: "10:00" }] },
    supply: { stream: { interarrival: "10 s", heads: 360 } },
    crews: [
      { name: "live", people: 1 },
      { name: "dressing", people: 2 },
    ],
    line: [station("hanging", "live"), station("skinning", "dressing", { positions: 2, cycle: "20 s" })],
    ...changes,
  };
}

function warningsOf(json: Json): string[] {
  const { plan, ...reading } = readPlan(json, { readText: () => "" });
  if (plan === null) throw new Error(reading.faults.map(formatFault).join("\n"));
  const { warnings } = reading as { warnings: Parameters<typeof formatFault>[0][] };
  return [...warnings, ...flowWarnings(plan, json)].map(formatFault);
}

const TWO_SHIFTS = {
  start: "06:00",
  shifts: [
    { name: "early", from: "06:00", to: "10:00" },
    { name: "late", from: "10:00", to: "14:00" },
  ],
};

describe("a crew smaller than the positions it has to man", () => {
  it("is told with both numbers and the remedy", () => {
    const line = [station("hanging", "live"), station("skinning", "dressing", { positions: 5, peoplePerPosition: 1 })];
    expect(warningsOf(file({ line }))).toEqual([
      "crews[1].people: 'dressing' has 2 people, but the 5 positions of 'skinning' take 5: 3 positions are never manned; give 5 people, or 'skinning' 2 positions",
    ]);
  });

  it("is told of the shift in which it is", () => {
    const crews = [
      { name: "live", people: 1 },
      { name: "dressing", people: { early: 2, late: 1 } },
    ];
    expect(warningsOf(file({ day: TWO_SHIFTS, crews }))).toEqual([
      "crews[1].people: 'dressing' has 1 person in 'late', but the 2 positions of 'skinning' take 2: 1 position is never manned; give 2 people, or 'skinning' 1 position",
    ]);
  });

  it("is told of a shared crew where one place alone takes more than all of it", () => {
    const line = [station("hanging", "dressing"), station("skinning", "dressing", { positions: 3 })];
    expect(warningsOf(file({ line }))[0]).toMatch(
      /^crews\[1\]\.people: 'dressing' has 2 people, but the 3 positions of 'skinning' take 3: even if all of them work there, 1 position is never/u,
    );
  });

  it("is told of a shared crew that the target keeps busier than it is large", () => {
    const line = [station("hanging", "dressing"), station("skinning", "dressing", { positions: 2, cycle: "20 s" })];
    // 360 heads an hour are one in 10 s; a head takes 10 + 20 person-seconds: 3 people.
    expect(warningsOf(file({ line, target: "360 /h" }))).toEqual([
      "crews[1].people: 'dressing' has at most 2 people for the 3 that the positions of 'hanging', 'skinning' take; the target of 360 /h keeps 3 people at work there all the time; 3 people or more, or a lower target",
    ]);
  });

  it.each([
    ["as many people as positions", {}],
    [
      "a shared crew that has time for the target",
      { line: [station("hanging", "dressing"), station("skinning", "dressing", { positions: 2 })], target: "300 /h" },
    ],
    [
      "a shared crew without a target",
      { line: [station("hanging", "dressing"), station("skinning", "dressing", { positions: 2, cycle: "20 s" })] },
    ],
    [
      "relief that makes up the rest",
      { line: [station("hanging", "live"), station("skinning", ["dressing", "live"], { positions: 3 })] },
    ],
  ])("is not told with %s", (_, changes) => {
    expect(warningsOf(file(changes))).toEqual([]);
  });
});

describe("work that nobody is left for", () => {
  const early = [
    { name: "live", people: 1 },
    { name: "dressing", people: { early: 2, late: 0 } },
  ];

  it("is told with when the crew goes and when the last head comes", () => {
    // 1800 heads, one in 10 s: the last one arrives 5 h after the start, is hung in 10 s, and comes to skinning then.
    const supply = { stream: { interarrival: "10 s", heads: 1800 } };
    expect(warningsOf(file({ day: TWO_SHIFTS, crews: early, supply }))).toEqual([
      "crews[1].people: 'dressing' has nobody for 'skinning' after 10:00, the end of 'early', and at mean times the last head gets there at 11:00: what comes there later stays unworked, and the day does not end; give the crew somebody in 'late', or end hanging earlier",
    ]);
  });

  it("is none behind a stage that heads leave until an hour on every day of a week", () => {
    const supply = { stream: { interarrival: "10 s", heads: 1800 } };
    const chilling = { name: "chilling", kind: "dwell", places: null, dwell: "30 min" };
    const line = [station("hanging", "live"), chilling, station("packing", "dressing", { positions: 2 })];
    const week = (until: string, days: Json[] = [{ name: "Monday" }, { name: "Tuesday" }]) => ({
      ...file({ day: TWO_SHIFTS, crews: early, supply, line }),
      week: { days, overnight: { chilling: until } },
    });
    expect(warningsOf(week("09:30"))).toEqual([]);
    // Until the crew goes: what comes out last may stand there when it has gone.
    expect(warningsOf(week("10:00"))).toHaveLength(1);
    expect(
      warningsOf(week("09:30", [{ name: "Monday" }, { name: "Tuesday", overnight: { chilling: "10:00" } }])),
    ).toHaveLength(1);
  });

  it("is told of who repairs", () => {
    const breakdowns = [{ name: "jam", uptime: "1 h", repair: "2 min", crew: "fitters" }];
    const line = [station("hanging", "live"), station("skinning", "dressing", { positions: 2, breakdowns })];
    const crews = [
      { name: "live", people: 1 },
      { name: "dressing", people: 2 },
      { name: "fitters", people: { early: 1, late: 0 } },
    ];
    const supply = { stream: { interarrival: "10 s", heads: 1800 } };
    expect(warningsOf(file({ day: TWO_SHIFTS, crews, line, supply }))[0]).toMatch(
      /^crews\[2\]\.people: 'fitters' has nobody for 'jam' at 'skinning' after 10:00, .*: what breaks later is not repaired/u,
    );
  });

  it("is not told where all heads are through long before, nor where the crew is there to the end", () => {
    expect(warningsOf(file({ day: TWO_SHIFTS, crews: early }))).toEqual([]);
    const supply = { stream: { interarrival: "10 s", heads: 1800 } };
    const crews = [
      { name: "live", people: 1 },
      { name: "dressing", people: 2 },
    ];
    expect(warningsOf(file({ day: TWO_SHIFTS, crews, supply }))).toEqual([]);
  });
});

describe("the example plans", () => {
  const root = join(import.meta.dirname, "../../../../../experiments");
  const found = ["plans", "plans/parts", "lessons/plans"].flatMap((folder) =>
    readdirSync(join(root, folder))
      .filter((name) => name.endsWith(".json"))
      .map((name) => [`${folder}/${name}`]),
  );
  it.each(found)("have none of these faults: %s", (name) => {
    const json = JSON.parse(readFileSync(join(root, name), "utf8"));
    expect(warningsOf(json)).toEqual([]);
  });
});
