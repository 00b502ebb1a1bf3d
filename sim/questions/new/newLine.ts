import { assumedValue } from "../size/index.ts";
import { MAINTENANCE } from "./crewNames.ts";
import type { NewAnswers } from "./question.ts";
import { writeTime } from "./readAnswer.ts";
import { isMachine, neededPositions, stepsOf, usualCv, usualStep } from "./usualFigures.ts";

/** Heads that may wait before a step. */
export const PLACES_BEFORE = 3;
/** The trough holds so much more than comes in the time of bleeding at the pace of the kill. */
const SPARE = 1.25;
const MIN_SPARE = 2;

/** The stages of the line in order. */
export function newLine(answers: NewAnswers): Record<string, unknown>[] {
  return stepsOf(answers).map((name) => ({ name, section: usualStep(name).section, ...stage(name, answers) }));
}

function stage(name: string, answers: NewAnswers): Record<string, unknown> {
  const { json } = usualStep(name);
  if (name === "bleeding")
    return { kind: "dwell", places: trough(answers), dwell: writeTime(answers.bleeding), ...shared(json) };
  if (name === "chilling") return { kind: "dwell", places: null, chilling: chilling(), ...drip(answers) };
  return {
    kind: "station",
    ...station(name, answers),
    ...shared({ ...json, takesOff: takesOff(name, answers) }),
    ...atInspection(name),
  };
}

function station(name: string, answers: NewAnswers): Record<string, unknown> {
  const mean = writeTime(answers.seconds[name]!);
  const places = name === "hanging" || name === "sticking" ? {} : { buffer: PLACES_BEFORE };
  if (isMachine(name, answers)) return { ...machine(name, answers), ...places, cycle: mean };
  const cycle = { lognormal: { mean, cv: usualCv(name) } };
  return { work: "manual", positions: answers.people[name], ...places, cycle, crew: name };
}

function machine(name: string, answers: NewAnswers): Record<string, unknown> {
  const { breakdowns, power } = usualStep(name).json;
  const stops = answers.breakdowns && Array.isArray(breakdowns) ? breakdowns : [];
  return {
    work: "machine",
    positions: positionsOf(name, answers),
    ...(stops.length === 0 ? {} : { breakdowns: stops.map((stop) => ({ crew: MAINTENANCE, ...stop })) }),
    ...(power === undefined ? {} : { power }),
  };
}

/** What the usual figures of a step say besides its work. */
function shared({ travel, takesOff, waterPerHead }: Record<string, unknown>): Record<string, unknown> {
  return {
    ...(travel === undefined ? {} : { travel }),
    ...(takesOff === undefined ? {} : { takesOff }),
    ...(waterPerHead === undefined ? {} : { water: { perHead: waterPerHead } }),
  };
}

/** Paws and head come off at skinning where no step of its own takes them. */
const AT_SKINNING = ["hind-leg cutting", "four-leg cutting"];

function takesOff(name: string, { steps }: NewAnswers): unknown {
  const own = usualStep(name).json.takesOff;
  if (name !== "skinning") return own;
  const others = AT_SKINNING.filter((step) => !steps.includes(step)).map((step) => usualStep(step).json.takesOff);
  return [...others, own].flat();
}

/** Whether the steps take off what they usually do together, so that it is known what stays on the carcass. */
export function usualCarcass({ steps }: NewAnswers): boolean {
  return ["skinning", "evisceration", "chilling"].every((name) => steps.includes(name));
}

function drip(answers: NewAnswers): Record<string, unknown> {
  return usualCarcass(answers) ? { takesOff: [{ name: "drip", parts: ["chillLoss"] }] } : {};
}

/** Heads worked on side by side: a pair of hands each, or as many machines as keep up. */
export function positionsOf(name: string, answers: NewAnswers): number {
  return answers.people[name] ?? Math.min(64, neededPositions(name, answers));
}

function atInspection(name: string): Record<string, unknown> {
  return name === "inspection" ? { removals: [{ as: "condemned", share: assumedValue("animals.condemned") }] } : {};
}

function chilling(): Record<string, unknown> {
  const keys = ["air", "core", "airSpeed", "carcassLength"];
  return Object.fromEntries(keys.map((key) => [key, assumedValue(`chilling.${key}`)]));
}

/** Places to bleed: as many heads as the kill stuns in that time, and some to spare. */
export function trough({ bleeding, seconds, people }: NewAnswers): number {
  const paces = ["hanging", "stunning", "sticking"].map((name) => people[name]! / seconds[name]!);
  const heads = bleeding * Math.min(...paces);
  return Math.ceil(Math.max(heads * SPARE, heads + MIN_SPARE));
}
