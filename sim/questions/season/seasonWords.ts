import { listed, named } from "../../days/decision/index.ts";
import type { Estimate } from "../../maths/statistics/index.ts";
import { formatDecimals, formatEstimate, formatShare } from "../../text/units/index.ts";
import type { SeasonFindings, SeasonKey, SeasonKind, SeasonWords } from "./season.ts";

/** Under this a week has no overtime that anybody would plan for: person-hours. */
const NO_OVERTIME = 1;
const MAX_TOLD = 3;

/** A year told to a planner: the hardest weeks first, then overtime, orders, people, money, and what it rests on. */
export function seasonWords(season: SeasonFindings): SeasonWords {
  const hardest = hardestOf(season);
  return {
    verdict:
      hardest === null
        ? "No kind of week came to its end, so nothing can be said of the year."
        : verdictOf(hardest, season),
    words: [
      ...cutWords(season),
      ...overtimeWords(season),
      ...orderWords(season),
      ...peopleWords(season),
      ...moneyWords(season),
      basis(season),
    ],
    next: [
      ...(season.lacking.length === 0
        ? []
        : [`Give ${listed(season.lacking.map(named))} a \`cover\` in the plan: a crew that steps in.`]),
      "`gambrel improve` with a question of the week moves people, lorries and hours between its days; with the plan of a hard week it tells what helps there.",
    ],
  };
}

/** "13:55 (13:40 to 14:10)" and the like: a figure of a kind of week with its interval. */
export function seasonFigure(
  key: SeasonKey,
  found: Estimate,
  { startClockSeconds }: Pick<SeasonFindings, "startClockSeconds">,
): { value: string; range: string } {
  const info = key === "end" ? ({ unit: "s", format: "clock" } as const) : ({ unit: "", format: "number" } as const);
  const [value, range] = formatEstimate(found, info, startClockSeconds);
  return { value, range: found.low === found.high ? "" : range };
}

function hardestOf({ kinds }: SeasonFindings): SeasonKind | null {
  const known = kinds.filter(({ figures }) => figures.end !== null && figures.overtimeHours !== null);
  const hours = ({ figures }: SeasonKind) => figures.overtimeHours!.mean;
  return known.toSorted((a, b) => hours(b) - hours(a) || b.figures.end!.mean - a.figures.end!.mean)[0] ?? null;
}

function verdictOf(hardest: SeasonKind, season: SeasonFindings): string {
  const { latestDay, figures } = hardest;
  const { value, range } = seasonFigure("end", figures.end!, season);
  const when = `work goes on to ${value}${range === "" ? "" : ` (${range})`}, longest on ${latestDay}`;
  const hours = figures.overtimeHours!.mean;
  const over =
    hours < NO_OVERTIME
      ? "with no overtime to speak of"
      : `with ${hoursWords(figures.overtimeHours!, season)} of overtime a week`;
  return `Hardest of ${yearWords(season)} is ${named(hardest.name)} (${weeksWords(hardest)}): ${when}, ${over}.`;
}

function yearWords({ kinds }: SeasonFindings): string {
  const all = kinds.reduce((sum, { times }) => sum + times, 0);
  return all === 1 ? "one week" : `${all} weeks`;
}

/** "week 3", "weeks 3 to 6". */
function weeksWords({ from, times }: SeasonKind): string {
  return times === 1 ? `week ${from}` : `weeks ${from} to ${from + times - 1}`;
}

function hoursWords(found: Estimate, season: SeasonFindings): string {
  const { value, range } = seasonFigure("overtimeHours", found, season);
  return `${value}${range === "" ? "" : ` (${range})`} person-hours`;
}

function overtimeWords(season: SeasonFindings): string[] {
  const found = season.year.overtimeHours;
  if (found === null) return [];
  const share = ({ times, figures }: SeasonKind) => times * (figures.overtimeHours?.mean ?? 0);
  const worst = season.kinds
    .filter((kind) => (kind.figures.overtimeHours?.mean ?? 0) >= NO_OVERTIME)
    .toSorted((a, b) => share(b) - share(a));
  if (worst.length === 0) return ["No kind of week has overtime to speak of."];
  const told = worst.slice(0, MAX_TOLD).map((kind) => `${named(kind.name)} ${formatShare(share(kind) / found.mean)}`);
  return [`The year has ${sumWords(found)} person-hours of overtime, most in ${listed(told)} of it.`];
}

function orderWords({ orders, kinds, year, runs }: SeasonFindings): string[] {
  if (orders === 0 || year.late === null) return [];
  if (year.late.mean === 0) return [`Every order is ready in time in all ${runs} simulated weeks of each kind.`];
  const late = kinds
    .filter(({ figures }) => (figures.late?.mean ?? 0) > 0)
    .toSorted((a, b) => b.figures.late!.mean - a.figures.late!.mean);
  const told = late
    .slice(0, MAX_TOLD)
    .map(({ name, figures }) => `${named(name)} ${formatDecimals(figures.late!.mean, 1)}`);
  const rest = late.length > MAX_TOLD ? `, and ${late.length - MAX_TOLD} kinds of week more` : "";
  return [`Late orders a week, of ${orders}: ${told.join("; ")}${rest}. In the year ${sumWords(year.late)}.`];
}

function peopleWords({ people, kinds }: SeasonFindings): string[] {
  const more = kinds.filter(({ figures }) => Math.round(figures.people?.mean ?? 0) > people);
  if (people === 0) return [];
  if (more.length === 0)
    return [
      `The ${people} people of the plan do the work of every kind of week with less than one person's hours of overtime.`,
    ];
  const told = more
    .toSorted((a, b) => b.figures.people!.mean - a.figures.people!.mean)
    .slice(0, MAX_TOLD)
    .map(({ name, figures }) => `${named(name)} would take ${formatDecimals(figures.people!.mean, 0)}`);
  return [
    `The plan has ${people} people. Without overtime ${listed(told)}, if more people do more work where it is waited for.`,
  ];
}

function moneyWords({ year, currency }: SeasonFindings): string[] {
  if (year.made === null) return [];
  const cost =
    year.cost === null || currency === null ? "" : `; they cost ${sumWords(year.cost)} ${currency} without the animals`;
  const margin =
    year.margin === null || currency === null ? "" : `, and leave a margin of ${sumWords(year.margin)} ${currency}`;
  return [`The year makes ${sumWords(year.made)} carcasses${cost}${margin}.`];
}

function cutWords({ kinds, runs, lacking, full }: SeasonFindings): string[] {
  const cut = kinds.filter((kind) => kind.cut > 0);
  if (cut.length === 0) return [];
  const told = cut.map((kind) => `${kind.cut} of ${runs} of ${named(kind.name)}`);
  const who = lacking.length === 0 ? "" : ` Too few came of ${listed(lacking.map(named))}.`;
  const chiller =
    full.length === 0 ? "" : ` Full, with nobody to take anything out any more that day: ${listed(full.map(named))}.`;
  return [
    `Some weeks were cut short, since a day did not end: ${listed(told)}.${who}${chiller} The figures rest on the others, which were luckier.`,
  ];
}

function basis({ runs, kinds }: SeasonFindings): string {
  return `Means of ${runs} simulated weeks of each of ${kinds.length} ${kinds.length === 1 ? "entry" : "entries"}, with the same luck; a week begins as the plan's does, not with what the week before left.`;
}

function sumWords(found: Estimate): string {
  const [value, range] = formatEstimate(found, { unit: "", format: "number" }, 0);
  return range === "" || found.low === found.high ? value : `${value} (${range})`;
}
