import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord, StepTrace } from "../../day/engine/index.ts";
import { STATES } from "../../day/engine/index.ts";
import { type Step, steps } from "../../day/line/index.ts";
import { type UtilitySheet, utilitySheet } from "../../day/observations/index.ts";
import { does } from "../../text/kinds/index.ts";

const MINUTE = 60;
const MINUTES_OF_DAY = 1440;
const WORKING = STATES.indexOf("working");

/** What a plant draws minute by minute; minute i begins i x 60 s after the day's start. */
export interface DayProfile {
  kilowatts: Float64Array;
  coldLitres: Float64Array;
  hotLitres: Float64Array;
}

/**
 * Spreads what the day used over its minutes: what goes by the head over the seconds in which positions worked, what goes by the hour over the
 * hours in which it runs, the heat of carcasses over those that hang in the chiller. So the sum over the minutes is the day's use. The record
 * needs traces; throws a RangeError without.
 */
export function dayProfile(plan: Plan, day: DayRecord): DayProfile {
  const sheet = utilitySheet(day, plan);
  if (day.traces === null) throw new RangeError("dayProfile: the day has to be simulated with traces");
  const ends = day.workFinishSeconds + (plan.day.cleaning?.seconds ?? 0);
  const minutes = Math.max(MINUTES_OF_DAY, Math.ceil(Math.max(ends, day.finishSeconds) / MINUTE));
  const empty = () => new Float64Array(minutes);
  const profile: DayProfile = { kilowatts: empty(), coldLitres: empty(), hotLitres: empty() };
  if (sheet === null) return profile;
  for (const step of steps(plan)) addStep(profile, step, { plan, day });
  for (const use of sheet.consumers) addConsumer(profile, use, { plan, day });
  for (const room of sheet.coldRooms) addColdRoom(profile, room, { plan, day });
  return profile;
}

interface Of {
  plan: Plan;
  day: DayRecord;
}

function addStep(profile: DayProfile, step: Step, { plan, day }: Of): void {
  const { waterPerHead, waterPerHour, energyPerHead, powerKilowatts } = step.of.utilities;
  const fresh = does(step, "handle crates") ? 1 - step.of.waterReusedShare : 1;
  const processed = day.stages.find(({ name, kind }) => name === step.name && kind === step.kind)?.processed ?? 0;
  const working = workedMinutes(step, day);
  const open = does(step, "hold heads") ? openSpans(plan, day) : workSpans(plan, day);
  spread(profile.coldLitres, waterPerHead * processed * fresh, working ?? spanMinutes(open));
  spread(profile.kilowatts, energyPerHead * processed * MINUTE, working ?? spanMinutes(open));
  hold(profile.coldLitres, (waterPerHour / MINUTE) * fresh, open);
  hold(profile.kilowatts, powerKilowatts, open);
}

/** Position-seconds at work by minute; null where nothing worked. */
function workedMinutes(step: Step, { traces, stages }: DayRecord): Map<number, number> | null {
  const index = stages.findIndex(({ name, kind }) => name === step.name && kind === step.kind);
  const trace = traces!.states[index];
  if (trace === undefined) return null;
  const minutes = new Map<number, number>();
  for (let bin = 0; bin * trace.binSeconds < trace.endSeconds; bin++) {
    const seconds = trace.seconds[bin * STATES.length + WORKING] ?? 0;
    if (seconds > 0) share(minutes, bin * trace.binSeconds, trace.binSeconds, seconds);
  }
  return minutes.size === 0 ? null : minutes;
}

/** Puts an amount that arose evenly over a span into the minutes of that span. */
function share(minutes: Map<number, number>, from: number, length: number, amount: number): void {
  for (let minute = Math.floor(from / MINUTE); minute * MINUTE < from + length; minute++) {
    const part = Math.min(from + length, (minute + 1) * MINUTE) - Math.max(from, minute * MINUTE);
    minutes.set(minute, (minutes.get(minute) ?? 0) + (amount * part) / length);
  }
}

function addConsumer(profile: DayProfile, use: UtilitySheet["consumers"][number], { plan, day }: Of): void {
  const open =
    use.during === "work"
      ? workSpans(plan, day)
      : use.during === "cleaning"
        ? cleaningSpans(plan, day)
        : [{ from: 0, to: MINUTES_OF_DAY * MINUTE }];
  spread(use.celsius === null ? profile.coldLitres : profile.hotLitres, use.litres, spanMinutes(open));
  hold(profile.kilowatts, use.electricKilowatts, open);
}

/** The compressors follow what hangs in the room; doors, people, walls, fans and lights are as long as it is kept cold. */
function addColdRoom(profile: DayProfile, room: UtilitySheet["coldRooms"][number], { plan, day }: Of): void {
  const open = openSpans(plan, day);
  const motors = room.fans + room.lights;
  const stage = plan.line.find(({ name }) => name === room.name);
  const cop = stage !== undefined && does(stage, "hold heads") ? stage.cooling!.cop : 1;
  hold(profile.kilowatts, (room.doors + room.people + room.walls + motors) / cop + motors, open);
  const index = day.stages.findIndex(({ name }) => name === room.name);
  const carcasses = (room.carcasses * room.hours * MINUTE) / cop;
  spread(profile.kilowatts, carcasses, presentMinutes(day.traces!.queues[index]!) ?? spanMinutes(open));
}

/** Head-seconds by minute; null where nobody was. */
function presentMinutes(trace: StepTrace): Map<number, number> | null {
  const minutes = new Map<number, number>();
  if (trace.kind === "binned")
    for (const [bin, mean] of trace.mean.entries()) {
      const from = bin * trace.binSeconds;
      const length = Math.min(trace.binSeconds, trace.endSeconds - from);
      if (mean > 0 && length > 0) share(minutes, from, length, mean * length);
    }
  else
    for (const [row, value] of trace.values.entries()) {
      const from = trace.times[row]!;
      const length = (trace.times[row + 1] ?? trace.endSeconds) - from;
      if (value > 0 && length > 0) share(minutes, from, length, value * length);
    }
  return minutes.size === 0 ? null : minutes;
}

interface Span {
  from: number;
  to: number;
}

/** Shifts up to the end of the last work, and overtime: as the day's use is counted. */
function workSpans({ day: { shifts } }: Plan, day: DayRecord): Span[] {
  const spans = shifts.map(({ fromSeconds, toSeconds }) => ({
    from: Math.max(fromSeconds, day.watchedFromSeconds),
    to: Math.min(toSeconds, day.workFinishSeconds),
  }));
  return [...spans, { from: Math.max(day.shiftEndSeconds, day.watchedFromSeconds), to: day.workFinishSeconds }].filter(
    ({ from, to }) => to > from,
  );
}

function openSpans({ day: { shifts } }: Plan, day: DayRecord): Span[] {
  const from = Math.max(shifts[0]?.fromSeconds ?? 0, day.watchedFromSeconds);
  return day.finishSeconds > from ? [{ from, to: day.finishSeconds }] : [];
}

function cleaningSpans(plan: Plan, { workFinishSeconds: from }: DayRecord): Span[] {
  const seconds = plan.day.cleaning?.seconds ?? 0;
  return from > 0 && seconds > 0 ? [{ from, to: from + seconds }] : [];
}

function spanMinutes(spans: readonly Span[]): Map<number, number> {
  const minutes = new Map<number, number>();
  for (const { from, to } of spans) share(minutes, from, to - from, to - from);
  return minutes;
}

/** An amount over minutes, by their weights; where there are none, over the whole day. */
function spread(into: Float64Array, amount: number, weights: Map<number, number>): void {
  if (amount === 0) return;
  const total = [...weights.values()].reduce((sum, weight) => sum + weight, 0);
  if (total === 0) for (let minute = 0; minute < into.length; minute++) into[minute]! += amount / into.length;
  else for (const [minute, weight] of weights) into[Math.min(minute, into.length - 1)]! += (amount * weight) / total;
}

/** A steady rate over spans: the mean of each minute. */
function hold(into: Float64Array, rate: number, spans: readonly Span[]): void {
  if (rate === 0) return;
  for (const [minute, seconds] of spanMinutes(spans))
    into[Math.min(minute, into.length - 1)]! += (rate * seconds) / MINUTE;
}

/** The largest mean over so many minutes, and the minute at which that span begins. */
export function busiest(values: Float64Array, minutes: number): { mean: number; minute: number } {
  const length = Math.max(1, Math.min(values.length, Math.round(minutes)));
  let best = { mean: 0, minute: 0 };
  for (let minute = 0; minute + length <= values.length; minute++) {
    let sum = 0;
    for (let index = minute; index < minute + length; index++) sum += values[index]!;
    if (sum / length > best.mean + 1e-12) best = { mean: sum / length, minute };
  }
  return best;
}
