import { MOMENTS, type Plan } from "../../asked/plan/plan.ts";
import { BLED, type KillLineColumns, STUCK, STUNNED } from "./compiledLine.ts";
import { type KillLine, killLineOf } from "./killLine.ts";
import type { Step } from "./steps.ts";

const START = MOMENTS.indexOf("start");
const END = MOMENTS.indexOf("end");
const EXIT = MOMENTS.indexOf("exit");

/** Null where the plan has no kill line. */
export function compileKillLine(plan: Plan, all: Step[]): KillLineColumns | null {
  const line = killLineOf(plan);
  if (line === null) return null;
  const indexOf = (name: string) => all.findLastIndex((step) => step.name === name);
  const marks = marksOf(line, all, indexOf);
  return {
    names: line,
    steps: Int32Array.from(line.steps, indexOf),
    last: Math.max(...[...line.sticking, ...line.bleeding, ...line.steps].map(indexOf)),
    marks: Int8Array.from({ length: all.length * MOMENTS.length }, (_, point) => marks.get(point) ?? 0),
  };
}

function marksOf({ stunning, sticking, bleeding }: KillLine, all: Step[], indexOf: (name: string) => number) {
  const at = (name: string, moment: number) => indexOf(name) * MOMENTS.length + moment;
  const bled = bleeding.length > 0 ? bleeding.slice(-1) : sticking;
  return new Map([
    ...bled.map((name) => [at(name, all[indexOf(name)]!.kind === "chain" ? EXIT : END), BLED] as const),
    ...stunning.map((name) => [at(name, END), STUNNED] as const),
    ...sticking.map((name) => [at(name, START), STUCK] as const),
  ]);
}
