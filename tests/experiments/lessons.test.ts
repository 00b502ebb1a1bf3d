import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { formatFault, readPlan } from "../../sim/asked/plan/index.ts";
import type { StudyResults } from "../../sim/days/results/index.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { readLesson } from "../../viz/page/lessons/lesson.ts";
import { changesOf, type Moves } from "../../viz/page/plan/control.ts";
import { controlsOf } from "../../viz/page/plan/controlsOf.ts";
import { readQuestion } from "../../viz/page/worker/readQuestion.ts";

const FOLDER = resolve(import.meta.dirname, "../../experiments/lessons");
const IDS = readdirSync(FOLDER).flatMap((name) => (name.endsWith(".json") ? [name.replace(".json", "")] : []));

function lesson(id: string) {
  const read = readLesson(id, readFileSync(join(FOLDER, `${id}.json`), "utf8"));
  return { ...read, text: readFileSync(join(FOLDER, read.plan), "utf8") };
}

/** Twenty days of a lesson's plan and of the variant with its step's moves, as the page runs them. */
async function played(id: string, moves: Moves): Promise<StudyResults> {
  const { text } = lesson(id);
  const plan = JSON.parse(text);
  const set = changesOf(plan, controlsOf(plan), moves);
  const question = { plan: { name: id, text, files: {} }, set, seed: "1", replications: 20 };
  const { study, faults, variantFaults } = readQuestion(question);
  expect([...faults, ...variantFaults].map(({ line }) => line)).toEqual([]);
  return runStudy(study!, { gambrel: "", command: "", traces: "none" });
}

const mean = (results: StudyResults, variant: number, key: string) => results.variants[variant]!.estimates[key]!.mean;
const difference = (results: StudyResults, key: string) => results.variants[1]!.differences![key]!;
/** Means over twenty days, as shares of the base. Every comparison below is shown at 95 % or its interval is looked at. */
const gain = (results: StudyResults, key = "headsPerHour") => mean(results, 1, key) / mean(results, 0, key) - 1;

describe("every lesson", () => {
  it("is there: six of them", () => {
    expect(IDS).toHaveLength(6);
  });

  it.each(IDS)("%s has a sound, invented plan, and names controls and figures that its plan has", async (id) => {
    const { text, controls, steps, evidence } = lesson(id);
    const { plan, faults } = readPlan(JSON.parse(text), { readText: () => "" });
    expect(faults.map(formatFault)).toEqual([]);
    expect(plan!.sources[0]).toMatchObject({ path: "", kind: "invented" });
    const known = new Set(controlsOf(JSON.parse(text)).map((control) => control.id));
    const named = [...controls, ...steps.flatMap(({ moves }) => Object.keys(moves))];
    expect(named.filter((control) => !known.has(control))).toEqual([]);
    const { study } = readQuestion({ plan: { name: id, text, files: {} }, set: {}, seed: "1", replications: 2 });
    expect(evidence.filter((key) => !study!.responses.includes(key))).toEqual([]);
  });
});

describe("the answer of a lesson is what the line does:", () => {
  it("the queue grows before the slowest station, and moves with it", async () => {
    const results = await played("1-where-the-queue-grows", lesson("1-where-the-queue-grows").steps[1]!.moves);
    const queues = (variant: number) =>
      ["hanging", "skinning", "evisceration", "inspection"].map((name) => mean(results, variant, `queue.${name}.mean`));
    expect(queues(0).indexOf(Math.max(...queues(0)))).toBe(2);
    expect(queues(1).indexOf(Math.max(...queues(1)))).toBe(1);
    expect(mean(results, 1, "queue.evisceration.mean")).toBeLessThan(1);
    expect(difference(results, "queue.evisceration.mean").shown).toBe(true);
  });

  it("of a buffer's gain most comes with the first places", async () => {
    const [some, many] = lesson("2-a-bigger-buffer-and-its-end").steps.map(({ moves }) => moves) as [Moves, Moves];
    const first = difference(await played("2-a-bigger-buffer-and-its-end", some), "headsPerHour");
    const all = difference(await played("2-a-bigger-buffer-and-its-end", many), "headsPerHour");
    expect(first.mean).toBeGreaterThan(27);
    expect(first.mean).toBeLessThan(35);
    // Less than half as much again, at the far ends of both intervals.
    expect(all.high! - first.low!).toBeLessThan(first.low! / 2);
    expect(all.low!).toBeGreaterThan(first.mean);
    expect(lesson("2-a-bigger-buffer-and-its-end").answer).toContain(
      `20 places bring about ${Math.round(first.mean)} carcasses an hour more, 60 places about ${Math.round(all.mean)}: a further gain of only ${Math.round(all.mean - first.mean)}.`,
    );
  });

  it("variability costs more than a tenth though every mean stays", async () => {
    const [one, all] = lesson("3-variability-and-idle-time").steps.map(({ moves }) => moves) as [Moves, Moves];
    const alone = await played("3-variability-and-idle-time", one);
    expect(gain(alone)).toBeLessThan(-0.05);
    const varied = await played("3-variability-and-idle-time", all);
    expect(gain(varied)).toBeLessThan(-0.1);
    expect(difference(varied, "headsPerHour").high!).toBeLessThan(-0.1 * mean(varied, 0, "headsPerHour"));
    const lost = (results: StudyResults) => Math.round(-difference(results, "headsPerHour").mean);
    const { answer } = lesson("3-variability-and-idle-time");
    expect(answer).toContain(`about ${lost(varied)} of ${Math.round(mean(varied, 0, "headsPerHour"))} heads an hour`);
    expect(answer).toContain(`one uneven station alone costs about ${lost(alone)}`);
  });

  it("a fourth operator brings a seventh, a fifth nothing: skinning is the bottleneck then", async () => {
    const [fourth, fifth] = lesson("4-one-more-operator").steps.map(({ moves }) => moves) as [Moves, Moves];
    const withFour = await played("4-one-more-operator", fourth);
    expect(gain(withFour)).toBeGreaterThan(0.12);
    expect(gain(withFour)).toBeLessThan(0.16);
    expect(mean(withFour, 1, "blocked.skinning")).toBeLessThan(0.01);
    const more = Math.round(difference(withFour, "headsPerHour").mean);
    expect(lesson("4-one-more-operator").answer).toContain(`About a seventh more: ${more} carcasses an hour.`);
    const withFive = await played("4-one-more-operator", fifth);
    expect(Math.abs(mean(withFive, 1, "headsPerHour") - mean(withFour, 1, "headsPerHour"))).toBeLessThan(1);
  });

  it("five minutes at midday cost nothing where there is slack, and five minutes at the slowest place", async () => {
    const [slack, slowest] = lesson("5-a-stop-at-midday").steps.map(({ moves }) => moves) as [Moves, Moves];
    expect(Math.abs(difference(await played("5-a-stop-at-midday", slack), "finish").mean)).toBeLessThan(15);
    const { low, high } = difference(await played("5-a-stop-at-midday", slowest), "finish");
    expect(low!).toBeGreaterThan(270);
    expect(high!).toBeLessThan(310);
  });

  it("early lorries gain nothing and keep animals waiting; late ones let the line run dry", async () => {
    const [early, late] = lesson("6-lorries-too-early-or-too-late").steps.map(({ moves }) => moves) as [Moves, Moves];
    const sooner = await played("6-lorries-too-early-or-too-late", early);
    expect(Math.abs(difference(sooner, "finish").mean)).toBeLessThan(60);
    expect(difference(sooner, "beyond.arrival to stunning").low!).toBeGreaterThan(0.1);
    const later = await played("6-lorries-too-early-or-too-late", late);
    expect(difference(later, "finish").low!).toBeGreaterThan(30 * 60);
    expect(difference(later, "starved.hanging").shown).toBe(true);
    const { answer } = lesson("6-lorries-too-early-or-too-late");
    expect(answer).toContain(
      `${Math.round(100 * mean(sooner, 1, "beyond.arrival to stunning"))} % of the animals wait`,
    );
    expect(answer).toContain(`about ${Math.round(difference(later, "finish").mean / 60)} minutes later`);
  });
});
