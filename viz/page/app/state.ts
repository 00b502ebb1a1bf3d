import { computed, type ReadonlySignal, type Signal, signal } from "@preact/signals";
import { parseJson } from "../../../sim/asked/plan/index.ts";
import type { DayCourse } from "../../../sim/day/course/index.ts";
import type { StudyResults } from "../../../sim/days/results/index.ts";
import type { Lesson } from "../lessons/lesson.ts";
import { type Control, changesOf, type Moves } from "../plan/control.ts";
import { controlsOf } from "../plan/controlsOf.ts";
import { type Unsure, unsureOf } from "../plan/knowing.ts";
import type { PlanFault, PlanText } from "../worker/messages.ts";
import { DayClock } from "./dayClock.ts";

export type Which = "base" | "variant";

/** What the page is about: everything that people can change on it, and what came of it. */
export const plan: Signal<PlanText> = signal({ name: "plan.json", text: "", files: {} });
/** The JSON of the last text that was a sound plan; controls are made of it. */
export const soundPlan: Signal<unknown> = signal(null);
export const moves: Signal<Moves> = signal({});
export const seed = signal("1");
/** Which day of the seed is drawn; the figures are of all twenty. */
export const replication = signal(0);
/** How many days the figures are of. */
export const REPLICATIONS = 20;

export const faults: Signal<readonly PlanFault[]> = signal([]);
export const variantFaults: Signal<readonly PlanFault[]> = signal([]);
export const warnings: Signal<readonly PlanFault[]> = signal([]);
export const courses: Record<Which, Signal<DayCourse | null>> = { base: signal(null), variant: signal(null) };
export const results: Signal<StudyResults | null> = signal(null);
/** Uncertain figures are drawn anew for each day, in place of taken as written. */
export const inWorlds = signal(false);
/** Beside results in worlds: those of the same days as if every figure were known. */
export const knownResults: Signal<StudyResults | null> = signal(null);
/** The results are those of the question before. */
export const stale = signal(false);
/** Days simulated of those asked for; null when nothing is being simulated. */
export const progress: Signal<{ done: number; total: number } | null> = signal(null);
/** Something that should not happen went wrong in the simulation. */
export const failure: Signal<string | null> = signal(null);
/** The plan's days are too long to be drawn. */
export const tooLong = signal(false);

export const picked: Signal<string | null> = signal(null);
export const lesson: Signal<Lesson | null> = signal(null);
/** Hands up for each option of the lesson, and whether its answer is shown. */
export const hands: Signal<number[]> = signal([]);
export const answerShown = signal(false);
/** Clock time to go to when the plan's day is there, seconds after midnight. */
export const startAt: Signal<number | null> = signal(null);
export const editorOpen = signal(false);
export const theme: Signal<"auto" | "light" | "dark"> = signal("auto");
/** One line that tells what was just done; read out by screen readers. */
export const notice = signal("");

export const clock = new DayClock((call) => requestAnimationFrame(call));

export const controls: ReadonlySignal<Control[]> = computed(() => controlsOf(soundPlan.value));
let lastChanges: Record<string, unknown> = {};
/** The same object as long as it says the same, so that nothing is asked twice. */
export const changes: ReadonlySignal<Record<string, unknown>> = computed(() => {
  const fresh = changesOf(soundPlan.value, controls.value, moves.value);
  if (JSON.stringify(fresh) !== JSON.stringify(lastChanges)) lastChanges = fresh;
  return lastChanges;
});
export const isChanged: ReadonlySignal<boolean> = computed(() => Object.keys(changes.value).length > 0);
export const unsure: ReadonlySignal<Unsure> = computed(() => unsureOf(soundPlan.value));
/** Name by which the plan calls itself, or its file's. */
export const planTitle: ReadonlySignal<string> = computed(() => {
  const { value } = parseJson(plan.value.text);
  const name = typeof value === "object" && value !== null ? (value as { name?: unknown }).name : undefined;
  return typeof name === "string" && name !== "" ? name : plan.value.name;
});

/** What is moved, in words; "" for nothing. */
export const changeWords: ReadonlySignal<string> = computed(() => {
  const told = new Set<string>();
  const words = controls.value.flatMap((control) => {
    const value = moves.value[control.id];
    if (value === undefined || told.has(control.id)) return [];
    told.add(control.id);
    return [`${control.group}: ${control.label} ${control.words(value)}`];
  });
  return words.join("; ");
});

/** Moves one control; back at its base value it counts as not moved. */
export function move(control: Control, value: number): void {
  const { [control.id]: _, ...others } = moves.value;
  moves.value = value === control.base ? others : { ...others, [control.id]: value };
}
