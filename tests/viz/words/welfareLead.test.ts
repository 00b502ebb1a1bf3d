import { describe, expect, it } from "vitest";
import { answer, renderDayReport, renderReport, welfareLead } from "../../../viz/index.ts";
import { killLineDay, killLinePlan, killLineStudy, smoothPlan } from "../../support/killStopResults.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";
import { withDay } from "../../support/withDay.ts";

const LAST = "A stunned head that waits may wake: settle this with the official veterinarian before you read on.";

describe("of one day", () => {
  it("tells how many stunned heads were outside which limit, and the longest", () => {
    expect(welfareLead(killLineDay())).toBe(
      `Animal welfare first. 2.5 % (1 of 40 stunned heads) waited longer for sticking than the 10 s of “stun to stick”, the longest 30 s. ${LAST}`,
    );
  });

  it("tells what the plan leaves open, also when no head waited", () => {
    const noGate = smoothPlan(killLinePlan({ gates: [] }));
    const open = "Nothing in the plan keeps a head from being stunned while sticking has no room.";
    expect(welfareLead(killLineDay(noGate))).toBe(`Animal welfare first. ${open} ${LAST}`);
    const caught = withDay(smoothPlan(), { safeStop: null, breaks: [] });
    expect(welfareLead(killLineDay(caught))).toBeNull();
    const tea = killLinePlan().day.breaks;
    expect(welfareLead(killLineDay(withDay(smoothPlan(), { safeStop: null, breaks: tea })))).toContain(
      "A break may begin while a stunned head waits: nothing in the plan empties the line first.",
    );
  });

  it("is silent when all is well, and where the plan stuns nothing", () => {
    expect(welfareLead(killLineDay(smoothPlan()))).toBeNull();
    expect(welfareLead(syntheticStudy())).toBeNull();
  });
});

describe("of a study", () => {
  it("tells the base with its interval and days, and in how many variants it happened", async () => {
    const lead = welfareLead(
      await killLineStudy({ base: killLinePlan(), again: killLinePlan(), smooth: smoothPlan() }),
    );
    expect(lead).toMatch(
      /^Animal welfare first\. In today's plan 2\.50 % \(.+ at 95 %\) of stunned heads waited longer for sticking than the 10 s of “stun to stick”, on 3 of 3 simulated days, the longest 30 s\. It happened in 2 of 3 variants: “base”, “again”\. /u,
    );
  });

  it("tells a variant where today's plan has none, and what only some of the plans leave open", async () => {
    const open = killLinePlan({ gates: [] });
    const lead = welfareLead(await killLineStudy({ base: smoothPlan(), open }));
    expect(lead).toMatch(/^Animal welfare first\. With “open” \d/u);
    expect(lead).toContain("It happened in no other variant.");
    expect(lead).toContain("In 1 of 2 variants nothing in the plan keeps a head from being stunned");
  });
});

describe("in a report", () => {
  const first = (page: string) => /<div class="answer"><p>(.*?)<\/p>/u.exec(page)![1]!;

  it("is the first paragraph of the answer, before any figure", async () => {
    expect(first(renderDayReport(killLineDay()))).toMatch(/^Animal welfare first\./u);
    const study = await killLineStudy({ base: killLinePlan(), smooth: smoothPlan() });
    expect(first(renderReport(study))).toMatch(/^Animal welfare first\./u);
    expect(answer(study)[0]).not.toMatch(/welfare/u);
  });

  it("is not there when all is well", () => {
    expect(first(renderDayReport(killLineDay(smoothPlan())))).toMatch(/^Limits kept by every head: /u);
  });
});
