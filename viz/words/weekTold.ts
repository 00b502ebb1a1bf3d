import { formatEstimate, formatShare, SECONDS_PER_DAY, writeClock } from "../../sim/text/units/index.ts";
import type { ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { bareUnit, type DecisionCell, type DecisionTable, responseHeading } from "./decisionTable.ts";

/** What a simulated week came to, over many weeks. */
export interface WeekTold {
  verdict: string;
  /** Limits, rest. */
  words: string[];
  /** A sentence for each order. */
  orders: string[];
  /** A row a day, and one for the week. */
  table: DecisionTable;
  next: string[];
}

/** A figure of each day, and the one of the week that stands below it. */
interface Column {
  day: string;
  week: string;
}

const COLUMNS: readonly Column[] = [
  { day: "finish", week: "" },
  { day: "overtime", week: "week.overtime" },
  { day: "carcasses", week: "week.carcasses" },
  { day: "carcassKg", week: "week.carcassKg" },
  { day: "leftInLairage", week: "" },
  { day: "paidHours", week: "week.paidHours" },
  { day: "fullCostPerKg", week: "fullCostPerKg" },
  { day: "costPerKg", week: "costPerKg" },
  { day: "costPerHead", week: "costPerHead" },
];
const COSTS = ["fullCostPerKg", "costPerKg", "costPerHead"];

type Week = NonNullable<StudyResults["plan"]["week"]>;

export function weekTold(results: StudyResults): WeekTold {
  const week = results.plan.week!;
  const infos = new Map(results.responses.map((info) => [info.key, info]));
  const { estimates } = results.variants[0]!;
  const days = week.days.filter(({ counted }) => counted);
  return {
    verdict: `${endWords(results, days)} ${cutShort(results)}`.trim(),
    words: [...limitWords(results), ...restWords(results)],
    orders: orderWords(results, week),
    table: tableOf(results, infos, days),
    next: [
      "`gambrel try` with the plan and `--on DAY` tells what happens if a day comes otherwise.",
      ...((estimates["week.overtime"]?.mean ?? 0) > 0
        ? ["`gambrel try` with the plan and `--more each=1` tells where one person more would help."]
        : []),
    ],
  };
}

/** The day that ends latest, and what all of them have of overtime. */
function endWords(results: StudyResults, days: Week["days"]): string {
  const { estimates } = results.variants[0]!;
  const ends = days.flatMap(({ name }) => {
    const end = estimates[`${name}.finish`];
    return end === undefined ? [] : [{ name, end }];
  });
  if (ends.length === 0) return "No day of the week ended.";
  const last = ends.reduce((latest, each) => (each.end.mean > latest.end.mean ? each : latest));
  const info = results.responses.find(({ key }) => key === `${last.name}.finish`)!;
  const start = results.variants[0]!.day.startClockSeconds;
  const [at] = formatEstimate(last.end, info, start);
  const all = ends.length === 1 ? "Work ends" : "Work ends latest";
  const overtime = estimates["week.overtime"];
  const overtimeInfo = results.responses.find(({ key }) => key === "week.overtime");
  const hours =
    overtime === undefined || overtimeInfo === undefined
      ? ""
      : overtimeOf(overtime.mean, formatEstimate(overtime, overtimeInfo, start)[0]);
  return `${all} on ${isolated(last.name)}, at ${at} (${overWeeks(results)})${hours}.`;
}

function overWeeks({ study }: StudyResults): string {
  return study.replications === 1 ? "in one simulated week" : `mean of ${study.replications} weeks`;
}

function overtimeOf(mean: number, words: string): string {
  return mean < 30 ? ", and the week has no overtime" : `, and the week has ${words} of overtime`;
}

function cutShort(results: StudyResults): string {
  const values = results.variants[0]!.values.unfinished ?? [];
  const cut = values.filter((value) => value === 1).length;
  if (cut === 0) return "";
  const notes = results.variants[0]!.dayNotes ?? [];
  return `${cut} of ${values.length} weeks ${cut === 1 ? "was" : "were"} cut short, since a day did not end, or not before the next one began: what is told of later days rests on the others. ${[...whoLacked(results.variants[0]!), ...whatWasFull(results.variants[0]!), ...notes.map(isolated)].join(" ")}`;
}

const CUT_SHORT = "cutShort.";

/** Whose absence cut weeks short; a sentence for each. */
export function whoLacked({ values }: Pick<StudyResults["variants"][number], "values">): string[] {
  return Object.entries(values).flatMap(([key, ofWeeks]) => {
    const weeks = ofWeeks.filter((value) => value === 1).length;
    if (!key.startsWith(CUT_SHORT) || weeks === 0) return [];
    const name = key.slice(CUT_SHORT.length);
    return [`In ${weeks === 1 ? "one" : weeks} of them too few of \u2018${isolated(name)}\u2019 came to do its work.`];
  });
}

const FULL = "cutShortFull.";

/** What was full when weeks were cut short; a sentence for each. */
export function whatWasFull({ values }: Pick<StudyResults["variants"][number], "values">): string[] {
  return Object.entries(values).flatMap(([key, ofWeeks]) => {
    const weeks = ofWeeks.filter((value) => value === 1).length;
    if (!key.startsWith(FULL) || weeks === 0) return [];
    const stage = isolated(key.slice(FULL.length));
    return [
      `In ${weeks === 1 ? "one" : weeks} of them \u2018${stage}\u2019 was full, and nobody took anything out of it any more that day: the line before it had to stand.`,
    ];
  });
}

function orderWords(results: StudyResults, { orders }: Week): string[] {
  const { values, estimates } = results.variants[0]!;
  return orders.map(({ name, day, bySeconds }) => {
    const late = values[`order.${name}.late`] ?? [];
    const met = late.filter((value) => value === 0).length;
    const when = `${isolated(day)} ${writeClock(bySeconds % SECONDS_PER_DAY)}`;
    const head = `Order \u2018${isolated(name)}\u2019 (${when}): `;
    if (met === late.length) return `${head}ready in time in every one of ${late.length} weeks.`;
    const info = results.responses.find(({ key }) => key === `order.${name}.short`)!;
    const missing = estimates[info.key];
    if (missing === undefined) return `${head}ready in time in ${met} of ${late.length} weeks.`;
    const [mean, range] = formatEstimate(missing, { unit: "", format: "number" }, 0);
    const ends = range === "" || missing.low === missing.high ? "" : ` (${range})`;
    return `${head}ready in time in ${met} of ${late.length} weeks; ${mean}${ends} ${info.unit} are missing at its time on average.`;
  });
}

function limitWords(results: StudyResults): string[] {
  const { estimates } = results.variants[0]!;
  const limits = results.responses.filter(({ key }) => key.startsWith("beyond."));
  const broken = limits
    .map((info) => ({ name: info.key.slice("beyond.".length), share: estimates[info.key] }))
    .filter(({ share }) => share !== undefined && share.mean > 0)
    .sort((a, b) => b.share!.mean - a.share!.mean);
  if (limits.length === 0) return ["The plan watches no time limit."];
  if (broken.length === 0) return ["No head was outside any time limit in any week."];
  const told = broken.slice(0, 3).map(({ name, share }) => `\u2018${isolated(name)}\u2019 ${formatShare(share!.mean)}`);
  return [
    `Heads outside a time limit, the worst first: ${told.join("; ")}${broken.length > 3 ? `; and ${broken.length - 3} limits more` : ""}.`,
  ];
}

function restWords(results: StudyResults): string[] {
  const values = (results.variants[0]!.values["rest.shortest"] ?? []).filter((value) => value !== null);
  if (values.length === 0) return [];
  const shortest = Math.min(...values) / 3600;
  return [
    `From the end of a day's work to the next day's start there are at least ${shortest.toFixed(1)} h. What rest is due is for the law and the agreements at the site.`,
  ];
}

function tableOf(results: StudyResults, infos: ReadonlyMap<string, ResponseInfo>, days: Week["days"]): DecisionTable {
  const { estimates } = results.variants[0]!;
  const first = days[0]!.name;
  const spare = COSTS.filter((key) => infos.has(`${first}.${key}`)).slice(1);
  const columns = COLUMNS.filter(({ day }) => infos.has(`${first}.${day}`) && !spare.includes(day));
  const start = results.variants[0]!.day.startClockSeconds;
  const cell = (key: string): DecisionCell => {
    const [info, estimate] = [infos.get(key), estimates[key]];
    if (info === undefined || estimate === undefined) return { value: "", range: "", shown: null };
    // The heading has the unit: a sheet of paper has no room for it in every cell.
    const bare = info.format === "number" ? { ...info, unit: "" } : info;
    const [value, range] = formatEstimate(estimate, bare, start);
    return { value, range: estimate.low === estimate.high ? "" : range, shown: null };
  };
  const row = (name: string, keys: readonly string[]) => ({
    name: isolated(name),
    cells: keys.map(cell),
    best: false,
    harm: null,
  });
  return {
    columns: columns.map(({ day }) => headingOf(plain(infos.get(`${first}.${day}`)!, first))),
    rows: [
      ...days.map(({ name }) =>
        row(
          name,
          columns.map(({ day }) => `${name}.${day}`),
        ),
      ),
      row(
        "the week",
        columns.map(({ week }) => week),
      ),
    ],
    more: 0,
    rowsAre: "Day",
  };
}

/** With the unit, where the name does not say it. */
function headingOf(info: ResponseInfo): string {
  const heading = responseHeading(info);
  const unit = bareUnit(info);
  const isSaid = unit === "" || info.format !== "number" || heading.toLowerCase().includes(unit.toLowerCase());
  return isSaid ? heading : `${heading} (${isolated(unit)})`;
}

/** The response of a day by the name that it has without the day. */
function plain(info: ResponseInfo, day: string): ResponseInfo {
  return { ...info, key: info.key.slice(day.length + 1), label: info.label.slice(day.length + 2) };
}
