import { formatPath, type Plan, type WeekDay } from "../../asked/plan/index.ts";
import { countedDays } from "../../day/observations/index.ts";
import type { MeanEstimate, StudyResults } from "../../days/results/index.ts";
import { formatEstimate, formatNumber, formatResponse, groupDigits } from "../../text/units/index.ts";
import type { PlanChange } from "./change.ts";
import type { ChangesToTry } from "./changesToTry.ts";
import { whyResponse } from "./whyStudy.ts";

/** What a planner can do for one day alone; anything else stands in the plant all week. */
const OF_ONE_DAY = new Set<PlanChange["kind"]>(["person", "stagger"]);

/** Response of the day by which changes are told: its end of work, or its carcasses. */
export function dayResponse(day: WeekDay & { plan: Plan }): string {
  return `${day.name}.${whyResponse(day.plan)}`;
}

/** What has to be known of every working day, to say which of them decides, and what each begins with. */
export function dayKeys(plan: Plan): string[] {
  return countedDays(plan).flatMap(({ name }) =>
    ["finish", "overtime", "left.heads", "left.carcasses"].map((key) => `${name}.${key}`),
  );
}

/** Single changes that are tried in whole weeks, besides one more person in each crew. */
const MAX_IN_WEEKS = 10;

/**
 * The changes that the day's own plan suggests, each made to the week: people and breaks on that day, all else on every day. Weeks take long, so of others
 * than people only those are kept that gain most on the day alone (`gainAlone`, by label); what a crew behind a chiller does shows in weeks only.
 */
export function changesOnDay(
  { name }: WeekDay,
  found: ChangesToTry,
  gainAlone: (change: PlanChange) => number,
): ChangesToTry {
  const people = found.singles.filter(({ kind }) => kind === "person");
  const others = found.singles.filter(({ kind }) => kind !== "person");
  const best = others.toSorted((a, b) => gainAlone(b) - gainAlone(a)).slice(0, MAX_IN_WEEKS);
  const asked = { ...found, singles: [...people, ...best], dropped: others.length - best.length };
  const inWeek = (change: PlanChange) => (OF_ONE_DAY.has(change.kind) ? onDayAlone(change, name) : onEveryDay(change));
  return { ...asked, singles: asked.singles.map(inWeek), pairs: asked.pairs.map(inWeek) };
}

function onDayAlone(change: PlanChange, name: string): PlanChange {
  const behind = ` on ${name}`;
  return {
    ...change,
    ...{ label: `${change.label}${behind}`, phrase: `${change.phrase}${behind}` },
    on: (plan) => {
      const day = plan.week!.days.find((each) => each.name === name)!;
      const changed = change.on(day.plan!);
      return {
        plan: withDays(plan, (each) => (each.name === name ? changed.plan : each.plan)),
        set: { [formatPath(["week", "days", name, "set"])]: changed.set },
      };
    },
  };
}

function onEveryDay(change: PlanChange): PlanChange {
  return {
    ...change,
    on: (plan) => {
      const changed = change.on(plan);
      return { plan: withDays(changed.plan, (day) => day.plan && change.on(day.plan).plan), set: changed.set };
    },
  };
}

function withDays(plan: Plan, planOf: (day: WeekDay) => Plan | null): Plan {
  const week = plan.week!;
  return { ...plan, week: { ...week, days: week.days.map((day) => ({ ...day, plan: planOf(day) })) } };
}

type Estimates = Readonly<Record<string, MeanEstimate>>;

/** The day that decides a week: the one with most overtime; where none has any, the one whose work ends latest. Null where no day ended. */
export function decidingDay(plan: Plan, estimates: Estimates): string | null {
  const known = ended(plan, estimates);
  return known[0]?.name ?? null;
}

interface Ended {
  name: string;
  end: MeanEstimate;
  overtime: number;
}

/** The one that decides first. */
function ended(plan: Plan, estimates: Estimates): Ended[] {
  const days = countedDays(plan).flatMap(({ name }): Ended[] => {
    const end = estimates[`${name}.finish`];
    return end === undefined ? [] : [{ name, end, overtime: estimates[`${name}.overtime`]?.mean ?? 0 }];
  });
  return days.sort((a, b) => b.overtime - a.overtime || b.end.mean - a.end.mean);
}

/** Under this nobody speaks of overtime, seconds. */
const NO_OVERTIME = 30;

/** Which day decides, or where the asked one stands among them; then what the days before left it, and what it would be alone. */
export function dayWords(plan: Plan, name: string, weeks: StudyResults, alone: MeanEstimate | undefined): string[] {
  const { estimates } = weeks.variants[0]!;
  return [
    ...decidesWords(plan, name, weeks, estimates),
    leftWords(plan, name, estimates),
    ...aloneWords(plan, name, weeks, alone),
  ];
}

function decidesWords(plan: Plan, name: string, weeks: StudyResults, estimates: Estimates): string[] {
  const [first, second] = ended(plan, estimates);
  if (first === undefined) return [];
  const end = (day: Ended) => clockOf(day.end, `${day.name}.finish`, weeks);
  const all = ended(plan, estimates).reduce((sum, { overtime }) => sum + overtime, 0);
  const overtime =
    all < NO_OVERTIME
      ? "no day has overtime, and its work ends latest"
      : `of ${minutes(all)} of overtime in the week ${minutes(first.overtime)} are its own`;
  const next = second === undefined ? "" : `; next is ${second.name}, whose work ends at ${end(second)}`;
  const here = name === first.name ? "" : ` This is of ${name}.`;
  return [`${first.name} decides the week: ${overtime}, at ${end(first)}${next}.${here}`];
}

function minutes(seconds: number): string {
  return formatResponse(seconds, { unit: "s", format: "duration" }, 0);
}

function clockOf(end: MeanEstimate, key: string, { responses, variants }: StudyResults): string {
  const info = responses.find((each) => each.key === key)!;
  const [mean, range] = formatEstimate(end, info, variants[0]!.day.startClockSeconds);
  return range === "" || range === `${mean} to ${mean}` ? mean : `${mean} (${range})`;
}

function leftWords(plan: Plan, name: string, estimates: Estimates): string {
  const [heads, carcasses] = ["left.heads", "left.carcasses"].map((key) => estimates[`${name}.${key}`]?.mean ?? 0);
  const first = plan.week!.days.filter((day) => day.plan !== null)[0]!.name === name;
  if (first) return `${name} is the first day that is simulated: nothing is left by a day before it.`;
  if (heads! < 0.5 && carcasses! < 0.5) return `${name} begins with nothing that the days before left.`;
  const count = (value: number) => groupDigits(formatNumber(Math.round(value)));
  const parts = [
    ...(carcasses! < 0.5 ? [] : [`${count(carcasses!)} carcasses in the chiller`]),
    ...(heads! < 0.5 ? [] : [`${count(heads!)} animals in their crates`]),
  ];
  return `${name} begins with ${parts.join(" and ")}, which the days before left.`;
}

function aloneWords(plan: Plan, name: string, weeks: StudyResults, alone: MeanEstimate | undefined): string[] {
  const own = weeks.variants[0]!.estimates[`${name}.finish`];
  if (own === undefined) return [];
  const inWeek = clockOf(own, `${name}.finish`, weeks);
  if (alone === undefined)
    return [
      `Its work ends at ${inWeek}. A day like it, beginning with an empty plant, would not end by itself, so where its time went cannot be traced.`,
    ];
  const later =
    plan.week!.days.find((day) => day.name === name)!.plan!.day.startClockSeconds - plan.day.startClockSeconds;
  const empty = clockOf(shifted(alone, later), `${name}.finish`, weeks);
  return [
    `Its work ends at ${inWeek}; a day like it that begins with an empty plant ends at ${empty}. Where the time went is traced on such days.`,
  ];
}

/** A week's hours count from the start of the plan's usual day. */
function shifted({ mean, low, high, ...rest }: MeanEstimate, by: number): MeanEstimate {
  return { ...rest, mean: mean + by, low: low === null ? null : low + by, high: high === null ? null : high + by };
}
