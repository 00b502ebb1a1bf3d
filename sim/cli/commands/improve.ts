import {
  type Design,
  type Improvement,
  type ImproveQuestion,
  improve,
  readImprove,
  variantOf,
} from "../../improve/index.ts";
import { formatFault } from "../../plan/index.ts";
import { type RunFile, type StudyResults, stableJson } from "../../results/index.ts";
import { type DayJournal, singleDayStudy } from "../../run/index.ts";
import type { Study } from "../../study/index.ts";
import { BadInput } from "../badInput.ts";
import { CAUTION } from "../caution.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../ceilings.ts";
import { chooseRunner } from "../chooseRunner.ts";
import { commandLine } from "../commandLine.ts";
import { improveSummary } from "../improveSummary.ts";
import { type InputFile, readInputFile } from "../inputFile.ts";
import { refuseOtherKind } from "../otherKind.ts";
import { programVersion } from "../programVersion.ts";
import { runInto } from "../runInto.ts";
import { simulateStudy } from "../simulateStudy.ts";
import type { Terminal } from "../terminal.ts";

export interface ImproveCommandOptions {
  seed?: string;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Threads are started anew for each round of the search: with fewer days that takes longer than it saves. */
const FEW_DAYS = 40;

/** Searches for the best way to share out a total, picks it, and compares it with the plan as it is. */
export async function improveCommand(terminal: Terminal, path: string, options: ImproveCommandOptions): Promise<void> {
  const file = readInputFile(path, ceilingsOf(options));
  const question = asked(path, file, options);
  const run: Run = (study, traces, journal) => simulate(terminal, study, { path, options, traces, journal });
  terminal.say(question.name, "bold");
  if (question.question !== "") terminal.say(question.question);
  const { out } = options;
  const found =
    out === undefined
      ? await improved(terminal, question, run)
      : await written(terminal, question, run, file, { ...options, out });
  for (const { line, style } of improveSummary(found.improvement)) terminal.say(line, style);
  terminal.say(CAUTION, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html, improvement.json and more.`, "green");
  if (options.json) terminal.data(stableJson(found.improvement));
}

type Found = { improvement: Improvement; recommended: Design | null };
type Run = (study: Study, traces: "none" | "binned", journal?: DayJournal) => Promise<StudyResults>;

function asked(path: string, file: InputFile, { seed }: ImproveCommandOptions): ImproveQuestion {
  refuseOtherKind(file, "improve");
  const { question, faults } = readImprove(file.json, file.files);
  if (question === null) throw new BadInput(faults.map((fault) => `${path}: ${formatFault(fault)}`));
  return { ...question, seed: seed ?? question.seed };
}

function improved(terminal: Terminal, question: ImproveQuestion, run: Run): Promise<Found> {
  return improve(question, {
    simulate: (study, journal) => run(study, "none", journal),
    say: (words) => terminal.say(words, "dim"),
  });
}

/** The folder is that of a study of two: the plan as it is and the one recommended; what was found goes with it. */
async function written(
  terminal: Terminal,
  question: ImproveQuestion,
  run: Run,
  file: InputFile,
  { out, overwrite = false }: ImproveCommandOptions & { out: string },
): Promise<Found> {
  let found: Found | null = null;
  let more: RunFile[] = [];
  await runInto(
    out,
    overwrite,
    question.base.json,
    async () => {
      found = await improved(terminal, question, run);
      const results = await run(reportStudy(question, found), "binned");
      const { tradeOffSvg } = await import("../tradeOffSvg.ts");
      const svg = tradeOffSvg(found.improvement);
      more = [
        { path: "asked.json", text: file.text },
        { path: "improvement.json", text: stableJson(found.improvement) },
        ...(svg === null ? [] : [{ path: "trade-off.svg", text: svg }]),
      ];
      return results;
    },
    () => more,
  );
  return found!;
}

/** As many days as the recommendation rests on. */
function reportStudy(question: ImproveQuestion, { improvement, recommended }: Found): Study {
  const { base, name, seed, confidence, firstStage } = question;
  const single = singleDayStudy(base.plan, seed);
  const asItIs = { ...single.variants[0]!, name: base.name };
  const isNew = recommended !== null && improvement.recommended?.isBase === false;
  return {
    ...single,
    ...{ name, confidence, question: improvement.words.join(" "), why: true },
    replications: improvement.recommended?.goal?.n ?? firstStage,
    responses: [],
    variants: isNew ? [asItIs, variantOf(recommended)] : [asItIs],
  };
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
