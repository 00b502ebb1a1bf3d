import { wrappedLines } from "../../../viz/index.ts";
import { inputKind } from "../../asked/plan/index.ts";
import { basePlan, type Precision, readStudy, type Study } from "../../asked/study/index.ts";
import { responsesOf } from "../../day/observations/index.ts";
import { stableJson } from "../../days/results/index.ts";
import { type DayJournal, daySource } from "../../days/run/index.ts";
import {
  type Doubt,
  type DoubtQuestion,
  doubtInRounds,
  doubtQuestion,
  doubtWords,
  planStudy,
  type WorldCounts,
} from "../../questions/doubt/index.ts";
import { BadInput } from "../faults.ts";
import { type InputFile, loadPlan, readInputFile, refused, refuseOtherKind } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { checkRunFolder, openSearchJournal, writeFolder } from "../runFolder.ts";
import { keepingDays, resumeLine, simulateStudy } from "../simulate.ts";
import { CAUTION, type Terminal } from "../terminal.ts";

export interface DoubtCommandOptions {
  worlds: number;
  days: number;
  within?: string;
  seed?: string;
  threads?: number;
  queue?: string;
  out?: string;
  overwrite?: boolean;
  resume?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates a plan or a study in many worlds, and tells what is luck, what is not known, and which figure to measure. */
export async function doubtCommand(terminal: Terminal, path: string, options: DoubtCommandOptions): Promise<void> {
  const { out, json = false, resume = false } = options;
  if (out === undefined && resume)
    throw new BadInput(["--resume: worlds without a folder are not kept; add --out and the folder of the run."]);
  const file = readInputFile(path, ceilingsOf(options));
  const asking = asked(file, options);
  const doubt = out === undefined ? await answered(terminal, asking) : await written(terminal, asking, out);
  const words = doubtWords(doubt);
  for (const line of wrappedLines(words.verdict)) terminal.say(line, "bold");
  for (const line of words.words.flatMap((each) => wrappedLines(each, "  "))) terminal.say(line);
  for (const table of words.tables) for (const line of ["", ...table]) terminal.say(line);
  for (const line of ["", ...words.next.flatMap((each) => wrappedLines(each))]) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html, charts, doubt.json.`, "green");
  if (json) terminal.data(doubtText(doubt));
}

/** A question that was read, and how further worlds of it are. */
interface Asking {
  file: InputFile;
  options: DoubtCommandOptions;
  first: DoubtQuestion;
  wanted: Precision | null;
  questionOf(counts: WorldCounts): DoubtQuestion;
}

/** A plan alone is asked about as a study of itself would. */
function asked(file: InputFile, options: DoubtCommandOptions): Asking {
  const isPlan = inputKind(file.json) === "plan";
  if (!isPlan) refuseOtherKind(file, "study");
  const written = isPlan ? planStudy(loadPlan(file), file.json) : (file.json as Record<string, unknown>);
  const { study, faults } = readStudy(written, file.files, { knownResponses: responsesOf });
  if (study === null) throw refused(file.path, faults);
  const { json, files } = basePlan(written, file.files)!;
  const source = { study, base: { json, files: files! }, studyFiles: file.files };
  const questionOf = (counts: WorldCounts): DoubtQuestion => {
    const reading = doubtQuestion(source, counts);
    if (reading.question === null) throw refused(file.path, reading.faults);
    return reading.question;
  };
  const { worlds, days, seed = study.seed, within } = options;
  const first = questionOf({ worlds, days, seed });
  const wanted = within === undefined ? null : precisionOf(within, first, file);
  return { file, options, first, wanted, questionOf };
}

/** As a study's own rule would say it: "2 min", "1 %" of the mean, or a number in the response's own unit. */
function precisionOf(within: string, { responses }: DoubtQuestion, file: InputFile): Precision {
  const halfWidth = within.trim() !== "" && Number.isFinite(Number(within)) ? Number(within) : within;
  const plan = inputKind(file.json) === "plan" ? file.json : (file.json as Record<string, unknown>).plan;
  const until = { response: responses[0]!, halfWidth };
  const { study, faults } = readStudy({ name: "within", plan, replications: { until } }, file.files, {
    knownResponses: responsesOf,
  });
  if (study === null)
    throw refused(
      file.path,
      faults.map((fault) => ({ ...fault, path: "--within" })),
    );
  return study.procedure.stopping!.halfWidth;
}

type JournalOf = (study: Study) => DayJournal;

function answered(
  terminal: Terminal,
  { first, wanted, questionOf, ...run }: Asking,
  journalOf?: JournalOf,
): Promise<Doubt> {
  const words = ["doubt", run.file.path, ...countWords(first.counts, run.options), "--seed", first.counts.seed];
  terminal.say(first.name, "bold");
  return doubtInRounds({
    ...{ counts: first.counts, wanted },
    questionOf: (counts) => (counts === first.counts ? first : questionOf(counts)),
    simulate: ({ study }) =>
      simulateStudy(terminal, study, { words, options: run.options, traces: "none", journal: journalOf?.(study) }),
  });
}

function countWords({ worlds, days }: WorldCounts, { within }: DoubtCommandOptions): string[] {
  return ["--worlds", String(worlds), "--days", String(days), ...(within === undefined ? [] : ["--within", within])];
}

/** What was simulated outlives a stop, a failure, a kill, and is taken up by --resume. */
async function written(terminal: Terminal, asking: Asking, out: string): Promise<Doubt> {
  const { file, options, first, wanted } = asking;
  const { overwrite = false } = options;
  // Pictures are a heavy thing to load: only when asked for, and before the days, so that a bad folder costs no time.
  const viz = await import("../../../viz/index.ts");
  checkRunFolder(out, overwrite);
  const { study, counts, figures } = first;
  const words = { ofAll: "", goOn: resumeLine("doubt", file.path, options, countWords(counts, options)) };
  const open = () =>
    openSearchJournal(out, { plans: study.variants.map(({ plan }) => plan), counts, figures, wanted }, options);
  const doubt = await keepingDays(
    terminal,
    open,
    words,
  )((journal) => answered(terminal, asking, (each) => journal.of(daySource(each, "none", false))));
  const charts = viz.doubtChartFiles(doubt).map(({ name, svg }) => ({ path: `charts/${name}.svg`, text: svg }));
  const report = { path: "report.html", text: viz.renderDoubtReport({ doubt, words: doubtWords(doubt) }) };
  await writeFolder(out, [report, { path: "doubt.json", text: doubtText(doubt) }, ...charts], overwrite);
  return doubt;
}

function doubtText(doubt: Doubt): string {
  const { verdict, words, next } = doubtWords(doubt);
  return stableJson({ ...doubt, words: { verdict, words, next } });
}
