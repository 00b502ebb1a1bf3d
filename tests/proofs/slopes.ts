import { parseArgs } from "node:util";
import fc from "fast-check";
import type { Plan } from "../../sim/asked/plan/index.ts";
import { slopesOf } from "../../sim/day/observations/index.ts";
import { slopePlan } from "../support/slopePlans.ts";
import { type Comparison, compare, FEATURES, LIMIT, slopesToCompare } from "./slopeProof.ts";

/*
 * Compares every slope that is given, on random plans, with a central difference on the same random numbers.
 * README.md here tells what that shows and has the tables of the last run.
 */
const { values } = parseArgs({
  options: {
    plans: { type: "string", default: "300" },
    days: { type: "string", default: "300" },
    step: { type: "string", default: "0.02" },
    seed: { type: "string", default: "1" },
    /** Compare those whose figure is withheld instead: how far off would they be? */
    withheld: { type: "boolean", default: false },
  },
});
const days = Number(values.days);
const step = Number(values.step);
const plans = fc.sample(slopePlan, { seed: Number(values.seed), numRuns: Number(values.plans) });
const outcomes = plans.map(outcomeOf);
report();

interface Outcome {
  plan: Plan;
  /** Null when a day does not end by itself: then no slope is printed. */
  compared: Comparison[] | null;
}

function outcomeOf(plan: Plan, number: number): Outcome {
  if ((number + 1) % 25 === 0) process.stderr.write(`plan ${number + 1} of ${plans.length}\n`);
  const slopes = slopesToCompare(plan, values.withheld);
  const first = compare(plan, `slopes ${number}`, slopes, days, step);
  if (values.withheld || first === null) return { plan, compared: first };
  return { plan, compared: first.map((each) => (isSuspect(each) ? lookAgain(plan, number, each) : each)) };
}

function isSuspect({ t, wrongSign }: Comparison): boolean {
  return t > LIMIT || wrongSign;
}

/**
 * What differs gets a second look with a quarter of the step and four times the days, on other random numbers: a step that
 * crosses a kink then says less, while a jump is found as surely as before (its error goes with 1 / sqrt(step x days)).
 */
function lookAgain(plan: Plan, number: number, first: Comparison): Comparison {
  tell("first look", number, first);
  const second = compare(plan, `slopes ${number} again`, [first.slope], 4 * days, step / 4)?.[0] ?? first;
  tell("second look", number, second);
  return second;
}

function tell(look: string, plan: number, { slope, found, difference, t, gapError }: Comparison): void {
  const name = [slope.parameter, slope.stage, slope.detail].filter((part) => part !== "").join(", ");
  const figures = `slope ${found.toPrecision(5)}, difference ${difference.toPrecision(5)}, t ${t.toFixed(1)} (se ${gapError.toPrecision(2)})`;
  process.stderr.write(`${look}, plan ${plan}: ${name}: ${figures}\n`);
}

function report(): void {
  const all = outcomes.flatMap(({ compared }) => compared ?? []);
  const off = all.filter(({ t }) => t > LIMIT);
  const shown = all.filter(({ isShown }) => isShown);
  const wrong = all.filter(({ wrongSign }) => wrongSign);
  const relative = shown.map(({ gapError, difference }) => gapError / Math.abs(difference)).sort((a, b) => a - b);
  const median = relative[Math.floor(relative.length / 2)] ?? Number.NaN;
  print([
    ["plans", plans.length],
    ["of them with a slope compared", outcomes.filter(({ compared }) => (compared?.length ?? 0) > 0).length],
    ["of them left out: a day does not end by itself", outcomes.filter(({ compared }) => compared === null).length],
    ["slopes compared", all.length],
    [`that differ by more than ${LIMIT} standard errors`, `${off.length} (${percent(off.length, all.length)})`],
    ["whose difference is shown (not 0)", shown.length],
    ["of them with the wrong sign", wrong.length],
    ["standard error of slope minus difference, part of the difference, median", percent(median, 1)],
  ]);
  print(byParameter(all));
  print(FEATURES.map(([name, has]) => [name, ...countsOf(has)]));
  print(reasonCounts());
}

function byParameter(all: readonly Comparison[]): Row[] {
  const parameters = [...new Set(all.map(({ slope }) => slope.parameter))];
  return parameters.map((parameter) => {
    const those = all.filter(({ slope }) => slope.parameter === parameter);
    const off = those.filter(({ t }) => t > LIMIT).length;
    return [parameter, those.length, off, those.filter(({ wrongSign }) => wrongSign).length];
  });
}

function countsOf(has: (plan: Plan) => boolean): [number, number] {
  const those = outcomes.filter(({ plan }) => has(plan));
  return [those.length, those.filter(({ compared }) => (compared?.length ?? 0) > 0).length];
}

/** How often each reason withholds a slope; names of stages and crews left out. */
function reasonCounts(): Row[] {
  const counts = new Map<string, number>();
  for (const { withheld } of plans.flatMap(slopesOf)) {
    if (withheld === null) continue;
    const kind = withheld
      .replace(
        /\b(s\d+( w\d)?|last|trim|unloading|crate (lift|washer)|restacking|c\d|crew of \S+|tank|maintenance)\b/g,
        "X",
      )
      .replace(/\b(jam|blade|power) \(X\)/, "X")
      .replace(/\(.* and .*\)/, "(X and X)");
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1]);
}

type Row = (string | number)[];

function print(rows: readonly Row[]): void {
  process.stdout.write(`${rows.map((row) => `| ${row.join(" | ")} |`).join("\n")}\n\n`);
}

function percent(part: number, whole: number): string {
  return `${((100 * part) / whole).toFixed(2)} %`;
}
