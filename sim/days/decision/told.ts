import { formatDecimals, formatMinutes, formatSpan } from "../../text/units/index.ts";
import { type DecisionRow, type MeanEstimate, periodOf } from "../results/index.ts";
import { type Spoken, watchful } from "./judged.ts";
import { ENDS } from "./matters.ts";
import { daysPerYearOf } from "./money.ts";
import { amountWords, estimateWords, listed, lowered, named, paceOf, paceWords, simulated } from "./phrases.ts";
import type { Weighed } from "./weighed.ts";

const NAMED = 3;

/** Where is the bottleneck, and where does it go? */
export function whereNext(weighed: Weighed): Spoken {
  const { rows, findings } = weighed;
  const today = paceOf(findings.whys[0]);
  if (today === null)
    return {
      answer: "undecided",
      verdict: "No bottleneck can be told: no day ended by itself.",
      words: [],
      next: [],
      best: null,
    };
  const unsure = today.clear ? "" : ", though another station may set it as long";
  const moves = rows.slice(1).map(({ name }, index) => {
    const pace = paceOf(findings.whys[index + 1]);
    if (pace === null) return `with ${named(name)} it cannot be told`;
    if (pace.stage === today.stage) return `with ${named(name)} it stays there`;
    return `with ${named(name)} ${pace.stage === null ? "the line waits for animals instead" : `it moves to ${pace.stage}`}`;
  });
  const now =
    today.stage === null
      ? "No station is the bottleneck today: the line waits for animals"
      : `The bottleneck today is ${today.stage}`;
  const told = moves.length > 0 && moves.length <= NAMED ? `; ${moves.join("; ")}` : "";
  return {
    answer: "told",
    verdict: `${now} (${formatMinutes(today.seconds)} of the day)${unsure}${told}.`,
    words: moves.length > NAMED ? moves.map((move) => `${move[0]!.toUpperCase()}${move.slice(1)}.`) : [],
    next: ["`gambrel why` with the plan tries what would help there.", ...watchful(weighed)],
    best: null,
  };
}

/** Is a time limit kept? */
export function limitKept(weighed: Weighed): Spoken {
  const { rows, info, columns } = weighed;
  const limits = /^beyond\./.test(info.key) ? [info] : columns.filter(({ key }) => /^beyond\./.test(key));
  const broken = (row: DecisionRow) => limits.filter(({ key }) => (row.estimates[key]?.mean ?? 0) > 0);
  const today = broken(rows[0]!);
  const keeping = rows.slice(1).filter((row) => broken(row).length === 0);
  const n = rows[0]!.estimates[info.key]?.n ?? 0;
  const limitName = (each: (typeof limits)[number]) => `'${each.key.replace("beyond.", "")}'`;
  const worst = today.map(
    (each) => `${estimateWords(rows[0]!.estimates[each.key]!, each, 0)} of the heads are outside ${limitName(each)}`,
  );
  const others =
    keeping.length === 0 ? "" : `; it is kept with ${listed(keeping.slice(0, NAMED).map(({ name }) => named(name)))}`;
  return {
    answer: today.length === 0 ? "yes" : "no",
    verdict:
      today.length === 0
        ? `Yes: no head was outside ${limits.length === 1 ? limitName(limits[0]!) : "any limit"} in ${n} ${simulated(weighed.study)}.`
        : `No: ${worst.join("; ")}${rows.length > 1 ? others : ""}.`,
    words: [
      ...(rows.length > 1 && today.length > 0 && keeping.length === 0 ? ["None of the plans tried keeps it."] : []),
      ...(today.length === 0 ? [couldStill(n, weighed.study)] : []),
    ],
    next: today.length === 0 ? [] : ["`gambrel why` with the plan tries what would help."],
    best: today.length === 0 ? 0 : keeping.length > 0 ? rows.indexOf(keeping[0]!) : null,
  };
}

/** Days without a case say little of rare ones: exact interval of a share of which none was seen (Clopper and Pearson 1934). */
function couldStill(days: number, study: Weighed["study"]): string {
  const { confidence } = study;
  const noun = `${periodOf(study)}s`;
  const most = 1 - ((1 - confidence) / 2) ** (1 / days);
  return `${periodOf(study) === "day" ? "On" : "In"} other ${noun} it may still happen: ${days} ${noun} leave open up to ${formatDecimals(100 * most, most < 0.1 ? 1 : 0)} % of ${noun} with such a head.`;
}

/** When do we finish, how much comes out, what does it cost? */
export function whatWillItBe(weighed: Weighed): Spoken {
  const { rows, info, study, findings } = weighed;
  const found = rows[0]!.estimates[info.key]!;
  const start = study.variants[0]!.plan.day.startClockSeconds;
  const spread = [found.min, found.max].map((value) =>
    estimateWords({ ...found, mean: value, low: null, high: null }, info, start),
  );
  const what = info.key === "finish" ? "Work ends at" : `${info.label}:`;
  const pace = paceOf(findings.whys[0]);
  const period = periodOf(study);
  return {
    answer: "told",
    verdict: `${what} ${estimateWords(found, info, start)} on average.`,
    words: [
      ...monthWords(weighed, found),
      ...(found.min === found.max
        ? [`It was the same ${period === "day" ? "on" : "in"} all ${found.n} ${simulated(study)}.`]
        : [`Single ${period}s lie between ${spread[0]} and ${spread[1]} (${found.n} simulated).`]),
      ...(ENDS.has(info.key) || info.key === OVERTIME_PAY ? overtimeWords(weighed) : []),
      ...(pace === null ? [] : [`Over the day ${paceWords(pace)}.`]),
    ],
    next: watchful(weighed),
    best: null,
  };
}

const OVERTIME_PAY = "cost.overtimePay";

/** "Overtime on 7 of 8 simulated days, 39 min on average." */
function overtimeWords({ overtimeDays, rows, columns, info, study }: Weighed): string[] {
  const [today] = overtimeDays;
  if (today == null) return [];
  const overtime = columns.find(({ key }) => key === "overtime");
  const found = overtime === undefined ? undefined : rows[0]!.estimates.overtime;
  const size =
    info.key === "overtime" || found === undefined || found.mean === 0
      ? ""
      : `, ${formatSpan(found.mean, overtime!, "plain")} on average`;
  return [
    `Overtime ${periodOf(study) === "day" ? "on" : "in"} ${today.days} of ${today.of} ${simulated(study)}${size}.`,
  ];
}

const MONTHS = 12;
/** Money of a whole day, which adds up over days: not that of a head or a kilogram. */
const ADDS_UP = /^(cost|plantCost)\.|^(margin|fullMargin)$/;

function monthWords({ info, study }: Weighed, { mean }: MeanEstimate): string[] {
  const { plan } = study.variants[0]!;
  if (plan.money === null || info.unit !== plan.money.currency || !ADDS_UP.test(info.key)) return [];
  const { daysPerYear, assumed } = daysPerYearOf(plan);
  const [year, month] = [mean * daysPerYear, (mean * daysPerYear) / MONTHS].map((amount) =>
    formatDecimals(Number(amount.toPrecision(2)), 0),
  );
  const days = `${formatDecimals(daysPerYear, 0)} working days a year${assumed ? ", assumed" : ""}`;
  return [`About ${month} ${info.unit} a month, ${year} ${info.unit} a year (${days}).`];
}

/** Which of many factors matters? */
export function whatMatters({ study, info, findings, matters }: Weighed): Spoken {
  const effects = study.factors
    .map(({ name }, factor) => ({ name, size: findings.effects?.[factor]?.muStar ?? 0 }))
    .sort((a, b) => b.size - a.size);
  const [first, second] = effects;
  const little = effects.filter(({ size }) => size < matters.size);
  const then =
    second === undefined || second.size < matters.size
      ? ""
      : `, then ${named(second.name)} (${amountWords(second.size, info)})`;
  return {
    answer: "told",
    verdict:
      first === undefined || first.size < matters.size
        ? `None of the factors matters to ${lowered(info)}: each moves it by less than ${amountWords(matters.size, info)}.`
        : `${named(first.name)} matters most to ${lowered(info)}: it moves it by ${amountWords(first.size, info)} over its range${then}.`,
    words:
      little.length === 0 || first === undefined || first.size < matters.size
        ? []
        : [`No need to measure closely: ${listed(little.map(({ name }) => named(name)))}.`],
    next: [],
    best: null,
  };
}
