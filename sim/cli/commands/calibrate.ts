import { basename } from "node:path";
import process from "node:process";
import { setImmediate } from "node:timers/promises";
import { listWords, nearestWords, type Plan } from "../../asked/plan/index.ts";
import { type RunFile, stableJson } from "../../days/results/index.ts";
import {
  type Calibration,
  type CalibrationVerdict,
  type ComparedQuantity,
  calibrate,
  calibrationVerdict,
  countingStages,
  type Explanation,
  type NarrowedUncertain,
  type NoticeableFigure,
  narrowUncertain,
  type Observed,
  readObserved,
  usualCountingStage,
} from "../../questions/calibrate/index.ts";
import {
  formatDuration,
  formatNumber,
  formatRange,
  formatResponse,
  formatSpan,
  textTable,
} from "../../text/units/index.ts";
import { BadInput } from "../faults.ts";
import { type InputFile, loadPlan, readInputFile, readNamedText, refused } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { checkRunFolder, writeFolder } from "../runFolder.ts";
import { CAUTION, counted, type Line, plainLine, type Style, type Terminal, untilInterrupted } from "../terminal.ts";

const HEADER = ["", "observed", "simulated", "observed less simulated", "", "would be found from"];

type Figure = Pick<Explanation, "kind" | "from">;

/** What `--json` prints and results.json holds. */
export interface CalibrationResults extends Calibration, CalibrationVerdict {
  plan: string;
  observedFile: string;
  seed: string;
  passedOver: string[];
  /** The plan's uncertain figures, narrowed by the observed days; absent where that was not asked. */
  narrowed?: NarrowedUncertain;
}

export interface CalibrateCommandOptions {
  at?: string;
  uncertain?: boolean;
  days: number;
  seed: string;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

const CONFIDENCE = 0.95;

const STYLES: Record<CalibrationVerdict["answer"], Style> = {
  ...{ yes: "green", "too small": "green", no: "yellow", undecided: "yellow", told: "plain" },
};

/** Compares a plan with observed days; writes a folder only when one is named. */
export async function calibrateCommand(
  terminal: Terminal,
  planPath: string,
  observedPath: string,
  options: CalibrateCommandOptions,
): Promise<void> {
  const { out, overwrite = false, json, seed } = options;
  const ceilings = ceilingsOf(options);
  const file = readInputFile(planPath, ceilings);
  const plan = loadPlan(file);
  refuseKnownPlan(plan, options);
  const observed = readDays(observedPath, plan, ceilings.megabytes);
  const countedAt = stageOf(plan, options.at);
  // Pictures are a heavy thing to load: only when asked for, and before the days, so that a bad folder costs no time.
  const viz = out === undefined ? null : await import("../../../viz/index.ts");
  if (out !== undefined) checkRunFolder(out, overwrite);
  const found = await simulate(terminal, plan, observed, { ...options, countedAt, mostEvents: ceilings.events });
  const narrowed = await narrow(
    terminal,
    { plan, file, observed },
    { ...options, countedAt, mostEvents: ceilings.events },
  );
  const results: CalibrationResults = {
    ...found,
    ...(narrowed === null ? {} : { narrowed }),
    ...calibrationVerdict(found),
    plan: plan.name,
    observedFile: basename(observedPath),
    seed,
    passedOver: observed.passedOver,
  };
  for (const { line, style } of calibrationSummary(results)) terminal.say(line, style);
  if (narrowed !== null) for (const line of narrowedLines(narrowed, observed.lines.length)) terminal.say(line);
  else if (options.uncertain)
    terminal.say("The uncertain figures are left as they are: nothing that was observed has a value in every world.");
  terminal.say(CAUTION, "dim");
  if (out !== undefined) await writeFolder(out, folderFiles(results, viz!), overwrite);
  terminal.say(
    out === undefined
      ? "Add --out FOLDER for a report, the picture and results."
      : `Written: ${out}/report.html, charts, results.json.`,
  );
  if (json) terminal.data(stableJson(results));
  else if (narrowed !== null) terminal.data(`${JSON.stringify({ uncertain: narrowed.uncertain }, null, 2)}\n`);
}

/** Worlds in which the observed days are sought. */
const WORLDS = 60;

function refuseKnownPlan(plan: Plan, { uncertain = false }: CalibrateCommandOptions): void {
  if (!uncertain || (plan.uncertain ?? []).length > 0) return;
  throw new BadInput(['--uncertain: the plan says of no figure that it is uncertain; write "uncertain" into it first']);
}

interface Observation {
  plan: Plan;
  file: InputFile;
  observed: Observed;
}

function narrow(
  terminal: Terminal,
  { plan, file, observed }: Observation,
  { uncertain, seed, countedAt, mostEvents }: CalibrateCommandOptions & { countedAt: string; mostEvents: number },
): Promise<NarrowedUncertain | null> {
  if (!uncertain) return Promise.resolve(null);
  return simulating(terminal, (beforeDay, progress) =>
    narrowUncertain(plan, { json: file.json, files: file.files }, observed, {
      ...{ worlds: WORLDS, seed, countedAt, mostEvents, beforeDay, progress },
    }),
  );
}

/** Each figure with what the observed days leave of its range, as a multiple of what the plan says. */
function narrowedLines({ figures }: NarrowedUncertain, days: number): string[] {
  const rows = figures.map(({ name, low, high, left, narrowed }) => [
    name,
    narrowed ? `${formatNumber(low, 3)} to ${formatNumber(high, 3)} times` : "as before",
    narrowed ? `${Math.round(100 * left)} % of its range left` : "",
  ]);
  const told = figures.some(({ narrowed }) => narrowed);
  return [
    `What ${dayCount(days, "observed")} say of the uncertain figures, if the plan is right in all else:`,
    ...textTable(rows),
    told
      ? 'Put the "uncertain" printed here in place of the plan\'s; figures that the days tie together stand in one entry.'
      : "The observed days tell nothing of them.",
  ];
}

function folderFiles(
  results: CalibrationResults,
  {
    observedChart,
    observedView,
    renderCalibrationReport,
    serverDocument,
    svgText,
  }: typeof import("../../../viz/index.ts"),
): RunFile[] {
  const svg = observedChart(observedView(results), {
    document: serverDocument(),
    theme: "light",
    idPrefix: "observed",
  });
  return [
    { path: "results.json", text: stableJson(results) },
    { path: "report.html", text: renderCalibrationReport(results) },
    { path: "charts/observed.svg", text: `${svgText(svg)}\n` },
  ];
}

function readDays(path: string, plan: Plan, megabytes: number): Observed {
  const { observed, faults } = readObserved(readNamedText(path, megabytes), plan);
  if (observed === null) throw refused(path, faults);
  return observed;
}

function stageOf(plan: Plan, at: string | undefined): string {
  if (at === undefined) return usualCountingStage(plan);
  const names = countingStages(plan);
  if (names.includes(at)) return at;
  const remedy = nearestWords(at, names, "write one of these");
  throw new BadInput([`--at: the plan has no stage '${at}'; allowed: ${listWords(names)}; ${remedy}`]);
}

async function simulate(
  terminal: Terminal,
  plan: Plan,
  observed: Observed,
  options: CalibrateCommandOptions & { countedAt: string; mostEvents: number },
): Promise<Calibration> {
  const { seed, days, countedAt, mostEvents } = options;
  if (!terminal.live) terminal.say("Simulating; a large plant takes a few minutes.");
  return simulating(terminal, (beforeDay, progress) =>
    calibrate(plan, observed, { seed, days, countedAt, mostEvents, confidence: CONFIDENCE, beforeDay, progress }),
  );
}

/** Until it is done or a signal stops it; what is being done stands on the terminal's last line. */
async function simulating<Result>(
  terminal: Terminal,
  work: (beforeDay: () => Promise<void>, progress: (words: string) => void) => Promise<Result>,
): Promise<Result> {
  try {
    return await untilInterrupted(process, (signal) =>
      work(
        async () => {
          await setImmediate();
          signal.throwIfAborted();
        },
        (words) => terminal.live && terminal.rewrite(words),
      ),
    );
  } finally {
    if (terminal.live) terminal.rewrite("");
  }
}

/** A calibration as lines of text: the answer, what was compared, and what would explain a gap or could have hidden. */
function calibrationSummary(calibration: CalibrationResults): Line[] {
  const { plan, observedDays, days, quantities, countedAt, passedOver } = calibration;
  const counts = quantities.some(({ stretch }) => stretch !== null)
    ? ` Heads are counted at the end of ${countedAt}.`
    : "";
  const rows = quantities.map((quantity) => rowOf(quantity, calibration.startClockSeconds));
  return [
    { line: plan, style: "bold" },
    { line: calibration.verdict, style: STYLES[calibration.answer] },
    ...calibration.next.map(plainLine),
    plainLine(""),
    plainLine(`${dayCount(observedDays, "observed")} compared with ${dayCount(days, "simulated")}.${counts}`),
    ...textTable([HEADER, ...rows]).map(plainLine),
    ...notes(calibration).map(plainLine),
    ...(passedOver.length > 0
      ? [plainLine(`Not compared, as there is nothing to compare: ${passedOver.join(", ")}.`)]
      : []),
    ...(calibration.gap ? explanationLines(calibration) : noticeableLines(calibration)),
  ];
}

function dayCount(count: number, kind: string): string {
  return counted(count, `${kind} day`);
}

function rowOf({ info, comparison }: ComparedQuantity, startClock: number): string[] {
  if (comparison === null) return [info.label, "-", "-", "no value on the plan's days", "", "-"];
  const { observed, simulated, difference, low, high, shown } = comparison;
  const signed = (value: number) => formatSpan(value, info);
  return [
    info.label,
    formatResponse(observed.mean, info, startClock),
    formatResponse(simulated.mean, info, startClock),
    `${signed(difference)} (${formatRange(signed(low), signed(high))})`,
    shown ? "differs" : "none found",
    sizeWords(comparison.noticeable, info),
  ];
}

function sizeWords(noticeable: number, info: ComparedQuantity["info"]): string {
  return noticeable === 0 ? "any difference" : formatSpan(Number(noticeable.toPrecision(2)), info, "plain");
}

function notes({ confidence, quantities, observedDays }: Calibration): string[] {
  const risk = formatNumber(100 * (1 - confidence));
  return [
    "Last column: a true difference of that size or more would have been found in four of five cases.",
    `All ${quantities.length} ranges hold together at ${formatNumber(100 * confidence)} %: of 100 right plans ${risk} at most would seem to differ anywhere (Bonferroni).`,
    ...(observedDays === 1
      ? ["There is only one observed day, so the spread of the simulated days is used for it."]
      : []),
  ];
}

function explanationLines({ explanations }: Calibration): Line[] {
  if (explanations.length === 0) {
    const line = "No single figure of the plan (cycle time, uptime, repair time, people) explains a tenth of the gap.";
    return [{ line, style: "yellow" }];
  }
  return [
    plainLine("What would explain it, one figure changed at a time and simulated on the same days:"),
    ...explanations.map((explanation): Line => ({ line: explanationWords(explanation), style: styleOf(explanation) })),
    plainLine("A figure that would explain the gap need not be its cause: measure it before you change the plan."),
  ];
}

function styleOf({ closes, plausible }: Explanation): Style {
  return closes && plausible ? "green" : "plain";
}

/** "mean cycle time of evisceration, 16.8 s in the plan: 18.5 s (10 % longer) would explain 97 % of the gap; no difference is left. Plausible." */
export function explanationWords(explanation: Explanation): string {
  const { label, from, to, removed, left, doubt } = explanation;
  const rest = left.length === 0 ? "no difference is left" : `these still differ: ${left.join(", ")}`;
  const judged = doubt === "" ? "Plausible." : `Hard to believe: ${doubt}.`;
  return `${label}, ${amountWords(explanation, from)} in the plan: ${amountWords(explanation, to)}${changeOf(explanation, to)} would explain ${Math.floor(100 * removed)} % of the gap; ${rest}. ${judged}`;
}

function amountWords({ kind }: Figure, amount: number): string {
  return kind === "people" ? String(amount) : formatDuration(amount);
}

/** " (35 % longer)"; nothing for people, whose numbers say it. */
function changeOf({ kind, from }: Figure, to: number): string {
  if (kind === "people") return "";
  const percent = 100 * Math.abs(to / from - 1);
  return ` (${formatNumber(percent, 2)} % ${to > from ? "longer" : "shorter"})`;
}

function noticeableLines({ noticeable, observedDays }: Calibration): Line[] {
  const figures = noticeable ?? [];
  const found = figures.filter(({ to }) => to !== null);
  const hidden = figures.filter(({ to }) => to === null);
  const days = dayCount(observedDays, "observed");
  return [
    ...(found.length > 0
      ? [plainLine(`With ${days}, each of these alone would have been found in roughly four of five cases:`)]
      : []),
    ...found.map((figure) => plainLine(noticeableWords(figure))),
    ...(hidden.length > 0
      ? [plainLine(`With ${days}, these could be far worse than in the plan and mostly stay unnoticed:`)]
      : []),
    ...hidden.map((figure) =>
      plainLine(
        `${figure.label}, ${amountWords(figure, figure.from)} in the plan: not even ${amountWords(figure, figure.limit)}.`,
      ),
    ),
    ...(figures.length > 0
      ? [plainLine("To notice smaller changes, observe more days, or time these figures themselves.")]
      : []),
  ];
}

/** "mean repair time of "jam" at skinning, 1 min 5 s in the plan: 1 min 28 s or longer (35 % longer)." */
export function noticeableWords(figure: NoticeableFigure): string {
  const { kind, label, from, to } = figure;
  const more = kind === "people" ? "or fewer" : to! > from ? "or longer" : "or shorter";
  return `${label}, ${amountWords(figure, from)} in the plan: ${amountWords(figure, to!)} ${more}${changeOf(figure, to!)}.`;
}
