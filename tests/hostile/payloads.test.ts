import { UnrecoverableError } from "bullmq";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { daySource } from "../../sim/days/run/index.ts";
import { PLAN_SHAPE, STUDY_ABOUT } from "../../sim/days/run/queue/payloads.ts";
import { answerReader } from "../../sim/days/run/queue/queueRun.ts";
import { readTask } from "../../sim/days/run/queue/taskDesk.ts";
import { parseExactJson } from "../../sim/days/run/wire/index.ts";
import { threeVariants } from "../support/threeVariants.ts";
import corpus from "./corpus/payload.json" with { type: "json" };

const read = answerReader(daySource(threeVariants(), "none", false));
const of = (kind: string) => corpus.filter((entry) => entry.kind === kind).map(({ name, text }) => [name, text]);

/** As a worker reads what lies in the queue. */
function parsed(text: string): unknown {
  try {
    return parseExactJson(text);
  } catch {
    return undefined;
  }
}

describe("what comes out of the queue", () => {
  it.each(of("task"))("is no task: %s", (_, text) => {
    expect(() => readTask(parsed(text!))).toThrow(UnrecoverableError);
  });

  it.each(of("about"))("is no study: %s", (_, text) => {
    expect(STUDY_ABOUT.safeParse(parsed(text!)).success).toBe(false);
  });

  it.each(of("plan"))("is no plan: %s", (_, text) => {
    expect(PLAN_SHAPE.safeParse(parsed(text!)).success).toBe(false);
  });

  it.each(of("answer"))("is no days: %s", (_, text) => {
    // At most it settles the task it names, as failed.
    expect(read(text!) ?? { error: "" }).toHaveProperty("error");
  });

  it("is never taken for a task or for days by chance", () => {
    const task = fc.record({ task: fc.string(), days: fc.array(fc.object()), failed: fc.array(fc.object()) });
    fc.assert(
      fc.property(fc.oneof(fc.anything(), task), fc.json(), (thing, text) => {
        expect(() => readTask(thing)).toThrow(UnrecoverableError);
        for (const answer of [read(text), read(JSON.stringify(thing) ?? "")]) {
          if (answer !== null && "days" in answer) expect(answer.days).toEqual([]);
        }
      }),
      { seed: 20270302, numRuns: 300 },
    );
  });
});
