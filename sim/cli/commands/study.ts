import { join } from "node:path";
import type { Study } from "../../asked/study/index.ts";
import { type StudyResults, safeFileName, stableJsonParts } from "../../days/results/index.ts";
import { type DayJournal, daySource, type TraceKind } from "../../days/run/index.ts";
import { BadInput } from "../badInput.ts";
import { ceilingsOf, ceilingWords } from "../ceilings.ts";
import { checkRunFolder, takeRunFolder } from "../checkRunFolder.ts";
import { chooseRunner } from "../chooseRunner.ts";
import { commandLine } from "../commandLine.ts";
import { readInputFile } from "../inputFile.ts";
import { keepingDays } from "../keepingDays.ts";
import { loadStudy } from "../loadStudy.ts";
import { MOST_TRACED } from "../mostTraced.ts";
import { openRunJournal } from "../openRunJournal.ts";
import { programVersion } from "../programVersion.ts";
import { resumeLine } from "../resumeLine.ts";
import { simulateStudy } from "../simulateStudy.ts";
import type { StudyCommandOptions } from "../studyOptions.ts";
import { studySummary } from "../studySummary.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION } from "../terminal.ts";

/** Runs a study; writes its folder unless only data on standard output is wanted. */
export async function studyCommand(terminal: Terminal, path: string, options: StudyCommandOptions): Promise<void> {
  const results = await runStudyFile(terminal, path, options);
  if (options.json) for (const part of stableJsonParts(results)) terminal.data(part);
}

/** The whole way from a study file to its folder and the words on the terminal. */
export async function runStudyFile(
  terminal: Terminal,
  path: string,
  options: StudyCommandOptions,
): Promise<StudyResults> {
  const file = readInputFile(path, ceilingsOf(options));
  const { study: asRead, basePlan } = loadStudy(file);
  const study = changed(asRead, options);
  refuseTooManyDays(study, ceilingsOf(options).days);
  const folder = options.out ?? (options.json ? null : join("runs", safeFileName(study.name)));
  if (folder === null && options.resume) {
    throw new BadInput(["--resume: with --json alone no run is kept; add --out and the folder of the run."]);
  }
  const simulate = simulation(terminal, path, study, options);
  const results =
    folder === null
      ? await simulate()
      : await runInto(terminal, folder, { path, study, options, basePlan, studyText: file.text, simulate });
  for (const line of studySummary(results)) terminal.say(line);
  terminal.say(CAUTION, "dim");
  if (folder !== null)
    terminal.say(`Written: ${join(folder, "report.html")}, charts, tables and results.json`, "green");
  return results;
}

/** Of a study whose rules decide on its days, the first round is known. */
function refuseTooManyDays({ variants, replications, procedure }: Study, most: number): void {
  const each = procedure.stopping?.atLeast ?? procedure.selection?.firstStage ?? replications;
  const asked = variants.length * each;
  if (asked <= most) return;
  const words = `${variants.length} variants of ${each} days are ${asked} days; allowed: ${most}`;
  throw new BadInput([
    `${words}; ask for fewer replications or variants, or raise the ceiling: --ceiling days=${asked}`,
  ]);
}

type Simulate = (journal?: DayJournal) => Promise<StudyResults>;

function simulation(terminal: Terminal, path: string, study: Study, options: StudyCommandOptions): Simulate {
  const gambrel = programVersion();
  const { events: mostEvents, days: mostDays } = ceilingsOf(options);
  return async (journal) => {
    const { sourceDigest } = await import("../../days/run/wire/index.ts");
    terminal.say(study.name, "bold");
    terminal.say(study.question);
    const days = study.variants.length * study.replications;
    return simulateStudy(terminal, study, {
      traces: tracesOf(study, options),
      check: options.verify ?? false,
      ...{ mostEvents, mostDays },
      gambrel,
      command: repeatLine(path, study, options),
      inputsSha256: sourceDigest(daySource(study, tracesOf(study, options), false)),
      runner: await chooseRunner(terminal, days, gambrel, options),
      ...(journal === undefined ? {} : { journal }),
    });
  };
}

interface RunParts {
  path: string;
  study: Study;
  options: StudyCommandOptions;
  basePlan: unknown;
  studyText: string;
  simulate: Simulate;
}

/** Runs and writes the folder; what was simulated outlives a stop, a failure, a kill, and is taken up by --resume. */
async function runInto(terminal: Terminal, folder: string, parts: RunParts): Promise<StudyResults> {
  const { study, options, basePlan, studyText, simulate } = parts;
  const overwrite = options.overwrite ?? false;
  checkRunFolder(folder, overwrite);
  // Loaded before the run, so that an installation that is not whole costs no time.
  const writer = await import("../writeRun.ts");
  const journal = await openRunJournal(folder, study, { ...options, traces: tracesOf(study, options) });
  const ruled = study.procedure.stopping !== null || study.procedure.selection !== null;
  const ofAll = ` of ${ruled ? "at most " : ""}${study.variants.length * study.replications}`;
  return keepingDays(terminal, journal, { ofAll, goOn: resumeLine("study", parts.path, options) }, async () => {
    takeRunFolder(folder, overwrite);
    const results = await simulate(journal);
    writer.writeRun(folder, { results, plan: basePlan, studyText }, overwrite);
    return results;
  });
}

function tracesOf({ variants }: Study, { traces }: StudyCommandOptions): TraceKind {
  return traces ?? (variants.length > MOST_TRACED ? "none" : "binned");
}

/** A number of replications given here takes the place of the study's own, and of the rule that adds days. */
function changed(study: Study, { seed = study.seed, replications }: StudyCommandOptions): Study {
  if (replications === undefined) return { ...study, seed };
  const { antithetic } = study.procedure;
  if (antithetic && replications % 2 === 1)
    throw new BadInput([`--replications: ${replications}; antithetic days come in pairs, give an even number.`]);
  return { ...study, seed, replications, procedure: { ...study.procedure, stopping: null, selection: null } };
}

function repeatLine(path: string, { seed, replications, procedure }: Study, options: StudyCommandOptions): string {
  const ruled = procedure.stopping !== null || procedure.selection !== null;
  const fixed = ruled ? [] : ["--replications", String(replications)];
  return commandLine(["gambrel", "study", path, "--seed", seed, ...fixed, ...ceilingWords(options)]);
}
