import process from "node:process";
import { formatFault } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import { type StudyResults, stableJson } from "../../days/results/index.ts";
import { type DayJournal, daySource, singleDayStudy } from "../../days/run/index.ts";
import {
  comparisonSeed,
  type Design,
  type Improvement,
  type ImproveQuestion,
  improve,
  readImprove,
  variantOf,
} from "../../questions/improve/index.ts";
import { BadInput } from "../badInput.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../ceilings.ts";
import { checkRunFolder, takeRunFolder } from "../checkRunFolder.ts";
import { chooseRunner } from "../chooseRunner.ts";
import { commandLine } from "../commandLine.ts";
import { improveSummary } from "../improveSummary.ts";
import { type InputFile, readInputFile } from "../inputFile.ts";
import { keepingDays } from "../keepingDays.ts";
import { openSearchJournal } from "../openRunJournal.ts";
import { refuseOtherKind } from "../otherKind.ts";
import { programVersion } from "../programVersion.ts";
import { resumeLine } from "../resumeLine.ts";
import { simulateStudy } from "../simulateStudy.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION } from "../terminal.ts";
import { untilInterrupted } from "../untilInterrupted.ts";
import { withKept } from "../withKept.ts";

export interface ImproveCommandOptions {
  seed?: string;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  resume?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Threads are started anew for each round of the search: with fewer days that takes longer than it saves. */
const FEW_DAYS = 40;

/** Searches for the best way to share out a total, picks it, and compares it with the plan as it is. */
export async function improveCommand(terminal: Terminal, path: string, options: ImproveCommandOptions): Promise<void> {
  const { out, resume = false, json = false } = options;
  if (out === undefined && resume)
    throw new BadInput(["--resume: without a folder no search is kept; add --out and the folder of the search."]);
  const file = readInputFile(path, ceilingsOf(options));
  const question = asked(path, file, options);
  const tell = () => {
    terminal.say(question.name, "bold");
    if (question.question !== "") terminal.say(question.question);
  };
  const run: Run = (study, traces, journal) => simulate(terminal, study, { path, options, traces, journal });
  const search: Search = { terminal, question, run, tell };
  const found = out === undefined ? await improved(search) : await written(search, file, { ...options, out });
  for (const { line, style } of improveSummary(found.improvement)) terminal.say(line, style);
  terminal.say(CAUTION, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html, improvement.json and more.`, "green");
  if (json) terminal.data(stableJson(found.improvement));
}

type Found = { improvement: Improvement; recommended: Design | null };
type Run = (study: Study, traces: "none" | "binned", journal?: DayJournal) => Promise<StudyResults>;

interface Search {
  terminal: Terminal;
  question: ImproveQuestion;
  run: Run;
  /** Says what is asked. */
  tell(): void;
}

function asked(path: string, file: InputFile, { seed }: ImproveCommandOptions): ImproveQuestion {
  refuseOtherKind(file, "improve");
  const { question, faults } = readImprove(file.json, file.files);
  if (question === null) throw new BadInput(faults.map((fault) => `${path}: ${formatFault(fault)}`));
  return { ...question, seed: seed ?? question.seed };
}

/** A signal that comes between two studies is heeded before the next one. */
function improved({ terminal, question, run, tell }: Search, journalOf?: JournalOf): Promise<Found> {
  return untilInterrupted(process, (signal) => {
    tell();
    return improve(question, {
      simulate: (study, own) => {
        signal.throwIfAborted();
        return run(study, "none", journalOf === undefined ? own : withKept(own, journalOf(study, "none"), study));
      },
      say: (words) => terminal.say(words, "dim"),
    });
  });
}

type JournalOf = (study: Study, traces: "none" | "binned") => DayJournal;

/** The folder is that of a study of two: the plan as it is and the one recommended; what was found goes with it. */
async function written(
  search: Search,
  file: InputFile,
  options: ImproveCommandOptions & { out: string },
): Promise<Found> {
  const { terminal, question, run } = search;
  const { out, overwrite = false } = options;
  checkRunFolder(out, overwrite);
  // Loaded before the run, so that an installation that is not whole costs no time.
  const writer = await import("../writeRun.ts");
  const { seed, base } = question;
  const journal = await openSearchJournal(out, { asked: file.json, plan: base.plan, seed }, options);
  const journalOf: JournalOf = (study, traces) => journal.of(daySource(study, traces, false));
  const goOn = resumeLine("improve", file.path, options);
  return keepingDays(terminal, journal, { ofAll: "", goOn }, async () => {
    takeRunFolder(out, overwrite);
    const found = await improved(search, journalOf);
    const study = reportStudy(question, found);
    const results = await run(study, "binned", journalOf(study, "binned"));
    const { improvement } = found;
    const more = [
      { path: "asked.json", text: file.text },
      { path: "improvement.json", text: stableJson(improvement) },
    ];
    writer.writeRun(out, { results, plan: base.json, studyText: null }, overwrite, more, { improvement });
    return found;
  });
}

/** As many days as the recommendation rests on. */
function reportStudy(question: ImproveQuestion, { improvement, recommended }: Found): Study {
  const { base, name, confidence, firstStage } = question;
  const single = singleDayStudy(base.plan, comparisonSeed(question));
  const asItIs = { ...single.variants[0]!, name: base.name };
  const isNew = recommended !== null && improvement.recommended?.isBase === false;
  return {
    ...single,
    ...{
      name,
      confidence,
      question: question.question || questionWords(question),
      reader: "process engineer",
      why: true,
    },
    replications: improvement.recommended?.goal?.n ?? firstStage,
    responses: [],
    variants: isNew ? [asItIs, variantOf(recommended)] : [asItIs],
  };
}

function questionWords({ space, response }: ImproveQuestion): string {
  return `How are ${space.most} ${space.unit} best shared out? Looked at: ${response.label}.`;
}

async function simulate(
  terminal: Terminal,
  study: Study,
  {
    path,
    options,
    traces,
    journal,
  }: { path: string; options: ImproveCommandOptions; traces: "none" | "binned"; journal: DayJournal | undefined },
): Promise<StudyResults> {
  const { events: mostEvents, days: mostDays } = ceilingsOf(options);
  const gambrel = programVersion();
  const seed = options.seed === undefined ? [] : ["--seed", options.seed];
  const command = commandLine(["gambrel", "improve", path, ...seed, ...ceilingWords(options)]);
  const days = study.variants.length * study.replications;
  const threads = options.threads ?? (days < FEW_DAYS ? 1 : undefined);
  const runner = await chooseRunner(terminal, days, gambrel, threads === undefined ? {} : { threads });
  const kept = journal === undefined ? {} : { journal };
  return simulateStudy(terminal, study, { traces, gambrel, command, runner, mostEvents, mostDays, ...kept });
}
