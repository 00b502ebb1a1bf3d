import { wrappedLines } from "../../../viz/index.ts";
import { inputKind } from "../../asked/plan/index.ts";
import { basePlan, readStudy } from "../../asked/study/index.ts";
import { responsesOf } from "../../day/observations/index.ts";
import { type StudyResults, stableJson } from "../../days/results/index.ts";
import {
  analyse,
  type DoubtQuestion,
  doubtQuestion,
  doubtWords,
  planStudy,
  type WorldCounts,
} from "../../questions/doubt/index.ts";
import { type InputFile, loadPlan, readInputFile, refused, refuseOtherKind } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { checkRunFolder, writeFolder } from "../runFolder.ts";
import { simulateStudy } from "../simulate.ts";
import { CAUTION, type Terminal } from "../terminal.ts";

export interface DoubtCommandOptions {
  worlds: number;
  days: number;
  seed?: string;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates a plan or a study in many worlds, and tells what is luck, what is not known, and which figure to measure. */
export async function doubtCommand(terminal: Terminal, path: string, options: DoubtCommandOptions): Promise<void> {
  const { out, overwrite = false, json = false } = options;
  const file = readInputFile(path, ceilingsOf(options));
  const question = asked(file, options);
  // Pictures are a heavy thing to load: only when asked for, and before the days, so that a bad folder costs no time.
  const viz = out === undefined ? null : await import("../../../viz/index.ts");
  if (out !== undefined) checkRunFolder(out, overwrite);
  terminal.say(question.name, "bold");
  const doubt = analyse(question, await simulate(terminal, question, path, options));
  const { verdict, words, next, tables } = doubtWords(doubt);
  for (const line of wrappedLines(verdict)) terminal.say(line, "bold");
  for (const line of words.flatMap((each) => wrappedLines(each, "  "))) terminal.say(line);
  for (const table of tables) for (const line of ["", ...table]) terminal.say(line);
  for (const line of ["", ...next.flatMap((each) => wrappedLines(each))]) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  const text = stableJson({ ...doubt, words: { verdict, words, next } });
  if (out !== undefined) {
    const told = { doubt, words: { verdict, words, next } };
    const charts = viz!.doubtChartFiles(doubt).map(({ name, svg }) => ({ path: `charts/${name}.svg`, text: svg }));
    const report = { path: "report.html", text: viz!.renderDoubtReport(told) };
    await writeFolder(out, [report, { path: "doubt.json", text }, ...charts], overwrite);
    terminal.say(`Written: ${out}/report.html, charts, doubt.json.`, "green");
  }
  if (json) terminal.data(text);
}

/** A plan alone is asked about as a study of itself would. */
function asked(file: InputFile, { worlds, days, seed }: DoubtCommandOptions): DoubtQuestion {
  const isPlan = inputKind(file.json) === "plan";
  if (!isPlan) refuseOtherKind(file, "study");
  const written = isPlan ? planStudy(loadPlan(file), file.json) : file.json;
  const { study, faults } = readStudy(written, file.files, { knownResponses: responsesOf });
  if (study === null) throw refused(file.path, faults);
  const { json, files } = basePlan(written, file.files)!;
  const counts: WorldCounts = { worlds, days, seed: seed ?? study.seed };
  const source = { study, base: { json, files: files! }, studyFiles: file.files };
  const reading = doubtQuestion(source, counts);
  if (reading.question === null) throw refused(file.path, reading.faults);
  return reading.question;
}

function simulate(
  terminal: Terminal,
  { study, counts }: DoubtQuestion,
  path: string,
  options: DoubtCommandOptions,
): Promise<StudyResults> {
  const { worlds, days, seed } = counts;
  const words = ["doubt", path, "--worlds", String(worlds), "--days", String(days), "--seed", seed];
  return simulateStudy(terminal, study, { words, options, traces: "none" });
}
