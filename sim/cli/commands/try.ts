import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, relative, resolve, sep } from "node:path";
import { wrappedLines } from "../../../viz/index.ts";
import { formatFault, type Plan } from "../../asked/plan/index.ts";
import { readStudy, type Study } from "../../asked/study/index.ts";
import { responsesOf } from "../../day/observations/index.ts";
import { type StudyResults, stableJsonParts } from "../../days/results/index.ts";
import { daySource } from "../../days/run/index.ts";
import { questionFaults, readTries, type TryQuestion, tryFaultWords, tryStudyFile } from "../../questions/try/index.ts";
import { BadInput } from "../faults.ts";
import { type InputFile, loadPlan, readInputFile } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { alone, runInto } from "../runFolder.ts";
import { simulateStudy } from "../simulate.ts";
import { CAUTION, counted, type Terminal } from "../terminal.ts";
import { decided, simulatedOnce } from "./study.ts";

export interface TryCommandOptions {
  seed: string;
  days: number;
  decides?: string;
  matters: string[];
  also?: string[];
  reader: string;
  asStudy?: string;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** An option that changes the plan, or "or" between two tries, in the order of the command line. */
type Given = Parameters<typeof readTries>[2];

/** Tells what happens to a plan's day if it comes otherwise, or writes the study that asks so. */
export async function tryCommand(
  terminal: Terminal,
  path: string,
  given: Given,
  options: TryCommandOptions,
): Promise<void> {
  const file = readInputFile(path, ceilingsOf(options));
  const plan = loadPlan(file);
  const question = readQuestion(plan, file, given, options);
  const { study, written } = studyOf(file, plan, question);
  for (const note of notesOf(question.tries)) terminal.say(note, "dim");
  if (options.asStudy !== undefined) return writeStudy(terminal, options.asStudy, path, written);
  const run = () => simulate(terminal, study, { path, given, options });
  const results =
    options.out === undefined
      ? await run()
      : await runInto(options.out, options.overwrite ?? false, alone(options.out), async (write) => {
          const results = await run();
          await write({ results, plan: file.json, studyText: studyText({ ...written, plan: "plan.json" }) });
          return results;
        });
  for (const line of summary(results)) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  if (options.out !== undefined)
    terminal.say(`Written: ${options.out}/report.html, charts, tables and results.json`, "green");
  if (options.json) for (const part of stableJsonParts(results)) terminal.data(part);
}

/** What holds for every try is said once. */
function notesOf(tries: TryQuestion["tries"]): string[] {
  const [first, ...others] = tries;
  const forAll = (first?.notes ?? []).filter((note) => others.every(({ notes }) => notes.includes(note)));
  const own = tries.flatMap(({ name, notes }) =>
    notes.filter((note) => !forAll.includes(note)).map((note) => `${name}: ${note}`),
  );
  return [...forAll, ...own];
}

/** All that is wrong with what was asked is told at once. */
function readQuestion(plan: Plan, { json }: InputFile, given: Given, options: TryCommandOptions): TryQuestion {
  const { seed, days, decides, matters, also, reader } = options;
  const reading = readTries(plan, json, given);
  const faults = [...reading.faults, ...questionFaults(plan, options)];
  if (reading.tries === null || faults.length > 0) throw new BadInput(faults.map(formatFault));
  return { tries: reading.tries, seed, days, decides, matters, also, reader };
}

interface Asked {
  study: Study;
  /** As a study file beside the plan asks it. */
  written: Record<string, unknown>;
}

/** The way of every study file, so that the same question as a file gives the same days. */
function studyOf(file: InputFile, plan: Plan, question: TryQuestion): Asked {
  const written = tryStudyFile(plan, file.json, question);
  const { study, faults } = readStudy(written, file.files, { knownResponses: responsesOf });
  if (study === null) throw new BadInput(faults.map((fault) => tryFaultWords(fault, question)));
  return { study, written };
}

/** A file that is there is never replaced. */
function writeStudy(terminal: Terminal, target: string, planPath: string, written: Record<string, unknown>): void {
  if (existsSync(target))
    throw new BadInput([`${target}: this file is there already; name another one, or take it away first.`]);
  mkdirSync(dirname(resolve(target)), { recursive: true });
  const plan = relative(dirname(resolve(target)), resolve(planPath))
    .split(sep)
    .join("/");
  writeFileSync(target, studyText({ ...written, plan }), { flag: "wx" });
  terminal.say(`Written: ${target}. Run it with: gambrel study ${target}`, "green");
}

function studyText(written: Record<string, unknown>): string {
  return `${JSON.stringify(written, null, 2)}\n`;
}

interface Words {
  path: string;
  given: Given;
  options: TryCommandOptions;
}

async function simulate(terminal: Terminal, study: Study, { path, given, options }: Words): Promise<StudyResults> {
  const { sourceDigest } = await import("../../days/run/wire/index.ts");
  const { seed, days, decides, matters, also = [], reader } = options;
  const words = [
    ...["try", path, ...given.flatMap(({ option, text }) => [`--${option}`, ...(text === "" ? [] : [text])])],
    ...["--days", String(days), "--seed", seed, ...(decides === undefined ? [] : ["--decides", decides])],
    ...matters.flatMap((each) => ["--matters", each]),
    ...also.flatMap((each) => ["--also", each]),
    ...(reader === "planner" ? [] : ["--reader", reader]),
  ];
  const inputsSha256 = sourceDigest(daySource(study, "binned", false));
  return simulateStudy(terminal, study, { words, options, traces: "binned", inputsSha256 });
}

/** The verdict first. */
function summary(results: StudyResults): string[] {
  const { study, variants, plan } = results;
  const days =
    variants.length === 1
      ? `Nothing was tried: ${counted(study.replications, simulatedOnce(results))} of the plan as it is (seed "${study.seed}"). gambrel try --help shows what can be tried.`
      : `${counted(study.replications, simulatedOnce(results))} of the plan and of each try, compared on the same ${plan.week === undefined ? "days" : "weeks"} (seed "${study.seed}").`;
  const cut = variants
    .filter(({ values }) => values.unfinished?.some((value) => value === 1))
    .map(({ name }) => `"${name}"`);
  return [
    ...(results.decision == null ? [] : decided(results, results.decision)),
    ...wrappedLines(days),
    ...(cut.length === 0
      ? []
      : [
          `Not every ${plan.week === undefined ? "day" : "week"} ended by itself with ${cut.join(", ")}: the end of work there is a lower bound.`,
        ]),
  ];
}
