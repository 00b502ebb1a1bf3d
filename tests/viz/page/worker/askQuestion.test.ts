import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { inWorld, readPlan } from "../../../../sim/asked/plan/index.ts";
import { latinHypercube } from "../../../../sim/asked/study/index.ts";
import type { StudyResults } from "../../../../sim/days/results/index.ts";
import { daySource, runStudy } from "../../../../sim/days/run/index.ts";
import { weekStudy } from "../../../../sim/questions/week/index.ts";
import { askQuestion, askWorlds, BaseDays } from "../../../../viz/page/worker/askQuestion.ts";
import type { Outgoing } from "../../../../viz/page/worker/messages.ts";
import { readQuestion } from "../../../../viz/page/worker/readQuestion.ts";
import { TaskHandler } from "../../../../viz/page/worker/taskHandler.ts";
import { WorkerPool, type WorkerPort } from "../../../../viz/page/worker/workerPool.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

// What the build puts in.
Object.assign(globalThis, { __VERSION__: "test" });

/** A worker in this thread, its messages copied as a browser would; counts the days it was asked for. */
class ThreadWorkerPort implements WorkerPort {
  onmessage: WorkerPort["onmessage"] = null;
  onerror: WorkerPort["onerror"] = null;
  days = 0;
  private readonly handler = new TaskHandler();

  postMessage(message: Outgoing): void {
    const { id, task } = structuredClone(message);
    if (task === null) return;
    if (task.kind === "days") this.days += task.batch.count;
    void this.handler.answer(task).then((answer) => {
      this.onmessage?.({ data: { id, answer: structuredClone(answer) } } as MessageEvent);
    });
  }
}

const PLAN = { name: "plan.json", text: JSON.stringify(SMALL_PLAN), files: {} };

function question(set: Record<string, unknown>) {
  const { study, source } = readQuestion({ plan: PLAN, set, seed: "9", replications: 6 });
  return { study: study!, source: source! };
}

it("gives what the study gives when it is run in one go, and simulates the plan's own days once", async () => {
  const ports = [new ThreadWorkerPort(), new ThreadWorkerPort()];
  const pool = new WorkerPool(ports);
  const base = new BaseDays();
  const told: number[] = [];
  const ask = (set: Record<string, unknown>): Promise<StudyResults> =>
    askQuestion(pool, {
      ...question(set),
      base,
      key: "plan",
      wanted: () => true,
      progress: (done) => told.push(done),
      onPartialResults: () => {},
    });
  const none = await ask({});
  expect(none.variants).toHaveLength(1);
  expect(ports[0]!.days + ports[1]!.days).toBe(6);
  const set = { "line.skinning.positions": 4, "crews.dressing.people": { early: 4 } };
  const found = await ask(set);
  expect(ports[0]!.days + ports[1]!.days).toBe(12);
  expect(told.at(-1)).toBe(12);
  const { study } = question(set);
  const alone = await runStudy(study, { gambrel: "test", command: "", traces: "none" });
  expect(found).toEqual(alone);
});

it("asks for the plan's days afresh when the plan or the seed is another one", async () => {
  const port = new ThreadWorkerPort();
  const pool = new WorkerPool([port]);
  const base = new BaseDays();
  for (const key of ["one", "two", "two"]) {
    await askQuestion(pool, {
      ...question({}),
      base,
      key,
      wanted: () => true,
      progress: () => {},
      onPartialResults: () => {},
    });
  }
  expect(port.days).toBe(12);
});

it("reads what the command line reads, and says what it says", () => {
  const study = { ...PLAN, text: JSON.stringify({ plan: "plan.json", question: "?" }) };
  expect(readQuestion({ plan: study, set: {}, seed: "1", replications: 2 }).faults[0]!.line).toBe(
    'plan.json: this is a study; run it with "gambrel study", or name a plan.',
  );
  const csv = {
    ...SMALL_PLAN,
    line: [{ ...SMALL_PLAN.line[0], rate: undefined, cycle: { empirical: { csv: "a.csv", column: "s", unit: "s" } } }],
  };
  const withFile = { ...PLAN, text: JSON.stringify(csv) };
  const without = readQuestion({ plan: withFile, set: {}, seed: "1", replications: 2 });
  expect(without.faults.map(({ words }) => words).join()).toContain("open it together with the plan");
  const files = { "a.csv": "s\n9\n11\n" };
  expect(
    readQuestion({ plan: { ...withFile, files }, set: {}, seed: "1", replications: 2 }).faults.map(({ line }) => line),
  ).toEqual(without.faults.filter(({ words }) => !words.includes("open it together")).map(({ line }) => line));
  const bad = readQuestion({ plan: PLAN, set: { "line.skinning.positions": 0 }, seed: "1", replications: 2 });
  expect([bad.study, bad.faults.length, bad.variantFaults.length]).toEqual([null, 0, 1]);
});

it("in worlds simulates every day with uncertain figures drawn anew, both lines in the same world, by the luck it had", async () => {
  const uncertain = [{ name: "skinning's cycle time", paths: ["line.skinning.cycle"], guess: "a third" }];
  const json = { ...SMALL_PLAN, uncertain };
  const plan = { name: "plan.json", text: JSON.stringify(json), files: {} };
  const asked = { plan, set: { "line.skinning.buffer": 30 }, seed: "9", replications: 4, inWorlds: true };
  const { study, source, worldPlans } = readQuestion(asked);
  expect(worldPlans).toHaveLength(8);
  const pool = new WorkerPool([new ThreadWorkerPort()]);
  const run = { study: study!, source: source!, plans: worldPlans!, wanted: () => true, progress: () => {} };
  const found = await askWorlds(pool, run);
  expect(found.variants.map(({ values }) => values.finish!.length)).toEqual([4, 4]);
  // Afresh: what the hypercube draws, put into the plan by hand, the day of the same number simulated.
  const [shares] = latinHypercube(1, 4, "9");
  const factors = shares!.map((share) => 1 + (2 * share - 1) / 3);
  for (const [world, factor] of factors.entries()) {
    const { json: known } = inWorld(json, [{ paths: uncertain[0]!.paths, factors: [factor] }]);
    const alone = readQuestion({ ...asked, plan: { ...plan, text: JSON.stringify(known) } });
    expect(alone.worldPlans).toBeNull();
    const { variants } = await runStudy(alone.study!, { gambrel: "test", command: "", traces: "none" });
    for (const line of [0, 1])
      expect(found.variants[line]!.values.finish![world]).toBe(variants[line]!.values.finish![world]);
  }
  expect(new Set(found.variants[0]!.values.finish).size).toBe(4);
});

it("has no worlds where nobody wants them, or where every figure of the plan is known", () => {
  expect(readQuestion({ plan: PLAN, set: {}, seed: "9", replications: 4, inWorlds: true }).worldPlans).toBeNull();
});

it("simulates weeks in a worker's tasks as the program does, to the last digit", async () => {
  const text = readFileSync(new URL("../../../../experiments/plans/parts/week.json", import.meta.url), "utf8");
  const study = weekStudy(readPlan(JSON.parse(text)).plan!, "9", 3);
  const source = daySource(study, "none", false);
  const found = await askQuestion(new WorkerPool([new ThreadWorkerPort()]), {
    ...{ study, source, base: new BaseDays(), key: "week", wanted: () => true },
    ...{ progress: () => {}, onPartialResults: () => {} },
  });
  const alone = await runStudy(study, { gambrel: "test", command: "", traces: "none" });
  expect(found.variants[0]!.values).toEqual(alone.variants[0]!.values);
});
