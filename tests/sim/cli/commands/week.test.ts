import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { responsesOf } from "../../../../sim/day/observations/index.ts";
import { readTries } from "../../../../sim/questions/try/index.ts";
import { weekStudy } from "../../../../sim/questions/week/index.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";

/** Starting the program takes most of a second each time. */
const PATIENCE = { timeout: 120_000 };
const WEEK = resolve(import.meta.dirname, "../../../../experiments/plans/parts/week.json");
const json = JSON.parse(readFileSync(WEEK, "utf8"));
const FEW = ["--weeks", "3", "--threads", "1"];

describe("gambrel week", PATIENCE, () => {
  it("tells each day and the week, with conservation checked at every event, and leaves a report", async () => {
    const folder = cliFolder();
    const { code, err } = await callCli(folder, ["week", WEEK, ...FEW, "--verify", "--out", "run"]);
    expect(code).toBe(0);
    expect(err).toMatch(/\nWork ends latest on (Monday|Tuesday|Thursday), at 1\d:\d\d \(mean of 3 weeks\)/);
    expect(err).toMatch(/\b3 of 3 weeks simulated/);
    expect(err).toMatch(/Order ‘market’ \(Tuesday 10:00\): ready in time/);
    for (const day of ["Monday", "Tuesday", "Thursday", "the week"]) expect(err).toMatch(new RegExp(`\\n +${day} `));
    // The warm-up and the closed day have no row.
    expect(err).not.toMatch(/\n +(Sunday before|Wednesday) /);
    const results = JSON.parse(readFileSync(join(folder, "run", "results.json"), "utf8"));
    const mean = (key: string) => results.variants[0].estimates[key].mean;
    expect(mean("week.carcasses")).toBeCloseTo(
      mean("Monday.carcasses") + mean("Tuesday.carcasses") + mean("Thursday.carcasses"),
      6,
    );
    expect(existsSync(join(folder, "run", "report.html"))).toBe(true);
  });

  it("refuses a plan of one day alone, and says how to write a week", async () => {
    const { code, err } = await callCli(cliFolder(), ["week", "plan.json", ...FEW]);
    expect(code).toBe(2);
    expect(err).toMatch(/plan\.json: this plan is of one day alone; give it a "week" with its days, or write/);
  });

  it("takes a week from a file of its own beside the plant", async () => {
    const folder = cliFolder();
    const { week, ...plant } = json;
    writeFileSync(join(folder, "plant.json"), JSON.stringify(plant));
    writeFileSync(join(folder, "week.json"), JSON.stringify({ plan: "plant.json", name: "our week", week }));
    const { code, err } = await callCli(folder, ["check", "week.json"]);
    expect({ code, err }).toMatchObject({ code: 0 });
    expect(err).toMatch(/week\.json: valid\. Plan "our week": .* A week of 5 days, 4 of them with work, 2 orders\./);
    writeFileSync(join(folder, "lost.json"), JSON.stringify({ plan: "no.json", week }));
    const lost = await callCli(folder, ["week", "lost.json", ...FEW]);
    expect(lost.code).toBe(2);
    expect(lost.err).toMatch(/lost\.json: plan: .*no\.json/);
  });
});

describe("the study of a week", () => {
  it("asks for results that the plan's week has", () => {
    const { plan } = readPlan(json);
    const known = new Set(responsesOf(plan!).map(({ key }) => key));
    const { responses } = weekStudy(plan!, "1", 5);
    expect(responses.filter((key) => !known.has(key))).toEqual([]);
    expect(responses).toContain("order.market.late");
    expect(responses).toContain("Thursday.overtime");
  });
});

describe("a try on days of a week", () => {
  const { plan } = readPlan(json);
  const tries = (...written: [string, string][]) =>
    readTries(
      plan!,
      json,
      written.map(([option, text]) => ({ option, text })),
    );

  it("changes the days that are named, behind what is different on them already, and no other", () => {
    const { tries: found, faults } = tries(["on", "tuesday,Thursday"], ["ill", "dressing=1"]);
    expect(faults).toEqual([]);
    expect(found![0]!.name).toBe("one ill at dressing on Tuesday and 1 change more");
    // On Tuesday one of four is ill before.
    expect(found![0]!.set).toEqual({
      "week.days.Tuesday.set": { "crews.dressing.people": 2 },
      "week.days.Thursday.set": { "line.packing.positions": 3, "crews.dressing.people": 3 },
    });
  });

  it("changes what the options before made of the plan, of the same day and of every day", () => {
    const { tries: found } = tries(["on", "Monday"], ["ill", "dressing=1"], ["on", "Monday"], ["ill", "kill=1"]);
    expect(found![0]!.set).toEqual({
      "week.days.Monday.set": { "crews.dressing.people": 3, "crews.kill.people": 1 },
    });
    const { tries: both } = tries(["more", "dressing=2"], ["on", "Monday"], ["ill", "dressing=1"]);
    expect(both![0]!.set).toMatchObject({
      "crews.dressing.people": 6,
      "week.days.Monday.set": { "crews.dressing.people": 5 },
    });
  });

  it("changes every day with what stands before the first day that is named", () => {
    const { tries: found } = tries(["more", "kill=1"], ["on", "Monday"], ["extra", "120 at 09:00"]);
    expect(Object.keys(found![0]!.set)).toEqual([
      "crews.kill.people",
      "line.hanging.positions",
      "week.days.Monday.set",
    ]);
  });

  it("is refused on a day without work, without anything to try, and of a plan without a week", () => {
    const told = (reading: ReturnType<typeof tries>) => reading.faults.map(({ found }) => found);
    expect(told(tries(["on", "Wednesday"], ["ill", "dressing=1"]))).toEqual([
      "'Wednesday' is not a working day of this week",
    ]);
    expect(told(tries(["on", "Monday"]))).toEqual(["nothing is tried on that day"]);
    const { week: _, ...alone } = json;
    const reading = readTries(readPlan(alone).plan!, alone, [
      { option: "on", text: "Monday" },
      { option: "ill", text: "dressing=1" },
    ]);
    expect(told(reading)).toEqual(["this plan is of one day alone"]);
  });
});
