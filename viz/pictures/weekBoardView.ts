import { formatClock, formatDecimals, formatMinutes, SECONDS_PER_DAY } from "../../sim/text/units/index.ts";
import type { DayRecord, DaysRecord, OrderRecord, StepTrace, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { dateWords, quoted } from "../words/index.ts";
import { chillersOf } from "./chiller.ts";
import {
  BOARD_STEP_SECONDS,
  type BoardCrewDay,
  type BoardDay,
  type BoardFill,
  type BoardLot,
  type BoardOrder,
  type WeekBoardColumns,
} from "./weekBoardColumns.ts";

const HOUR = 3600;

/** Days of the calendar on one board, and fillings below the crews. */
const MAX_DAYS = 7;
const MAX_FILLS = 2;

type Week = NonNullable<StudyResults["plan"]["week"]>;

/** A day of the calendar with what was simulated of it, times after its own midnight. */
interface CalendarDay {
  index: number;
  outline: Week["days"][number];
  record: DayRecord | null;
}

/**
 * The boards of a variant's first simulated week, of up to seven days each; none where the plan has no week or the week was not kept whole.
 * Days of the warm-up are left out.
 */
export function weekBoardViews(results: StudyResults, variant: VariantResults): WeekBoardColumns[] {
  const outline = results.plan.week;
  const week = variant.day.week;
  if (outline === undefined || week === undefined) return [];
  const calendar = calendarOf(outline, week);
  const boards = Array.from({ length: Math.ceil(calendar.length / MAX_DAYS) }, (_, board) =>
    calendar.slice(board * MAX_DAYS, (board + 1) * MAX_DAYS),
  );
  return boards.map((days, index) => boardOf(results, variant, days, { index, of: boards.length }));
}

function calendarOf({ days }: Week, week: DaysRecord): CalendarDay[] {
  let simulated = 0;
  const all = days.map((outline, index): CalendarDay => {
    const record = outline.works ? (week.days[simulated++] ?? null) : null;
    return { index, outline, record };
  });
  return all.slice(
    Math.max(
      0,
      days.findIndex(({ counted }) => counted),
    ),
  );
}

function boardOf(
  results: StudyResults,
  variant: VariantResults,
  days: readonly CalendarDay[],
  sheet: { index: number; of: number },
): WeekBoardColumns {
  const week = variant.day.week!;
  const { begins } = results.plan.week!;
  const records = days.flatMap(({ record }) => (record === null ? [] : [record]));
  const crews = (records[0]?.crews ?? []).map(({ name }, crew) => ({
    name: isolated(name),
    largest: Math.max(0, ...records.map((record) => Math.max(0, ...record.crews[crew]!.people))),
  }));
  const first = days[0]?.index ?? 0;
  const orders = week.orders.flatMap((order) => {
    const day = Math.floor(order.bySeconds / SECONDS_PER_DAY) - first;
    return day < 0 || day >= days.length ? [] : [orderOf(order, day)];
  });
  const isTraced = records.every(({ traces }) => traces !== null);
  return {
    title:
      sheet.of === 1 ? "The week, hour by hour" : `The weeks, hour by hour, part ${sheet.index + 1} of ${sheet.of}`,
    caption: "White under a line: people on duty with nothing to do. Dashed upright line: the end of the last shift",
    subtitle: `People on duty (line) and with work in hand (filled), mean of each half hour, ${weekWords(results, variant)}`,
    description: describe(days, orders),
    ...rangeOf(records),
    days: days.map((day) => dayOf(day, week, begins)),
    crews,
    fills: fillsOf(records),
    orders,
    footnote: isTraced ? "" : "This week was run without traces, so people and fillings cannot be drawn.",
  };
}

/** One week is one draw, so the picture says which. */
function weekWords({ study, plan, variants }: StudyResults, { name, day }: VariantResults): string {
  const number = Math.floor(day.replication / plan.week!.days.length) + 1;
  const whose = variants.length > 1 ? `, ${quoted(name)}` : "";
  return study.replications > 1 ? `week ${number} of ${study.replications}${whose}` : `one week${whose}`;
}

function overtimeOf({ workFinishSeconds, shiftEndSeconds }: DayRecord): number {
  return Math.max(0, workFinishSeconds - shiftEndSeconds);
}

/** The end of work of each day, what of it is overtime, and the orders. */
function describe(days: readonly CalendarDay[], orders: readonly BoardOrder[]): string {
  const ends = days.flatMap(({ outline, record }) => {
    if (record === null) return [];
    const overtime = overtimeOf(record);
    const over = overtime < 30 ? "" : ` (${formatMinutes(overtime)} of overtime)`;
    return [`${isolated(outline.name)} ${formatClock(record.startClockSeconds + record.workFinishSeconds)}${over}`];
  });
  const inTime = orders.filter(({ met }) => met).length;
  const filled = orders.length === 0 ? "" : ` Orders ready in time: ${inTime} of ${orders.length}.`;
  return ends.length === 0 ? `No day of this sheet was simulated.${filled}` : `Work ends: ${ends.join(", ")}.${filled}`;
}

/** Full hours around everything that happens on any day, after midnight. */
function rangeOf(records: readonly DayRecord[]): { fromSeconds: number; toSeconds: number } {
  if (records.length === 0) return { fromSeconds: 6 * HOUR, toSeconds: 18 * HOUR };
  const from = Math.min(...records.map(({ startClockSeconds }) => startClockSeconds));
  const to = Math.max(
    ...records.map(
      (day) => day.startClockSeconds + Math.max(day.finishSeconds, day.workFinishSeconds, day.shiftEndSeconds),
    ),
  );
  const fromSeconds = Math.floor(from / HOUR) * HOUR;
  return { fromSeconds, toSeconds: Math.max(fromSeconds + HOUR, Math.ceil(to / HOUR) * HOUR) };
}

function dayOf({ index, outline, record }: CalendarDay, week: DaysRecord, begins: string | null): BoardDay {
  const words = { name: isolated(outline.name), date: dateWords(begins, index) };
  if (record === null) {
    const note = outline.works ? "not simulated" : "closed";
    return { ...words, works: false, notes: [note], shiftEnd: null, workEnd: null, pauses: [], crews: [], lots: [] };
  }
  const start = record.startClockSeconds;
  const overtime = overtimeOf(record);
  return {
    ...words,
    works: true,
    notes: [
      `work ends ${formatClock(start + record.workFinishSeconds)}`,
      ...(overtime < 30 ? [] : [`overtime ${formatMinutes(overtime)}`]),
    ],
    shiftEnd: start + record.shiftEndSeconds,
    workEnd: start + record.workFinishSeconds,
    pauses: outline.breaks.map(({ fromSeconds, toSeconds }) => ({ from: start + fromSeconds, to: start + toSeconds })),
    crews: record.crews.map((_, crew) => crewDay(record, crew)),
    lots: lotsOf(index * SECONDS_PER_DAY, outline, record, week),
  };
}

function crewDay(record: DayRecord, crew: number): BoardCrewDay {
  const { people, busySeconds, presentSeconds } = record.crews[crew]!;
  const trace = record.traces?.crews[crew];
  const steps = trace === undefined ? 0 : Math.ceil(trace.busy.endSeconds / BOARD_STEP_SECONDS);
  const means = (of: StepTrace) =>
    Array.from({ length: steps }, (_, step) =>
      meanBetween(of, step * BOARD_STEP_SECONDS, (step + 1) * BOARD_STEP_SECONDS),
    );
  return {
    startClockSeconds: record.startClockSeconds,
    people: Math.max(0, ...people),
    busyShare: presentSeconds > 0 ? busySeconds / presentSeconds : 0,
    busy: trace === undefined ? [] : means(trace.busy),
    present: trace === undefined ? [] : means(trace.present),
  };
}

/** Time-weighted mean of a trace from one time to another, 0 after its end; within a recorded bin its mean holds throughout. */
export function meanBetween(trace: StepTrace, from: number, to: number): number {
  const starts = trace.kind === "exact" ? trace.times : trace.mean.map((_, bin) => bin * trace.binSeconds);
  const values = trace.kind === "exact" ? trace.values : trace.mean;
  let area = 0;
  for (let i = 0; i < starts.length && starts[i]! < to; i++) {
    const until = Math.min(to, starts[i + 1] ?? trace.endSeconds, trace.endSeconds);
    area += values[i]! * Math.max(0, until - Math.max(from, starts[i]!));
  }
  return area / (to - from);
}

/** The lots of which heads were hung on a day; one that went on over the night stands on both days. */
function lotsOf(
  midnight: number,
  { shifts }: CalendarDay["outline"],
  record: DayRecord,
  { lots }: DaysRecord,
): BoardLot[] {
  const clock = record.startClockSeconds;
  const start = clock + Math.min(...shifts.map(({ fromSeconds }) => fromSeconds), record.workFinishSeconds);
  const end = clock + record.workFinishSeconds;
  return lots.flatMap((lot, index) => {
    if (lot.firstHungSeconds === null || lot.lastHungSeconds === null) return [];
    const [first, last] = [lot.firstHungSeconds - midnight, lot.lastHungSeconds - midnight];
    if (last < start || first > end) return [];
    const [from, to] = [Math.max(first, start), Math.min(last, end)];
    const words = `lot ${index + 1}, ${isolated(lot.name)}: ${formatDecimals(lot.hung, 0)} of ${formatDecimals(lot.heads, 0)} heads hung, ${formatClock(from)} to ${formatClock(to)}`;
    return [{ number: index + 1, from, to, words }];
  });
}

function orderOf(order: OrderRecord, day: number): BoardOrder {
  const { name, bySeconds, short, kilograms } = order;
  const met = short === 0;
  const unit = kilograms === null ? "carcasses" : "kg";
  const state = met ? "in time" : `${formatDecimals(Math.ceil(short), 0)} ${unit} missing`;
  return { day, at: bySeconds % SECONDS_PER_DAY, met, name: isolated(name), state };
}

/** What hangs in the largest chillers over the days; of a line without one the heads in its largest sections. */
function fillsOf(records: readonly DayRecord[]): BoardFill[] {
  const stages = records[0]?.stages ?? [];
  const chillers = stages.flatMap(({ name }, stage) => {
    const isChiller = records.some((day) => chillersOf({ day }).includes(day.stages[stage]!));
    const largest = Math.max(...records.map((day) => day.stages[stage]!.queue.max));
    return isChiller
      ? [{ name, largest, places: stages[stage]!.places, traceOf: (day: DayRecord) => day.traces?.queues[stage] }]
      : [];
  });
  const sections = (records[0]?.sections ?? []).map(({ name }, section) => ({
    name,
    largest: Math.max(...records.map((day) => day.sections[section]!.wip.max)),
    places: Number.POSITIVE_INFINITY,
    traceOf: (day: DayRecord) => day.traces?.wip[section],
  }));
  const rows = chillers.length > 0 ? chillers : sections;
  return [...rows]
    .sort((a, b) => b.largest - a.largest)
    .slice(0, MAX_FILLS)
    .map(({ name, largest, places, traceOf }) => ({
      name: isolated(name),
      largest,
      // A limit far above all that happened would flatten the curve.
      places: Number.isFinite(places) && places <= 4 * largest ? places : null,
      days: records.map((day) => fillDay(day, traceOf(day))),
    }));
}

function fillDay(record: DayRecord, trace: StepTrace | undefined): BoardFill["days"][number] {
  const points = { times: [] as number[], values: [] as number[] };
  if (trace === undefined) return points;
  const step = BOARD_STEP_SECONDS / 3;
  for (let from = 0; from < trace.endSeconds; from += step) {
    points.times.push(record.startClockSeconds + from);
    points.values.push(meanBetween(trace, from, Math.min(trace.endSeconds, from + step)));
  }
  // The last head may leave at the very end, which no bin shows.
  const last = record.heads.onLine === 0 ? 0 : trace.kind === "exact" ? trace.values.at(-1) : trace.low.at(-1);
  points.times.push(record.startClockSeconds + trace.endSeconds);
  points.values.push(last ?? 0);
  return points;
}
