import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DaySimulator, daySource } from "../../../../../sim/days/run/index.ts";
import { openQuestionJournal } from "../../../../../sim/days/run/journal/index.ts";
import { makerMark } from "../../../../../sim/days/run/wire/index.ts";
import { temporaryFolder } from "../../../../support/temporaryFolder.ts";
import { threeVariants } from "../../../../support/threeVariants.ts";

const SOURCE = daySource(threeVariants(), "none", false);
const { days: DAYS } = new DaySimulator(SOURCE).simulateBatch({ variant: 1, first: 0, count: 2 });

function open(top: string, resume: boolean, question: unknown = { total: 12 }) {
  return openQuestionJournal(join(top, "run"), question, { maker: makerMark("1.0.0"), resume, overwrite: false });
}

/** A folder with the two days of a search that was stopped. */
function stopped(): string {
  const top = temporaryFolder();
  const journal = open(top, false);
  const { known, note } = journal.of(SOURCE);
  expect([...known]).toEqual([]);
  for (const day of DAYS) note(day);
  expect(journal.keep()).toBe(2);
  return top;
}

describe("openQuestionJournal", () => {
  it("gives days back to the study they were simulated for, bit for bit, and to no other one", () => {
    const journal = open(stopped(), true);
    expect(journal.of(SOURCE).known).toEqual(DAYS);
    expect(journal.of({ ...SOURCE, seed: "another" }).known).toEqual([]);
    expect(journal.of({ ...SOURCE, plans: SOURCE.plans.slice(1) }).known).toEqual([]);
    journal.discard();
  });

  it("refuses the days of another question, and touches nothing", () => {
    const top = stopped();
    expect(() => open(top, true, { total: 13 })).toThrow(/of another question \(its file, the plan or the seed/);
    expect(open(top, true).of(SOURCE).known).toEqual(DAYS);
  });

  it("passes over a day that is none of its study, so that it is simulated again", () => {
    const top = stopped();
    const journal = open(top, true);
    journal.of(SOURCE).note({ ...DAYS[1]!, replication: 2, values: DAYS[1]!.values.slice(1) });
    journal.keep();
    expect(open(top, true).of(SOURCE).known).toEqual(DAYS);
  });
});
