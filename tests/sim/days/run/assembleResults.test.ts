import { describe, expect, it } from "vitest";
import { readStudy, type Study } from "../../../../sim/asked/study/index.ts";
import { usualResponses } from "../../../../sim/day/observations/index.ts";
import { assembleResults, roundedTraces, screeningEffects } from "../../../../sim/days/run/assembleResults.ts";
import { variantDays } from "../../../../sim/days/run/variantDays.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";
import { HAND_MADE_STUDY, handMadeResults } from "../../../support/handMadeResults.ts";
import { sampleFiles, samplePlan } from "../../asked/plan/samplePlan.ts";

describe("assembleResults", () => {
  const results = handMadeResults();

  it("reports the responses the study names, headline first", () => {
    expect(results.responses.map(({ key }) => key)).toEqual(HAND_MADE_STUDY.responses);
    expect(Object.keys(results.variants[0]!.values)).toEqual(HAND_MADE_STUDY.responses);
  });

  it("reports the usual responses, stages left out, when the study names none", () => {
    const outcome = { values: { carcasses: 1 }, day: handMadeDay() };
    const study = { ...HAND_MADE_STUDY, responses: [], variants: [HAND_MADE_STUDY.variants[0]!], replications: 1 };
    const all = assembleResults(study, [variantDays([outcome])], { gambrel: "1", command: "c" });
    expect(all.responses.map(({ key }) => key)).toEqual(usualResponses(HAND_MADE_PLAN));
    expect(all.variants[0]!.values.carcasses).toEqual([1]);
    expect(all.variants[0]!.values.finish).toEqual([null]);
  });

  it("compares each variant with the base, pair by pair, and the base with nothing", () => {
    expect(results.variants[0]!.differences).toBeNull();
    expect(results.variants[1]!.differences!.headsPerHour).toMatchObject({ n: 3, mean: 30, sd: 0, shown: true });
  });

  it("has no estimate and no difference, rather than a zero, where no replication has a value", () => {
    expect(results.variants[1]!.estimates).not.toHaveProperty(["beyond.chilling time"]);
    expect(results.variants[1]!.differences).not.toHaveProperty(["beyond.chilling time"]);
    expect(results.variants[1]!.values["beyond.chilling time"]).toEqual([null, null, null]);
  });

  it("says how to repeat the run and what the plan's figures rest on", () => {
    expect(results).toMatchObject({
      format: 1,
      gambrel: "1.2.3",
      study: { seed: "rabbit", replications: 3, command: "gambrel study hand-made.json" },
      plan: {
        targetHeadsPerHour: 720,
        breaks: [{ name: "coffee", fromSeconds: 3600, toSeconds: 4200 }],
        shifts: [{ name: "early", fromSeconds: 1800, toSeconds: 7200 }],
        cleaningSeconds: 0,
        limitSources: { "stick to evisceration": "house rule, invented" },
      },
    });
  });

  it("adds the share of days that did not end by themselves, unasked, as soon as there is one", () => {
    const outcomes = HAND_MADE_STUDY.variants.map((_, variant) =>
      variantDays([{ values: { headsPerHour: 1, unfinished: variant }, day: handMadeDay() }]),
    );
    const found = assembleResults(HAND_MADE_STUDY, outcomes, { gambrel: "1", command: "c" });
    expect(found.responses.at(-1)!.key).toBe("unfinished");
    expect(found.variants[1]!.values.unfinished).toEqual([1]);
    expect(results.responses.map(({ key }) => key)).not.toContain("unfinished");
  });

  it("refuses a response that no variant has", () => {
    const study = { ...HAND_MADE_STUDY, responses: ["heads per hour"] };
    const outcomes = study.variants.map(() => variantDays([{ values: {}, day: handMadeDay() }]));
    expect(() => assembleResults(study, outcomes, { gambrel: "1", command: "c" })).toThrow(/"heads per hour"/);
  });
});

const factors = [
  { name: "places", path: "line.bleeding.places", from: 10, to: 40 },
  { name: "dwell", path: "line.bleeding.dwell", from: "2 min", to: "3 min" },
  { name: "buffer", path: "line.skinning.buffer", levels: [0, 2, 4, null] },
];

const read = (design: unknown) => readStudy({ name: "s", plan: samplePlan(), design }, sampleFiles).study as Study;

it("screeningEffects finds the slopes of a straight line over a study's own trajectories", () => {
  const study = read({ screening: { factors, trajectories: 5 } });
  const means = study.variants.map(({ levels }) => 100 + 2 * levels[0]! - levels[1]!);
  const found = screeningEffects(study, means, 0.95)!;
  // Levels 0 to 3 are the whole range, so one level is a third of it.
  expect(found.map((effect) => effect!.mu)).toEqual([6, -3, 0].map((mu) => expect.closeTo(mu, 10)));
  expect(found.map((effect) => effect!.n)).toEqual([5, 5, 5]);
});

it("screeningEffects has nothing to say of another design", () => {
  expect(screeningEffects(read({ list: [{ name: "a", remove: ["limits"] }] }), [1, 2], 0.95)).toBeNull();
});

it("rounds means and position-seconds to a millionth and leaves troughs, peaks and exact traces alone", () => {
  const traces = structuredClone(handMadeResults().variants[0]!.day.traces!);
  const [queue] = traces.queues;
  if (queue?.kind !== "binned") throw new Error("the hand-made queue is in bins");
  queue.mean = [1 / 3, 2.00000049];
  queue.high = [2.12345, 5];
  traces.states[0]!.seconds[0] = 29.99999951;
  traces.out = { ...queue, name: "out" };
  const rounded = roundedTraces(traces);
  expect(rounded.queues[0]).toEqual({ ...queue, mean: [0.333333, 2] });
  expect(rounded.states[0]!.seconds[0]).toBe(30);
  expect(roundedTraces(rounded)).toEqual(rounded);
  const exact = { kind: "exact" as const, name: "out", endSeconds: 60, times: [0, 12.3456789], values: [0, 1] };
  expect(roundedTraces({ ...traces, out: exact })).toEqual({ ...traces, out: exact });
});
