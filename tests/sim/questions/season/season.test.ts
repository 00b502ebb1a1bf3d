import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { formatFault } from "../../../../sim/asked/plan/index.ts";
import {
  readSeason,
  readSeasonResult,
  type Season,
  type SeasonQuestion,
  seasonJsonSchema,
  seasonOf,
} from "../../../../sim/questions/season/index.ts";
import { seasonChart, seasonChartTable, seasonView, serverDocument } from "../../../../viz/index.ts";
import { seasonTable } from "../../../../viz/words/index.ts";
import { NO_FILES } from "../../../support/demands.ts";
import { crateLorries, HANGING } from "../../../support/hangingPlan.ts";
import { simulateHere } from "../../../support/improving.ts";

type Json = Record<string, unknown>;

/** Two people, ten seconds a head: a hundred heads take 8 min 20 s, and the shift has an hour. All invented. */
const PLAN: Json = {
  ...HANGING,
  line: [{ name: "hanging", kind: "station", positions: 2, cycle: "10 s", crew: "line" }],
  week: {
    days: [
      { name: "Monday", loads: crateLorries(4) },
      { name: "Tuesday", loads: crateLorries(6) },
    ],
    orders: [{ name: "hotel", day: "Tuesday", by: "07:00", carcasses: 1000 }],
  },
};

const FILE: Json = {
  ...{ name: "a year", plan: PLAN, begins: "2031-01-06", runs: 2 },
  weeks: [
    { name: "usual", times: 40 },
    { name: "busy", times: 10, heads: 2 },
    { name: "as ever", times: 2 },
  ],
};

function question(more: Json = {}): SeasonQuestion {
  const { question, faults } = readSeason({ ...FILE, ...more }, NO_FILES);
  if (question === null) throw new Error(faults.map(formatFault).join("\n"));
  return question;
}

async function seasonHere(asked: SeasonQuestion): Promise<Season> {
  return seasonOf(asked, await simulateHere(asked.study, { known: [], note: () => {} }, "none"));
}

describe("a season", () => {
  const asked = question();
  let season: Season;
  beforeAll(async () => {
    season = await seasonHere(asked);
  }, 120_000);

  it("simulates each kind of week once, with crates and orders as many times the plan's", () => {
    expect(asked.study.variants.map(({ name }) => name)).toEqual(["the week as planned", "busy"]);
    expect(asked.study.variants[1]!.set).toEqual({
      ...{ "supply.loads.farm.crates": 20, "week.days.Monday.loads.farm.crates": 20 },
      ...{ "week.days.Tuesday.loads.farm.crates": 20, "week.orders.hotel.carcasses": 2000 },
    });
    expect(asked.entries.map(({ variant }) => variant)).toEqual([0, 1, 0]);
  });

  it("has the overtime that a hand works out: of the busy week 1.56 person-hours, of a usual one none", () => {
    // Busy: 800 and 1,200 heads of ten seconds for two people end after 4,000 and 6,000 s, 400 and 2,400 s past the hour: 2 x 2,800 s are 1.56 h.
    const [usual, busy, asEver] = season.kinds;
    expect(usual!.figures.overtimeHours!.mean).toBe(0);
    expect(asEver!.figures).toEqual(usual!.figures);
    expect(Math.abs(busy!.figures.overtimeHours!.mean - 1.556)).toBeLessThan(0.02);
    expect(Math.abs(season.year.overtimeHours!.mean - 15.56)).toBeLessThan(0.2);
    expect(season.year.made!.mean).toBe(42 * 1000 + 10 * 2000);
    // Two people for two hours of shift, and 1.556 h of overtime between them.
    expect(Math.abs(busy!.figures.people!.mean - (2 * (4 + 1.556)) / 4)).toBeLessThan(0.02);
  });

  it("names the hardest weeks, the day, late orders and people first, in words that hold", () => {
    expect(season.verdict).toMatch(
      /^Hardest of 52 weeks is “busy” \(weeks 41 to 50\): work goes on to 07:40, longest on Tuesday, with 1\.56 person-hours of overtime a week\.$/,
    );
    const words = season.words.join(" ");
    expect(words).toMatch(/The year has 15\.\d person-hours of overtime, most in “busy” 100 % of it\./);
    expect(words).toMatch(/Late orders a week, of 1: “busy” 1\.0\. In the year 10\./);
    expect(words).toMatch(/The plan has 2 people\. Without overtime “busy” would take 3/);
    expect(words).toMatch(/62,?\s?000 carcasses/);
    expect(words).toContain("a week begins as the plan's does");
  });

  it("is drawn as a year, months across, with a table beside it", () => {
    const columns = seasonView(season);
    expect(columns.ticks.map(({ text }) => text).slice(0, 3)).toEqual(["Jan", "Feb", "Mar"]);
    expect(columns.panels).toHaveLength(4);
    const svg = seasonChart(columns, { document: serverDocument() });
    // A bar or a mark for each kind in each panel, and a line of its number.
    expect(svg.querySelectorAll('path[stroke-width="3"]')).toHaveLength(12);
    expect(seasonChartTable(columns).rows).toHaveLength(3);
    const { rows, columns: heads } = seasonTable(season);
    expect(heads[0]).toBe("Weeks");
    expect(rows.map(({ name }) => name)).toEqual(["usual", "busy", "as ever", "the year"]);
    expect(rows[1]!.cells.map(({ value }) => value)).toEqual(["41 to 50", "2", "07:40", "1.56", "1", "2.78"]);
  });

  it("is read back from its file, and nothing else is", () => {
    expect(readSeasonResult(JSON.parse(JSON.stringify(season)))).toEqual(season);
    expect(readSeasonResult({ ...season, kinds: [{}] })).toBeNull();
  });

  it("publishes its schema; npm run gambrel schema season prints it anew", () => {
    const published = new URL("../../../../sim/questions/season/season.schema.json", import.meta.url);
    expect(JSON.parse(readFileSync(published, "utf8"))).toEqual(seasonJsonSchema());
  });

  it("says which weeks were cut short, who was missing, and what would help", async () => {
    const { verdict, words, next, kinds } = await seasonHere(question({ absent: "95 %", runs: 4 }));
    expect(kinds[0]!.cut).toBeGreaterThan(0);
    expect(words[0] ?? verdict).toMatch(
      /Some weeks were cut short, since a day did not end: .* Too few came of “line”\./,
    );
    expect(next[0]).toMatch(/Give “line” a `cover`/);
  });

  it.each<[Json, RegExp]>([
    [{ weeks: [] }, /weeks/],
    [{ plan: { ...PLAN, week: undefined } }, /plan: the plan is of one day alone/],
    [{ weeks: [{ name: "a" }, { name: "a", heads: 2 }] }, /weeks\[1\]\.name: 'a' appears twice/],
    [{ weeks: [{ name: "a", absence: 2 }] }, /weeks\[0\]\.absence: nobody is ever missing in the plan/],
    [{ weeks: [{ name: "a", weight: 1.1 }] }, /weeks\[0\]: supply\.loads\.farm\.liveWeight.*nothing is written there/],
    [{ weeks: [{ name: "a", heads: 9 }] }, /weeks\[0\]\.heads/],
    [{ weeks: [{ name: "a", set: { "line.hangin.cycle": "9 s" } }] }, /weeks\[0\]: .*hangin/],
    [{ set: { "crews.lin.people": 3 } }, /crews\.lin/],
    [{ absent: "4 % of" }, /absent/],
    [{ begins: "6 January" }, /begins: .*is not a date/],
    [{ run: 4 }, /run/],
  ])("refuses %j", (more, fault) => {
    const { faults } = readSeason(JSON.parse(JSON.stringify({ ...FILE, ...more })), NO_FILES);
    expect(faults.map(formatFault).join("\n")).toMatch(fault);
  });
});
