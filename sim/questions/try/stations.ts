import { pacedIn } from "../../asked/plan/index.ts";
import { fileSteps, type Step, steps } from "../../day/line/index.ts";
import { does } from "../../text/kinds/index.ts";
import { type Reading, read, readClock, refused, writeClock } from "../../text/units/index.ts";
import { assigned, countOf, namedOne } from "./named.ts";
import type { PlanDraft } from "./planDraft.ts";
import { cannot, type Told, told } from "./told.ts";

const MAX_PLACES = 100_000;
const NO_LIMIT = "no limit";

/** "skinning=20": so many places before a station, or in a trough or chiller. */
export function places(draft: PlanDraft, written: string): Reading<Told> {
  const parts = assigned(written, "--places skinning=20");
  if (parts.fault !== null) return parts;
  const step = stepNamed(draft, parts.value[0], (each) => does(each, "buffer heads") || does(each, "hold heads"));
  if (step.fault !== null) return step;
  const count = parts.value[1] === NO_LIMIT ? read(null) : countOf(parts.value[1], MAX_PLACES, "--places skinning=20");
  if (count.fault !== null) return count;
  const holds = does(step.value, "hold heads");
  draft.put([...fileSteps(step.value), holds ? "places" : "buffer"], count.value);
  const number = count.value === null ? `${NO_LIMIT} of places` : `${count.value} places`;
  return told(`${number} ${holds ? "in" : "before"} ${step.value.name}`);
}

/** "evisceration=10%": so much more an hour, all day. */
export function faster(draft: PlanDraft, written: string): Reading<Told> {
  return speed(draft, written, { sign: 1, word: "faster", most: 900 });
}

/** "evisceration=10%": so much less an hour, all day. */
export function slower(draft: PlanDraft, written: string): Reading<Told> {
  return speed(draft, written, { sign: -1, word: "slower", most: 90 });
}

interface Speed {
  sign: 1 | -1;
  word: string;
  most: number;
}

function speed(draft: PlanDraft, written: string, { sign, word, most }: Speed): Reading<Told> {
  const example = `--${word} evisceration=10%`;
  const parts = assigned(written, example);
  if (parts.fault !== null) return parts;
  const paced = new Set(draft.plan.line.flatMap(pacedIn).map(({ name }) => name));
  const step = stepNamed(draft, parts.value[0], ({ name }) => paced.has(name));
  if (step.fault !== null) return step;
  const percent = Number(/^(\d{1,3}(?:\.\d{1,2})?) ?%$/.exec(parts.value[1])?.[1]);
  if (!(percent > 0 && percent <= most))
    return refused(
      `'${parts.value[1]}' is not a percentage here`,
      `more than 0 % and at most ${most} %`,
      `write for example ${example}`,
    );
  const path = [...fileSteps(step.value), "pace"];
  const by = 1 + (sign * percent) / 100;
  const changed = hourly(draft, path).map((entry) => ({ ...entry, speed: tidy(Number(entry.speed ?? 1) * by) }));
  if (changed.some((entry) => entry.speed < 0.01 || entry.speed > 10))
    return cannot(
      `'${step.value.name}' would run at less than a hundredth or more than ten times its speed`,
      "write a smaller change",
    );
  draft.put(path, changed);
  return told(`${step.value.name} ${percent} % ${word}`);
}

/** The speeds of the day, from its start on. */
function hourly(draft: PlanDraft, path: readonly string[]): Record<string, unknown>[] {
  const start = draft.plan.day.startClockSeconds;
  const entries = draft.list(...path);
  const first = entries.length === 0 ? Number.POSITIVE_INFINITY : readClock(entries[0]!.from).value!;
  return first <= start ? entries : [{ from: writeClock(Math.min(start, dayStart(draft))) }, ...entries];
}

/** A shift that was moved may have moved it. */
function dayStart(draft: PlanDraft): number {
  const written = draft.at("day", "start") ?? draft.list("day", "shifts")[0]?.from;
  return readClock(written).value!;
}

/** Sums of parts of ten in binary have tails that nobody wrote. */
function tidy(value: number): number {
  return Number(value.toFixed(6));
}

function stepNamed(draft: PlanDraft, written: string, suits: (step: Step) => boolean): Reading<Step> {
  const all = steps(draft.plan);
  const fit = all.filter(suits);
  const name = namedOne(
    written,
    fit.map((step) => step.name),
    "a stage where that can be changed",
  );
  return name.fault === null ? read(fit.find((step) => step.name === name.value)!) : name;
}
