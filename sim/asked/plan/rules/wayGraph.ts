import { MOMENTS, type Point } from "../plan.ts";
import { namesOf } from "./located.ts";
import { nextStage } from "./nextStage.ts";
import { sendsOf } from "./sends.ts";
import { chainStationsOf, stagesOf } from "./stages.ts";

/** Where heads can go: from the way into a place of work ("in") or out of it ("out") to others. */
export type WayGraph = ReadonlyMap<string, readonly string[]>;

const IN_MOMENTS = 2;

/** Every way that heads can take, by default or sent, with the stations on chains one after another. */
export function wayGraph(json: unknown): WayGraph {
  const graph = new Map<string, string[]>();
  const stages = stagesOf(json);
  const join = (from: string, to: string): void => void graph.get(from)?.push(to);
  for (const [index, stage] of stages.entries()) {
    const { name } = stage.value;
    if (typeof name !== "string") continue;
    const onIt = namesOf(chainStationsOf(json, stage));
    for (const one of [name, ...onIt]) graph.set(`in ${one}`, []).set(`out ${one}`, []);
    const path = [`in ${name}`, ...onIt.flatMap((one) => [`in ${one}`, `out ${one}`]), `out ${name}`];
    path.slice(1).forEach((to, step) => {
      join(path[step] as string, to);
    });
    const next = nextStage(stages, index);
    if (next !== null) join(`out ${name}`, `in ${next}`);
  }
  for (const { from, to, leaves } of sendsOf(json)) join(`${leaves === "before" ? "in" : "out"} ${from}`, `in ${to}`);
  return graph;
}

/** Everything that can be reached from there by one step or more. */
export function reachedFrom(graph: WayGraph, start: string): Set<string> {
  const reached = new Set<string>();
  const open = [...(graph.get(start) ?? [])];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    if (reached.has(node) || !graph.has(node)) continue;
    reached.add(node);
    open.push(...(graph.get(node) as string[]));
  }
  return reached;
}

/** Whether a head can come to the second point after the first; null when the stage of one is unknown. */
export function comesAfter(graph: WayGraph, from: Point, to: Point): boolean | null {
  if (isUnknown(graph, from) || isUnknown(graph, to)) return null;
  if (from.stage === null || to.stage === null) return rankOutside(from) < rankOutside(to);
  const start = nodeOf(from);
  const isSoon = start === nodeOf(to) && MOMENTS.indexOf(from.moment) < MOMENTS.indexOf(to.moment);
  return isSoon || reachedFrom(graph, start).has(nodeOf(to));
}

function isUnknown(graph: WayGraph, { stage }: Point): boolean {
  return stage !== null && !graph.has(`in ${stage}`);
}

/** Arrival lies before every stage, leaving the line behind all. */
function rankOutside({ stage, moment }: Point): number {
  if (stage !== null) return 0;
  return moment === "entry" ? -1 : 1;
}

function nodeOf({ stage, moment }: Point): string {
  return `${MOMENTS.indexOf(moment) < IN_MOMENTS ? "in" : "out"} ${stage}`;
}
