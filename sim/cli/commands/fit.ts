import { basename } from "node:path";
import { DANGERS_IN_SHORT } from "../../../viz/report/cautions.ts";
import { type RunFile, stableJson } from "../../days/results/index.ts";
import { adjustedP } from "../../maths/statistics/index.ts";
import {
  type Check,
  type ColumnFit,
  type FamilyFit,
  type FitAnswer,
  fitAnswer,
  fitColumn,
  fitPicture,
  LOOK_ALPHA,
  type PlanFragment,
  planFragment,
  readTimes,
  STRONG_ALPHA,
  type Summary,
  uncertainEntries,
} from "../../questions/fit/index.ts";
import { formatNumber, textTable } from "../../text/units/index.ts";
import { readNamedText, refused } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { checkRunFolder, writeFolder } from "../runFolder.ts";
import { counted, type Line, plainLine, type Terminal } from "../terminal.ts";

const HEADER = ["family", "in the plan", "AIC", "above", "D", "p", "A2", "p"];

/** What `--json` prints and results.json holds. */
export interface FitResults {
  file: string;
  seed: string;
  samples: number;
  columns: ColumnFit[];
  answer: FitAnswer;
  passedOver: string[];
  fragment: PlanFragment;
}

export interface FitCommandOptions {
  unit?: string;
  by?: string;
  samples: number;
  seed: string;
  uncertain?: boolean;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Fits every column of a table of times; writes a folder only when one is named. */
export async function fitCommand(terminal: Terminal, path: string, options: FitCommandOptions): Promise<void> {
  const { seed, samples, out, overwrite = false, json } = options;
  const { columns, passedOver, faults } = readTimes(readNamedText(path, ceilingsOf(options).megabytes), {
    unit: options.unit ?? null,
    by: options.by ?? null,
  });
  if (columns === null) throw refused(path, faults);
  // Pictures are a heavy thing to load: only when asked for, and before the fits, so that a bad folder costs no time.
  const viz = out === undefined ? null : await import("../../../viz/index.ts");
  if (out !== undefined) checkRunFolder(out, overwrite);
  const fits = columns.map((column) => {
    const fit = fitColumn(column, { seed, samples, progress: (words) => terminal.live && terminal.rewrite(words) });
    if (terminal.live) terminal.rewrite("");
    return fit;
  });
  const answer = fitAnswer(fits);
  for (const line of answerWords(answer)) terminal.say(line.line, line.style);
  for (const { line, style } of fits.flatMap((fit) => [...fitSummary(fit), plainLine("")])) terminal.say(line, style);
  const results = { file: basename(path), seed, samples, columns: fits, answer, passedOver };
  const unsure = options.uncertain ? { uncertain: uncertainEntries(fits, results.file, seed) } : {};
  const whole: FitResults = { ...results, fragment: { ...planFragment(fits, results.file), ...unsure } };
  for (const words of manyTestsWords(fits)) terminal.say(words);
  if (passedOver.length > 0) terminal.say(`Left out, because they hold no times: ${passedOver.join(", ")}.`);
  if (out !== undefined) await writeFolder(out, folderFiles(whole, viz!), overwrite);
  terminal.say(DANGERS_IN_SHORT.join(" "), "yellow");
  terminal.say(ending(out), "dim");
  terminal.data(json ? stableJson(whole) : fragmentText(whole.fragment));
}

/** What to use, column by column. */
function answerWords({ verdict, columns, next }: FitAnswer): Line[] {
  const each = columns.length < 2 ? [] : columns.map((column) => plainLine(`  ${column.heading}: ${column.verdict}`));
  return [{ line: verdict, style: "bold" }, ...each, ...next.map(plainLine), plainLine("")];
}

function folderFiles(
  results: FitResults,
  { fitChartFiles, renderFitReport }: typeof import("../../../viz/index.ts"),
): RunFile[] {
  const pictures = results.columns.map((fit) => fitPicture(fit, results.seed));
  const charts = fitChartFiles(results.columns.map((fit, index) => ({ fit, picture: pictures[index]! })));
  return [
    { path: "results.json", text: stableJson(results) },
    { path: "report.html", text: renderFitReport({ ...results, pictures }) },
    { path: "fragment.json", text: fragmentText(results.fragment) },
    ...charts.map(({ name, svg }) => ({ path: `charts/${name}.svg`, text: svg })),
  ];
}

function fragmentText(fragment: PlanFragment): string {
  return `${JSON.stringify(fragment, null, 2)}\n`;
}

function ending(out: string | undefined): string {
  const words = "A fit is only as good as its times. Judge for yourself who was timed, when and at what.";
  const written =
    out === undefined
      ? "Add --out FOLDER for a report, pictures and results."
      : `Written: ${out}/report.html, charts, results.json, fragment.json.`;
  return `${words} ${written}`;
}

/** One column as lines of text: what was timed, what looks wrong, the fits by AIC, the advice. */
function fitSummary(fit: ColumnFit): Line[] {
  const of = (...verdicts: Check["verdict"][]) => fit.checks.filter(({ verdict }) => verdicts.includes(verdict));
  const lines: Line[] = [{ line: headingOf(fit), style: "bold" }];
  if (fit.summary !== null) lines.push(plainLine(summaryWords(fit.summary, fit.unit, fit.ended.length)));
  lines.push(
    ...of("strong").map(({ name, words }): Line => ({ line: `Strong finding, ${name}: ${words}`, style: "yellow" })),
  );
  lines.push(
    ...of("look").map(({ name, words }): Line => ({ line: `Worth a look, ${name}: ${words}`, style: "yellow" })),
  );
  const fine = of("fine").map(({ name }) => name);
  if (fine.length > 0) lines.push(plainLine(`Nothing found in: ${fine.join(", ")}.`));
  if (fit.open.length > 0) {
    lines.push(...of("not checked").map(({ name, words }) => plainLine(`Not checked, ${name}: ${words}`)));
  }
  if (fit.fits.length > 0)
    lines.push(...textTable([HEADER, ...fit.fits.map((each) => rowOf(each, fit.unit))]).map(plainLine));
  for (const { family, objection } of fit.fits) if (objection !== "") lines.push(plainLine(`${family}: ${objection}.`));
  for (const { family, reason } of fit.notFitted) lines.push(plainLine(`${family} was not fitted: ${reason}.`));
  const first = of("strong", "look").length > 0 ? " (look at the findings first)" : "";
  return [...lines, { line: `Advice${first}: ${fit.advice.words}`, style: "green" }];
}

/**
 * How many tests all columns together took, how many findings chance alone would make, and which findings stand when all
 * of them are allowed for (Holm 1979). None where nothing was tested.
 */
function manyTestsWords(fits: readonly ColumnFit[]): string[] {
  const tests = fits.flatMap(({ heading, checks }) =>
    checks.flatMap(({ name, p }) => (p === null ? [] : [{ what: `${name} of ${heading}`, p }])),
  );
  if (tests.length === 0) return [];
  const holm = adjustedP(tests.map(({ p }) => p)).holm;
  const sure = tests.filter((_, i) => holm[i]! < LOOK_ALPHA).map(({ what }) => what);
  const expected = (alpha: number) => formatNumber(alpha * tests.length, 2);
  const made = `${counted(tests.length, "test was", "tests were")} made. With faultless times, chance alone gives about ${expected(LOOK_ALPHA)} findings, ${expected(STRONG_ALPHA)} of them strong.`;
  if (tests.every(({ p }) => p >= LOOK_ALPHA)) return [made];
  if (sure.length === 0) return [made, "Each finding of a test may be chance: check it, but do not rely on it alone."];
  return [made, `Sure even though ${tests.length} tests were made: ${sure.join("; ")}.`];
}

function headingOf({ heading, ended, open, zeros }: ColumnFit): string {
  const more = [open.length > 0 ? `${open.length} still open` : "", zeros > 0 ? `${zeros} of 0` : ""];
  return [`${heading}: ${counted(ended.length, "time")}`, ...more.filter((words) => words !== "")].join(", ");
}

function summaryWords(summary: Summary, unit: string, count: number): string {
  const { mean, sd, cv, min, median, max, meanLow, meanHigh, needed } = summary;
  const spread = `median ${formatNumber(median)}, ${formatNumber(min)} to ${formatNumber(max)} ${unit}`;
  if (sd === null || meanLow === null || meanHigh === null) return `One time, ${formatNumber(mean)} ${unit}.`;
  const interval = `${formatNumber(meanLow)} to ${formatNumber(meanHigh)} ${unit} at 95 %`;
  const more = needed! > count ? `${needed} times would tell it` : "enough to tell it";
  return `Mean ${formatNumber(mean)} ${unit} (${interval}; ${more} within 5 %), sd ${formatNumber(sd)}, cv ${formatNumber(cv!, 2)}, ${spread}.`;
}

function rowOf({ family, inPlan, aic, behind, test }: FamilyFit, unit: string): string[] {
  const tests =
    test === null
      ? ["-", "-", "-", "-"]
      : [test.kolmogorov, test.andersonDarling].flatMap(({ statistic, p }) => [statistic.toFixed(3), pText(p)]);
  return [family, parametersOf(inPlan, unit), aic.toFixed(2), behind.toFixed(2), ...tests];
}

function pText(p: number): string {
  return p < 0.01 ? p.toFixed(3) : p.toFixed(2);
}

/** "mean 7.15 s, cv 0.24" from what the plan will hold. */
function parametersOf(inPlan: unknown, unit: string): string {
  const [parameters] = Object.values(inPlan as Record<string, Record<string, string | number>>);
  return Object.entries(parameters!)
    .map(([name, value]) => `${name} ${shortened(value, unit)}`)
    .join(", ");
}

function shortened(value: string | number, unit: string): string {
  if (typeof value === "number") return formatNumber(value);
  return `${formatNumber(Number(value.slice(0, -unit.length)), 4)} ${unit}`;
}
