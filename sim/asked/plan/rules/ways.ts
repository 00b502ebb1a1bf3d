import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { faultAt, type Located, namesOf } from "./located.ts";
import { nextStage } from "./nextStage.ts";
import { type Send, sendsOf } from "./sends.ts";
import { stagesOf } from "./stages.ts";
import { reachedFrom, wayGraph } from "./wayGraph.ts";

/** Heads come to every stage, none sends them to itself, and from everywhere they get out at last. */
export function ways(json: unknown): Fault[] {
  const stages = stagesOf(json);
  const first = stages[0];
  if (first === undefined) return [];
  const sends = sendsOf(json);
  const wrong = [
    ...sends.flatMap((send) => wrongEnd(send, first)),
    ...(first.value.offLine === true ? [offLineFirst(first)] : []),
    ...roundAndRound(stages),
  ];
  const names = namesOf(stages);
  // Where heads end up can only be told once every way leads somewhere.
  const isClear = wrong.length === 0 && sends.every(({ to }) => names.includes(to));
  return isClear ? neverReached(json, stages) : wrong;
}

function wrongEnd({ stage, to, at }: Send, first: Located): Fault[] {
  if (stage === to) {
    return [faultAt(at, `'${to}' sends heads to itself`, "another stage", "name another stage or delete it")];
  }
  if (to !== first.value.name) return [];
  const found = `'${to}' takes heads that arrive: none that have been on the line can go back to it`;
  return [faultAt(at, found, "a later stage", "name another stage")];
}

function offLineFirst({ at }: Located): Fault {
  const remedy = "put a stage of the line before it";
  return faultAt([...at, "offLine"], "the first stage is off the line", "a first stage on the line", remedy);
}

function neverReached(json: unknown, stages: readonly Located[]): Fault[] {
  const [first, ...others] = stages as [Located, ...Located[]];
  const reached = reachedFrom(wayGraph(json), `in ${first.value.name}`);
  return others.flatMap(({ at, value }) => {
    if (typeof value.name !== "string" || reached.has(`in ${value.name}`)) return [];
    const found =
      value.offLine === true
        ? `'${value.name}' is off the line, and no stage sends heads there`
        : `no head ever reaches '${value.name}': the stages before it send theirs elsewhere`;
    return [faultAt(at, found, "a stage that heads reach", "send heads there, or leave it out")];
  });
}

/** Told at the first written `next` of each ring. */
function roundAndRound(stages: readonly Located[]): Fault[] {
  const rings = new Set<string>();
  return stages.flatMap((stage, index) => {
    if (typeof stage.value.next !== "string") return [];
    const ring = ringFrom(stages, index);
    const key = ring?.toSorted((a, b) => a - b).join();
    // A stage that names itself has been told of already.
    if (ring === null || key === undefined || ring.length < 2 || rings.has(key)) return [];
    rings.add(key);
    const words = listWords(ring.map((member) => String((stages[member] as Located).value.name)));
    const found = `heads go round for ever: ${words} and again`;
    return [faultAt([...stage.at, "next"], found, "a way out", 'change one "next" so that heads get out')];
  });
}

/** The stages that heads pass, following `next` alone, until they are back where they began; null when they never are. */
function ringFrom(stages: readonly Located[], start: number): number[] | null {
  const ring = [start];
  for (let at = start; ring.length <= stages.length; ) {
    const name = nextStage(stages, at);
    at = stages.findIndex(({ value }) => name !== null && value.name === name);
    if (at === start) return ring;
    if (at === -1) return null;
    ring.push(at);
  }
  return null;
}
