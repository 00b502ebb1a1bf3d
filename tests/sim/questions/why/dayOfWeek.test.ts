import { beforeAll, describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import type { StudyResults } from "../../../../sim/days/results/index.ts";
import { answerWhy } from "../../../../sim/questions/why/index.ts";
import { crateLorries, HANGING } from "../../../support/hangingPlan.ts";
import { simulateHere } from "../../../support/improving.ts";

type Json = Record<string, unknown>;

/** Hanging takes ten seconds a head and person; what is hung after 06:40 stays in the chiller, and packing takes it the next day. All invented. */
const PLAN: Json = {
  ...HANGING,
  line: [
    { name: "hanging", kind: "station", positions: 4, cycle: { lognormal: { mean: "10 s", cv: 0.1 } }, crew: "line" },
    { name: "chilling", kind: "dwell", places: null, dwell: "10 min" },
  ],
  week: {
    days: [
      { name: "Monday", loads: crateLorries(3) },
      { name: "Tuesday", loads: crateLorries(9) },
      { name: "Wednesday", loads: crateLorries(7) },
    ],
    overnight: { chilling: "06:20" },
  },
};

async function why(on?: string): Promise<StudyResults> {
  const { plan } = readPlan(PLAN);
  return answerWhy(
    plan!,
    { seed: "1", replications: 3, confidence: 0.95, ...(on === undefined ? {} : { on }) },
    { simulate: simulateHere },
  );
}

describe("why a day of a week ends when it does", () => {
  let decides: StudyResults;
  let wednesday: StudyResults;
  beforeAll(async () => {
    decides = await why();
    wednesday = await why("Wednesday");
  }, 120_000);

  it("begins with the day that decides the week where none is asked for", () => {
    // Tuesday's nine hundred heads take two people 75 min of a shift of 60; Wednesday's seven hundred 58 min.
    const [first, left, alone] = decides.decision!.words;
    expect(first).toMatch(
      /^Tuesday decides the week: of 14\.9 min of overtime in the week 14\.9 min are its own, at 07:15; next is Wednesday, whose work ends at 06:58/,
    );
    expect(left).toMatch(/^Tuesday begins with \d+ carcasses in the chiller, which the days before left\.$/);
    expect(alone).toMatch(/^Its work ends at 07:15.*; a day like it that begins with an empty plant ends at 07:15/);
    expect(decides.study.name).toBe("Why Tuesday of invented ends when it does");
  });

  it("counts what was left as the engine has it", () => {
    const [, left] = decides.decision!.words;
    const count = Number(/begins with (\d+)/.exec(left!)![1]);
    // Hung from 06:00 on at one in five seconds; what was hung by 06:10 leaves until 06:20, and the rest of three hundred stays.
    expect(count).toBeGreaterThan(170);
    expect(count).toBeLessThan(190);
  });

  it("tries one more person on that day alone, and tells it by that day's end of work", () => {
    const { verdict } = decides.decision!;
    expect(verdict).toMatch(
      /^Start with line: one more person in the crew on Tuesday ends work (24|25)(\.\d+)? min earlier, but costs \d+(\.\d+)? EUR a week more than it saves/,
    );
    const variant = decides.variants.find(({ name }) => name === "one more person in line on Tuesday")!;
    expect(variant.set).toEqual({ "week.days.Tuesday.set": { "crews.line.people": [3] } });
    expect(decides.advice!.words.join(" ")).toMatch(/weeks were simulated to try/);
    expect(decides.advice!.words.join(" ")).not.toMatch(/\bdays\b/);
  });

  it("answers for the day that is named, and says which one decides", () => {
    const [first] = wednesday.decision!.words;
    expect(first).toMatch(/^Tuesday decides the week: .* This is of Wednesday\.$/);
    expect(wednesday.decision!.deciding).toBe("Wednesday.finish");
    expect(wednesday.decision!.rows.map(({ name }) => name)).toContain("one more person in line on Wednesday");
  });
});
