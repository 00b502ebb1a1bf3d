import { spawn } from "node:child_process";
import { once } from "node:events";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import process from "node:process";
import { PLAIN_PROCEDURE, type Study } from "../../../sim/asked/study/index.ts";
import { runStudy } from "../../../sim/days/run/index.ts";
import { inThreads } from "../../../sim/days/run/threads/index.ts";
import { scaledPlan } from "../plans.ts";
import { type Section, shown } from "../section.ts";
import type { Task } from "../tasks.ts";

const DAYS = 1000;
const PROBE = join(import.meta.dirname, "..", "probe.js");
const PROBED: Task = { kind: "plan", file: "every-part.json", heads: 1000, rounds: 300 };

/**
 * A study of 1,000 days with every feature on 1, 2, 4 ... threads, by the wall clock and starting the threads included:
 * an efficiency of 100 % is one thread's time divided by the number of threads. Beside it what the machine itself gives:
 * as many processes at a time that have nothing to do with each other, each with days of its own.
 */
export async function threads(): Promise<Section> {
  const section: Section = {
    title: `A study of ${DAYS} days, every feature, 1,000 heads each: wall clock`,
    rows: [["threads", "seconds", "ms/day", "efficiency", "separate processes"]],
    figures: {},
  };
  const study = studyOf(DAYS);
  let single = 0;
  let alone = 0;
  for (let count = 1; count <= availableParallelism(); count *= 2) {
    const seconds = await secondsOf(study, count);
    const together = await secondsOfProcesses(count);
    if (count === 1) {
      single = seconds;
      alone = together;
    }
    const efficiency = single / (count * seconds);
    const machine = alone / together;
    const shares = [efficiency, machine].map((share) => `${shown(100 * share)} %`);
    section.rows.push([String(count), shown(seconds), shown((seconds / DAYS) * 1e3), ...shares]);
    section.figures[`${count} threads, s`] = seconds;
    section.figures[`${count} threads, efficiency`] = efficiency;
    section.figures[`${count} processes, efficiency`] = machine;
  }
  return section;
}

async function secondsOf(study: Study, count: number): Promise<number> {
  const start = performance.now();
  await runStudy(study, { gambrel: "bench", command: "bench", traces: "none", runner: inThreads(count) });
  return (performance.now() - start) / 1e3;
}

/** Until the last of so many processes has done its days. */
async function secondsOfProcesses(count: number): Promise<number> {
  const start = performance.now();
  const begin = () => spawn(process.execPath, [PROBE, JSON.stringify(PROBED)], { stdio: "ignore" });
  await Promise.all(Array.from({ length: count }, () => once(begin(), "close")));
  return (performance.now() - start) / 1e3;
}

function studyOf(replications: number): Study {
  const plan = scaledPlan("every-part.json", 1000);
  return {
    name: "threads",
    question: "How well do days spread over threads?",
    reader: "",
    seed: "bench",
    replications,
    confidence: 0.95,
    responses: [],
    why: false,
    factors: [],
    variants: [{ name: "the plan", levels: [], set: {}, insert: [], remove: [], plan }],
    design: { kind: "list" },
    procedure: PLAIN_PROCEDURE,
  };
}
