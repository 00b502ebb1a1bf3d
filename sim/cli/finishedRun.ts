import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseJson } from "../asked/plan/index.ts";
import type { Study } from "../asked/study/index.ts";
import { readResults, type StudyResults, stableJson } from "../days/results/index.ts";
import { daySource, type TraceKind } from "../days/run/index.ts";
import { BadInput } from "./faults.ts";
import { programVersion } from "./project.ts";

/** What is asked of a run that may be finished already. */
interface Asked {
  study: Study;
  traces: TraceKind;
  /** The study file and the base plan, as they were read. */
  studyFile: unknown;
  basePlan: unknown;
}

/**
 * The results of the finished run in a folder, where it is exactly the one that is asked for; null where there is none. One of
 * something else is refused with what differs.
 */
export async function finishedRun(folder: string, asked: Asked): Promise<StudyResults | null> {
  const path = join(folder, "results.json");
  if (!existsSync(path)) return null;
  const { results, problem } = readResults(readFileSync(path, "utf8"));
  if (results === null) throw new BadInput([`${path}: ${problem}.`]);
  const others = differences(folder, results, asked);
  if (others.length === 0 && (await isOfSameDays(results, asked))) return results;
  const words = others.length === 0 ? "its traces, or a file that the plan names" : others.join("; ");
  throw new BadInput([
    `${folder}: holds a finished run that differs in ${words}; name another folder, or add --overwrite to replace it.`,
  ]);
}

async function isOfSameDays({ inputsSha256 }: StudyResults, { study, traces }: Asked): Promise<boolean> {
  const { sourceDigest } = await import("../days/run/wire/index.ts");
  return inputsSha256 === sourceDigest(daySource(study, traces, false));
}

/** What a person can name: the one there first, then what is asked for. */
function differences(folder: string, results: StudyResults, { study, studyFile, basePlan }: Asked): string[] {
  const { seed, replications } = results.study;
  const { stopping, selection } = study.procedure;
  const version = programVersion();
  const keys = differentKeys(fileOf(folder, "study.json"), studyFile);
  return [
    ...(results.gambrel === version ? [] : [`the program (${results.gambrel} there, ${version} here)`]),
    ...(seed === study.seed ? [] : [`the seed (${JSON.stringify(seed)} there, ${JSON.stringify(study.seed)} asked)`]),
    ...(stopping !== null || selection !== null || replications === study.replications
      ? []
      : [`the simulated days of each variant (${replications} there, ${study.replications} asked)`]),
    ...(isSame(fileOf(folder, "plan.json"), basePlan) ? [] : ["the plan"]),
    ...(keys.length === 0 ? [] : [`the study file (${keys.join(", ")})`]),
  ];
}

function fileOf(folder: string, name: string): unknown {
  const path = join(folder, name);
  return existsSync(path) ? parseJson(readFileSync(path, "utf8")).value : null;
}

function differentKeys(there: unknown, asked: unknown): string[] {
  const [one, other] = [there ?? {}, asked ?? {}] as Record<string, unknown>[];
  const keys = [...new Set([...Object.keys(one!), ...Object.keys(other!)])];
  return keys.filter((key) => !isSame(one![key] ?? null, other![key] ?? null));
}

function isSame(one: unknown, other: unknown): boolean {
  return stableJson(one) === stableJson(other);
}
