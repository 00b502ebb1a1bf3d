import process from "node:process";
import { improvementTable, wrappedLines } from "../../../viz/index.ts";
import type { Study } from "../../asked/study/index.ts";
import { type StudyResults, stableJson } from "../../days/results/index.ts";
import { type DayJournal, daySource } from "../../days/run/index.ts";
import { analyse, type Doubt, doubtQuestion, doubtWords } from "../../questions/doubt/index.ts";
import {
  type CandidateDesign,
  type Found,
  type Improvement,
  type ImproveQuestion,
  improve,
  improvementStudy,
  isMoved,
  readImprove,
} from "../../questions/improve/index.ts";
import { formatConfidence, formatEstimate, formatNumber, groupDigits, textTable } from "../../text/units/index.ts";
import { answerLines } from "../answerLines.ts";
import { BadInput } from "../faults.ts";
import { type InputFile, readInputFile, refused, refuseOtherKind } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { openSearchJournal, runInto } from "../runFolder.ts";
import {
  keepingDays,
  resumeLine,
  type SearchThreads,
  simulateStudy,
  withKept,
  withSearchThreads,
} from "../simulate.ts";
import {
  CAUTION,
  counted,
  type Line,
  plainLine,
  sayingStages,
  section,
  type Terminal,
  untilInterrupted,
} from "../terminal.ts";

export interface ImproveCommandOptions {
  seed?: string;
  worlds?: number;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  resume?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Searches for the best way to share out a total, picks it, and compares it with the plan as it is. */
export async function improveCommand(terminal: Terminal, path: string, options: ImproveCommandOptions): Promise<void> {
  const { out, resume = false, json = false } = options;
  if (out === undefined && resume)
    throw new BadInput(["--resume: a search without a folder is not kept; add --out and the folder of the search."]);
  const file = readInputFile(path, ceilingsOf(options));
  const question = asked(path, file, options);
  refuseKnownPlan(question, options);
  const tell = () => {
    terminal.say(question.name, "bold");
    if (question.question !== "") terminal.say(question.question);
  };
  const found = await withSearchThreads((rounds) => {
    const run: Run = (study, traces, journal) => simulate(terminal, study, { path, options, traces, journal, rounds });
    const search: Search = { terminal, question, run, tell, worlds: options.worlds };
    return out === undefined ? improved(search) : written(search, file, { ...options, out });
  });
  for (const { line, style } of improveSummary(found.improvement)) terminal.say(line, style);
  for (const { line, style } of worldsSummary(question, found)) terminal.say(line, style);
  terminal.say(CAUTION, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html, improvement.json and more.`, "green");
  if (json)
    terminal.data(stableJson(found.doubt === null ? found.improvement : { ...found.improvement, doubt: found.doubt }));
}

/** `doubt`: the design recommended against the plan as it is, where figures are not known; null where that was not asked, or nothing new is recommended. */
type Searched = { improvement: Improvement; recommended: CandidateDesign | null; doubt: Doubt | null };

/** Days of both plans in each world. */
const DAYS_OF_WORLD = 4;

function worldsWords({ worlds }: ImproveCommandOptions): string[] {
  return worlds === undefined ? [] : ["--worlds", String(worlds)];
}

/** Told before time is spent. */
function refuseKnownPlan({ base }: ImproveQuestion, { worlds }: ImproveCommandOptions): void {
  if (worlds !== undefined && (base.plan.uncertain ?? []).length === 0)
    throw new BadInput([
      '--worlds: the plan says of no figure that it is uncertain; write "uncertain" into it, or leave --worlds out',
    ]);
}

async function inWorlds(
  question: ImproveQuestion,
  found: Omit<Searched, "doubt">,
  worlds: number | undefined,
  run: (study: Study) => Promise<StudyResults>,
): Promise<Doubt | null> {
  const study = improvementStudy(question, found);
  if (worlds === undefined || study.variants.length < 2) return null;
  const { json, files } = question.base;
  const counts = { worlds, days: DAYS_OF_WORLD, seed: study.seed };
  const reading = doubtQuestion({ study, base: { json, files }, studyFiles: files }, counts);
  if (reading.question === null) throw refused("the plan recommended", reading.faults);
  return analyse(reading.question, await run(reading.question.study));
}

/** How sure it is that the recommended plan is the better one, and what is given away by taking it now. */
function worldsSummary({ base }: ImproveQuestion, { doubt, improvement }: Searched): Line[] {
  if (doubt !== null) {
    const { verdict, words, next } = doubtWords(doubt);
    return section(
      "Where figures are not known",
      [verdict, ...words, ...next].flatMap((line) => wrappedLines(line)),
    );
  }
  const uncertain = base.plan.uncertain?.length ?? 0;
  if (uncertain === 0 || improvement.recommended?.isBase !== false) return [];
  return [
    plainLine(
      `${counted(uncertain, "figure")} of the plan may be something else: --worlds 40 tells how sure it is then that this is better.`,
    ),
  ];
}

type Run = (study: Study, traces: "none" | "binned", journal?: DayJournal) => Promise<StudyResults>;

interface Search {
  terminal: Terminal;
  question: ImproveQuestion;
  run: Run;
  worlds: number | undefined;
  /** Says what is asked. */
  tell(): void;
}

function asked(path: string, file: InputFile, { seed }: ImproveCommandOptions): ImproveQuestion {
  refuseOtherKind(file, "improve");
  const { question, faults } = readImprove(file.json, file.files);
  if (question === null) throw refused(path, faults);
  return { ...question, seed: seed ?? question.seed };
}

/** A signal that comes between two studies is heeded before the next one. */
function improved({ terminal, question, run, tell, worlds }: Search, journalOf?: JournalOf): Promise<Searched> {
  return untilInterrupted(process, async (signal) => {
    tell();
    const found = await improve(question, {
      simulate: (study, own) => {
        signal.throwIfAborted();
        return run(study, "none", journalOf === undefined ? own : withKept(own, journalOf(study, "none"), study));
      },
      say: sayingStages(terminal, () => performance.now()),
    });
    const doubt = await inWorlds(question, found, worlds, (study) => run(study, "none", journalOf?.(study, "none")));
    return { ...found, doubt };
  });
}

type JournalOf = (study: Study, traces: "none" | "binned") => DayJournal;

/** The folder is that of a study of two: the plan as it is and the one recommended; what was found goes with it. */
async function written(
  search: Search,
  file: InputFile,
  options: ImproveCommandOptions & { out: string },
): Promise<Searched> {
  const { terminal, question, run } = search;
  const { out, overwrite = false } = options;
  const { seed, base } = question;
  const words = { ofAll: "", goOn: resumeLine("improve", file.path, options, worldsWords(options)) };
  const open = () => openSearchJournal(out, { asked: file.json, plan: base.plan, seed }, options);
  return runInto(out, overwrite, keepingDays(terminal, open, words), async (write, journal) => {
    const journalOf: JournalOf = (study, traces) => journal.of(daySource(study, traces, false));
    const found = await improved(search, journalOf);
    const study = improvementStudy(question, found);
    const results = await run(study, "binned", journalOf(study, "binned"));
    const { improvement } = found;
    const more = [
      { path: "asked.json", text: file.text },
      { path: "improvement.json", text: stableJson(improvement) },
      ...(found.doubt === null ? [] : [{ path: "doubt.json", text: stableJson(found.doubt) }]),
    ];
    await write({ results, plan: base.json, more, answer: { improvement } });
    return found;
  });
}

async function simulate(
  terminal: Terminal,
  study: Study,
  {
    path,
    options,
    ...rest
  }: {
    path: string;
    options: ImproveCommandOptions;
    traces: "none" | "binned";
    journal: DayJournal | undefined;
    rounds: SearchThreads;
  },
): Promise<StudyResults> {
  const seed = options.seed === undefined ? [] : ["--seed", options.seed];
  return simulateStudy(terminal, study, {
    words: ["improve", path, ...worldsWords(options), ...seed],
    options,
    ...rest,
  });
}

/** What was found as lines of text: the verdict, what it rests on, what it shares out, the finalists, and the trade-off curve. */
function improveSummary(found: Improvement): Line[] {
  return [
    ...answerLines({ ...found, words: [] }, improvementTable(found)),
    ...section("How sure that is", found.words),
    ...(found.recommended === null
      ? []
      : section(isMoved(found.allocated) ? "What is moved" : "What is shared out", sharesTable(found))),
    ...section("Finalists", finalistsTable(found)),
    ...(found.curve.length === 0 ? [] : section("What more of the total brings", curveTable(found))),
  ];
}

function sharesTable({ allocated, recommended }: Improvement): string[] {
  const { kind, elements, unit } = allocated;
  const counts = recommended!.counts ?? elements.map(({ base }) => base);
  const shown = (count: number | null, { time }: (typeof elements)[number]) => {
    if (count === null) return "-";
    if (time !== undefined) return time.moments[count]!;
    return kind === "budget" ? (count === 1 ? "bought" : "not bought") : groupDigits(formatNumber(count));
  };
  return textTable([
    ["", "as it is", "recommended"],
    ...elements.map((element, index) => [element.name, shown(element.base, element), shown(counts[index]!, element)]),
    ...(isMoved(allocated)
      ? []
      : [[`of ${groupDigits(formatNumber(allocated.most))} ${unit}`, "", usesOf(recommended!)]]),
  ]);
}

function finalistsTable(found: Improvement): string[] {
  const picked = found.recommended?.name;
  const limited = found.recommended === null || found.recommended.limits.length > 0;
  return textTable([
    ["", found.allocated.unit, headOf(found), `${found.period ?? "day"}s`, limited ? "limits" : "", ""],
    ...found.finalists.map((finalist) => [
      finalist.name,
      usesOf(finalist),
      goalOf(finalist, found),
      String(finalist.goal?.n ?? 0),
      limited ? finalist.limits : "",
      finalist.name === picked
        ? "recommended"
        : finalist.droppedAfter === null
          ? ""
          : `dropped after ${counted(finalist.droppedAfter, found.period ?? "day")}`,
    ]),
  ]);
}

function curveTable(found: Improvement): string[] {
  return [
    ...textTable([
      [found.allocated.unit, "", headOf(found), ""],
      ...found.curve.map((point) => [
        usesOf(point),
        point.name,
        goalOf(point, found),
        [point.undominated ? "" : "another gives as much for less", point.keepsLimits ? "" : "beyond a limit"]
          .filter((words) => words !== "")
          .join(", "),
      ]),
    ]),
    "The best that was tried for no more than each total; every interval by itself.",
  ];
}

function usesOf({ uses }: Found): string {
  return uses === null ? "-" : groupDigits(formatNumber(uses));
}

function goalOf({ goal }: Found, { goal: info }: Improvement): string {
  if (goal === null) return "-";
  const [mean, range] = formatEstimate(goal, info.format === "number" ? { ...info, unit: "" } : info, 0);
  return groupDigits(range === "" ? mean : `${mean} (${range})`);
}

/** What the column holds; a number's unit is said here, once. */
function headOf({ goal, confidence }: Improvement): string {
  const unit = goal.format === "number" ? ` [${goal.unit}]` : "";
  return `${goal.label}${unit}, ${formatConfidence(confidence)} interval`;
}
