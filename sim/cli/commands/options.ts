import { offersTable } from "../../../viz/index.ts";
import { basePlan, type Study } from "../../asked/study/index.ts";
import { type Difference, type ResponseInfo, type StudyResults, stableJson } from "../../days/results/index.ts";
import type { TraceKind } from "../../days/run/index.ts";
import { doubtQuestion } from "../../questions/doubt/index.ts";
import {
  compareOffers,
  type OptionsQuestion,
  type OptionsResult,
  offersInWorlds,
  type Ranged,
  readOptions,
} from "../../questions/options/index.ts";
import {
  formatConfidence,
  formatDifference,
  formatNumber,
  formatShare,
  groupDigits,
  textTable,
} from "../../text/units/index.ts";
import { answerLines } from "../answerLines.ts";
import { BadInput } from "../faults.ts";
import { type InputFile, readInputFile, refused, refuseOtherKind } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { alone, runInto } from "../runFolder.ts";
import { simulateStudy } from "../simulate.ts";
import type { Line } from "../terminal.ts";
import { CAUTION, counted, plainLine, type Terminal } from "../terminal.ts";

/** A payback beyond a lifetime is none that a bank would read. */
const LONGEST = 100;

export interface OptionsCommandOptions {
  seed?: string;
  replications?: number;
  worlds?: number;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates the plan as it is and with each option, and tells what each is worth. */
export async function optionsCommand(terminal: Terminal, path: string, options: OptionsCommandOptions): Promise<void> {
  const { out, overwrite = false, json = false } = options;
  const file = readInputFile(path, ceilingsOf(options));
  const question = asked(file, options);
  const worlds = worldsAsked(file, question, options);
  const run = async (traces: TraceKind): Promise<Answered> => {
    const results = await simulate(terminal, question.study, { path, options, traces });
    const found = compareOffers(question, results);
    if (worlds === null) return { results, found };
    const words = ["options", path, "--worlds", String(worlds.counts.worlds), "--seed", question.study.seed];
    const simulated = await simulateStudy(terminal, worlds.study, { words, options, traces: "none" });
    const inWorlds = offersInWorlds(
      question,
      worlds,
      simulated,
      found.options.map(({ harm }) => harm),
    );
    return { results, found: { ...found, inWorlds, words: [...found.words, ...inWorlds.words] } };
  };
  const { results, found } = out === undefined ? await run("none") : await written(file, { out, overwrite, run });
  const decisions = offersTable(found, results.decision, results.variants[0]!.day.startClockSeconds);
  const lines = [...answerLines({ ...found, words: [] }, decisions), ...optionsSummary(found, results)];
  for (const { line, style } of lines) terminal.say(line, style);
  const uncertain = question.study.variants[0]!.plan.uncertain?.length ?? 0;
  if (worlds === null && uncertain > 0)
    terminal.say(
      `${counted(uncertain, "figure")} of the plan may be something else: --worlds 40 tells how each option fares then.`,
    );
  terminal.say(CAUTION, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html, line-up.json and more.`, "green");
  if (json) terminal.data(stableJson({ lineUp: found, simulated: results }));
}

function asked(file: InputFile, options: OptionsCommandOptions): OptionsQuestion {
  refuseOtherKind(file, "options");
  const { question, faults } = readOptions(file.json, file.files);
  if (question === null) throw refused(file.path, faults);
  const { seed = question.study.seed, replications = question.study.replications } = options;
  if (replications < 2) throw new BadInput(["--replications: one day has no interval; give 2 or more."]);
  return { ...question, study: { ...question.study, seed, replications } };
}

/** Days of each option in each world. */
const DAYS_OF_WORLD = 4;

/** Told before time is spent: a plan without uncertain figures has no worlds. */
function worldsAsked(file: InputFile, { study }: OptionsQuestion, { worlds }: OptionsCommandOptions) {
  if (worlds === undefined) return null;
  const { json, files } = basePlan(file.json, file.files)!;
  const source = { study, base: { json, files: files! }, studyFiles: file.files };
  const reading = doubtQuestion(source, { worlds, days: DAYS_OF_WORLD, seed: study.seed });
  if (reading.question === null) throw refused(file.path, reading.faults);
  return reading.question;
}

interface Answered {
  results: StudyResults;
  found: OptionsResult;
}

interface Written {
  out: string;
  overwrite: boolean;
  run: (traces: TraceKind) => Promise<Answered>;
}

/** The folder is that of a study of the options; what they are worth goes with it. */
function written(file: InputFile, { out, overwrite, run }: Written): Promise<Answered> {
  return runInto(out, overwrite, alone(out), async (write) => {
    const { results, found } = await run("binned");
    const more = [
      { path: "asked.json", text: file.text },
      { path: "line-up.json", text: stableJson(found) },
    ];
    await write({ results, plan: basePlan(file.json, file.files)!.json, more, answer: { offers: found } });
    return { results, found };
  });
}

function simulate(
  terminal: Terminal,
  study: Study,
  { path, options, traces }: { path: string; options: OptionsCommandOptions; traces: TraceKind },
): Promise<StudyResults> {
  terminal.say(study.name, "bold");
  if (study.question !== "") terminal.say(study.question);
  const words = ["options", path, "--seed", study.seed, "--replications", String(study.replications)];
  return simulateStudy(terminal, study, { words, options, traces });
}

/** A line-up as lines of text: what they rest on, a table in the order of the file, then a sentence for each option, the best first. */
function optionsSummary(found: OptionsResult, results: StudyResults): Line[] {
  const { interest, daysPerYear, confidence, cashWords, currency } = found;
  const percent = formatConfidence(confidence);
  const lines = [
    `${results.study.replications} days of each on the same random numbers, seed "${results.study.seed}"; intervals in brackets hold for all options at once (${percent}).`,
    `Interest ${formatShare(interest)} a year, ${daysPerYear} days a year, money in ${currency}. Cash of a day: ${cashWords}.`,
    "",
    ...table(found, results),
    "",
    ...found.words,
  ];
  return lines.map(plainLine);
}

function table({ options }: OptionsResult, results: StudyResults): string[] {
  const throughput = results.responses.find(({ key }) => key === "headsPerHour")!;
  return textTable([
    ["", "price", "cash a day", "net present value", "a year", "payback, years", "with interest", "throughput"],
    ...options.map(({ name, price, cashPerDay, worth }, index) => {
      const faster = results.variants[index + 1]!.differences?.headsPerHour;
      return [
        name,
        whole(price),
        ranged(
          {
            mean: cashPerDay.mean,
            low: cashPerDay.familyLow ?? cashPerDay.mean,
            high: cashPerDay.familyHigh ?? cashPerDay.mean,
          },
          whole,
        ),
        ranged(worth.presentValue, whole),
        whole(worth.perYear.mean),
        ranged(worth.paybackYears, years),
        ranged(worth.discountedPaybackYears, years),
        faster === undefined ? "-" : rangeOf(faster, throughput),
      ];
    }),
  ]);
}

/** The interval that holds for all options at once. */
function rangeOf({ mean, familyLow: low, familyHigh: high }: Difference, info: ResponseInfo): string {
  return formatDifference({ mean, low, high }, info)[1] || "-";
}

function ranged({ mean, low, high }: Ranged, show: (value: number) => string): string {
  return show(low) === show(high) ? show(mean) : `${show(mean)} (${show(low)} to ${show(high)})`;
}

function whole(value: number): string {
  return groupDigits(formatNumber(Math.round(value)));
}

function years(value: number): string {
  return value > LONGEST ? "never" : value.toFixed(1);
}
