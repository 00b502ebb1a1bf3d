import { join } from "node:path";
import {
  decisionTable,
  otherResponseWords,
  plansTold,
  ranking,
  welfareLead,
  whoLacked,
  wrappedLines,
} from "../../../viz/index.ts";
import type { Study } from "../../asked/study/index.ts";
import {
  type ElementaryEffects,
  type Estimate,
  type ResponseInfo,
  type StudyResults,
  safeFileName,
  stableJsonParts,
  type VariantResults,
} from "../../days/results/index.ts";
import { type DayJournal, daySource } from "../../days/run/index.ts";
import { formatConfidence, formatEstimate, formatSpan, textTable } from "../../text/units/index.ts";
import { effectLines, tableLines } from "../answerLines.ts";
import { BadInput } from "../faults.ts";
import { loadStudy, readInputFile } from "../inputs.ts";
import { ceilingsOf, type StudyCommandOptions } from "../options.ts";
import { finishedRun, openRunJournal, runInto } from "../runFolder.ts";
import { keepingDays, resumeLine, simulateStudy } from "../simulate.ts";
import { CAUTION, counted, type Terminal } from "../terminal.ts";

const MAX_NAMED = 5;

const FALSE_DISCOVERY =
  "Of the differences shown, at most the share that the confidence leaves open is false on average (false discovery rate).";

/** Runs a study; writes its folder unless only data on standard output is wanted. */
export async function studyCommand(terminal: Terminal, path: string, options: StudyCommandOptions): Promise<void> {
  const results = await runStudyFile(terminal, path, options);
  if (!options.more && results.decision != null) terminal.say("--more lists every mean and difference here.", "dim");
  if (options.json) for (const part of stableJsonParts(results)) terminal.data(part);
}

/** The whole way from a study file to its folder and the words on the terminal. */
export async function runStudyFile(
  terminal: Terminal,
  path: string,
  options: StudyCommandOptions,
): Promise<StudyResults> {
  const file = readInputFile(path, ceilingsOf(options));
  const { study: asRead, basePlan } = await loadStudy(file);
  const study = changed(asRead, options);
  refuseTooManyDays(study, ceilingsOf(options).days);
  const folder = options.out ?? (options.json ? null : join("runs", safeFileName(study.name)));
  if (folder === null && options.resume) {
    throw new BadInput(["--resume: a run with --json alone is not kept; add --out and the folder of the run."]);
  }
  const simulate = simulation(terminal, path, study, options);
  const results =
    folder === null
      ? await simulate()
      : ((await alreadyThere(terminal, folder, options, { study, studyFile: file.json, basePlan })) ??
        (await written(terminal, folder, { path, study, options, basePlan, studyText: file.text, simulate })));
  for (const line of studySummary(results)) terminal.say(line);
  if (options.more && results.decision != null) for (const line of ["", ...studyListing(results)]) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  if (folder !== null)
    terminal.say(`Report: ${join(folder, "report.html")}, with charts and tables beside it`, "green");
  return results;
}

/** The results of a run that --resume finds finished; null where there is something to do. */
async function alreadyThere(
  terminal: Terminal,
  folder: string,
  { resume = false, overwrite = false, traces = "binned" }: StudyCommandOptions,
  asked: { study: Study; studyFile: unknown; basePlan: unknown },
): Promise<StudyResults | null> {
  if (!resume || overwrite) return null;
  const found = await finishedRun(folder, { ...asked, traces });
  if (found !== null) terminal.say(`${folder}: finished already; nothing was simulated or written.`, "green");
  return found;
}

/** Of a study whose rules decide on its days, the first round is known. */
function refuseTooManyDays({ variants, replications, procedure }: Study, most: number): void {
  const each = procedure.stopping?.atLeast ?? procedure.selection?.firstStage ?? replications;
  const asked = variants.length * each;
  if (asked <= most) return;
  const words = `${counted(variants.length, "variant")} of ${counted(each, "day")} are ${counted(asked, "day")}; allowed: ${most}`;
  throw new BadInput([`${words}; ask for fewer days or variants, or raise the limit: --ceiling days=${asked}`]);
}

type Simulate = (journal?: DayJournal) => Promise<StudyResults>;

function simulation(terminal: Terminal, path: string, study: Study, options: StudyCommandOptions): Simulate {
  return async (journal) => {
    const { sourceDigest } = await import("../../days/run/wire/index.ts");
    terminal.say(study.name, "bold");
    terminal.say(study.question);
    const traces = options.traces ?? "binned";
    return simulateStudy(terminal, study, {
      words: wordsToRepeat(path, study),
      ...{ options, traces, journal },
      check: options.verify ?? false,
      inputsSha256: sourceDigest(daySource(study, traces, false)),
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
async function written(terminal: Terminal, folder: string, parts: RunParts): Promise<StudyResults> {
  const { study, options, basePlan, studyText, simulate } = parts;
  const overwrite = options.overwrite ?? false;
  const ruled = study.procedure.stopping !== null || study.procedure.selection !== null;
  const ofAll = ` of ${ruled ? "at most " : ""}${study.variants.length * study.replications}`;
  const words = { ofAll, goOn: resumeLine("study", parts.path, options) };
  const open = () => openRunJournal(folder, study, { ...options, traces: options.traces ?? "binned" });
  return runInto(folder, overwrite, keepingDays(terminal, open, words), async (write, journal) => {
    const results = await simulate(journal);
    await write({ results, plan: basePlan, studyText });
    return results;
  });
}

/** A number of replications given here takes the place of the study's own, and of the rule that adds days. */
function changed(study: Study, { seed = study.seed, replications }: StudyCommandOptions): Study {
  if (replications === undefined) return { ...study, seed };
  const { antithetic } = study.procedure;
  if (antithetic && replications % 2 === 1)
    throw new BadInput([`--replications: ${replications}; antithetic days come in pairs; give an even number.`]);
  return { ...study, seed, replications, procedure: { ...study.procedure, stopping: null, selection: null } };
}

function wordsToRepeat(path: string, { seed, replications, procedure }: Study): string[] {
  const ruled = procedure.stopping !== null || procedure.selection !== null;
  return ["study", path, "--seed", seed, ...(ruled ? [] : ["--replications", String(replications)])];
}

/** What a study came to, as lines of text: its verdict with the table to decide by; where it has none, the listing. */
export function studySummary(results: StudyResults): string[] {
  const { decision, procedure, variants } = results;
  const lead = welfareLead(results);
  const answered = decision == null ? studyListing(results) : decided(results, decision);
  return [
    ...(lead === null ? [] : wrappedLines(lead)),
    ...answered,
    ...(decision == null ? [] : rulesWords(procedure)),
    ...variants.flatMap((variant) => unfinishedWarning(results, variant)),
  ];
}

/** Every mean of the first result with its interval and every difference in words, of the next few the means. */
export function studyListing(results: StudyResults): string[] {
  const { study, responses, variants, procedure, decision } = results;
  const headline = responses[0]!;
  const percent = formatConfidence(study.confidence);
  return [
    `${counted(variants.length, "variant")}, ${daysWords(results)}, seed "${study.seed}", ${percent} intervals`,
    ...(decision == null ? rulesWords(procedure) : []),
    `${headline.label}:`,
    ...(headline.meaning === undefined ? [] : [`  ${headline.meaning}`]),
    ...(results.screening === null ? pointLines(results, headline) : screeningTable(results, headline)),
    ...otherResults(results),
  ];
}

function rulesWords({ stopping, selection }: StudyResults["procedure"]): string[] {
  return [stopping, selection].flatMap((rule) => (rule === null ? [] : [rule.words]));
}

/** Figures of a plan that fit beside its name. */
const MAX_COLUMNS = 6;
/** Sentences that the verdict rests on. */
const MAX_WORDS = 4;

/** The verdict, what it rests on, what became of the other responses, the table to decide by, what to do next. */
export function decided(results: StudyResults, decision: NonNullable<StudyResults["decision"]>): string[] {
  const { variants, study, factors, screening } = results;
  const room = { rows: plansTold(decision, factors.length > 0), columns: MAX_COLUMNS, reader: study.reader };
  const table =
    variants.length < 2 ? [] : tableLines(decisionTable(decision, variants[0]!.day.startClockSeconds, room));
  const words = [...decision.words.slice(0, MAX_WORDS), ...otherResponseWords(results, decision)];
  return [
    ...wrappedLines(decision.verdict),
    ...words.flatMap((line) => wrappedLines(line, "  ")),
    "",
    ...(screening === null ? [...effectsFirst(results), ...table] : screeningTable(results, results.responses[0]!)),
    `  ${variants.length === 1 ? counted(study.replications, simulatedOnce(results)) : `${counted(variants.length, "variant")}, ${daysWords(results)}`}; ranges are at ${formatConfidence(study.confidence)}.`,
    ...(decision.next.length === 0 ? [] : ["", "Next:", ...decision.next.flatMap((line) => wrappedLines(line, "  "))]),
  ];
}

/** More points of a design than this are told by what moves them, not one by one. */
const MAX_POINTS = 24;

/** What moves the first result, before the points themselves. */
function effectsFirst(results: StudyResults): string[] {
  const lines = effectLines(results, results.responses[0]!);
  return lines.length === 0 ? [] : [...lines, ""];
}

function pointLines(results: StudyResults, headline: ResponseInfo): string[] {
  const effects = effectLines(results, headline);
  const isMany = effects.length > 0 && results.variants.length > MAX_POINTS;
  return [...effects, ...(isMany ? bestNote(results, headline) : comparisonLines(results, headline))];
}

function comparisonLines(results: StudyResults, headline: ResponseInfo): string[] {
  return [...variantLines(results, headline), ...bestNote(results, headline), ...chanceNote(results)];
}

/** Results that are told in brief below the first. */
const MAX_BRIEF = 3;

function otherResults(results: StudyResults): string[] {
  const { responses, screening } = results;
  const brief = screening === null ? responses.slice(1, 1 + MAX_BRIEF) : [];
  const left = responses.length - 1 - brief.length;
  const more = left === 1 ? "1 more result is" : `${left} more results are`;
  return [
    ...brief.flatMap((info) => briefLines(results, info)),
    ...(left === 0 ? [] : [`${more} in report.html and summary.csv; --out FOLDER writes them.`]),
  ];
}

function briefLines(results: StudyResults, info: ResponseInfo): string[] {
  const effects = results.variants.length > MAX_POINTS ? effectLines(results, info) : [];
  return effects.length > 0 ? effects : [`${info.label}:`, ...meanLines(results, info)];
}

/** "simulated day", or of a plan with a week "simulated week". */
export function simulatedOnce({ plan }: StudyResults): string {
  return plan.week === undefined ? "simulated day" : "simulated week";
}

/** How many days each variant was run, which may differ where a selection dropped some. */
function daysWords(results: StudyResults): string {
  const { study, variants, procedure } = results;
  const noun = simulatedOnce(results);
  const least = Math.min(...variants.map(({ days }) => days));
  const pairs = procedure.observation === "day" ? "" : " in antithetic pairs";
  if (least === study.replications) return `${counted(least, noun)} of each${pairs}`;
  return `${least} to ${counted(study.replications, noun)}${pairs}`;
}

function variantLines(results: StudyResults, headline: ResponseInfo): string[] {
  const table = meanLines(results, headline);
  return results.variants.flatMap(({ differences, estimates }, index) => {
    const words = [estimates[headline.key]?.reduction?.words, differences?.[headline.key]?.words];
    return [table[index]!, ...words.flatMap((line) => (line === undefined ? [] : [`      ${line}`]))];
  });
}

/** A line for each variant: its name, mean and interval. */
function meanLines({ plan, variants }: StudyResults, info: ResponseInfo): string[] {
  const period = plan.week === undefined ? "day" : "week";
  const rows = variants.map(({ name, estimates, day }) => {
    return [name, ...estimateCells(estimates[info.key], info, { start: day.startClockSeconds, period })];
  });
  return textTable(rows).map((line) => `  ${line}`);
}

/** Mean and interval; says in words which of them is missing, and where a share was never seen. */
function estimateCells(
  found: Estimate | undefined,
  info: ResponseInfo,
  { start, period }: { start: number; period: "day" | "week" },
): [string, string] {
  if (found === undefined) return ["no value", ""];
  const [mean, range] = formatEstimate(found, info, start);
  if (info.format === "share" && found.mean === 0 && found.high !== null && found.high > 0) {
    return [
      mean,
      `(none in ${counted(found.n, period)}, at most ${formatEstimate({ ...found, mean: found.high }, info, 0)[0]})`,
    ];
  }
  if (found.n > 1 && found.min === found.max)
    return [mean, `(the same ${period === "day" ? "on" : "in"} every ${period})`];
  return [mean, range === "" ? "(one value, no interval)" : `(${range})`];
}

/** Which variants the best one may be; with two variants the difference says it. */
function bestNote(results: StudyResults, headline: ResponseInfo): string[] {
  const { by, words } = ranking(results, headline);
  const found = by === null ? [] : bestBy(results, by);
  if (words === "") return found;
  return found.length === 0 ? [words] : [words, `By "${by!.label}":`, ...found];
}

function bestBy({ variants, study }: StudyResults, { key }: ResponseInfo): string[] {
  if (variants.length < 3) return [];
  const compared = variants.filter(({ againstBest }) => againstBest?.[key] !== undefined);
  if (compared.length < variants.length) return [];
  const names = compared.filter(({ againstBest }) => againstBest![key]!.mayBeBest).map(({ name }) => `"${name}"`);
  const percent = formatConfidence(study.confidence);
  if (names.length === 1)
    return [`The best of all is ${names[0]} (${percent}, sure even though all variants were compared).`];
  const others = variants.length - names.length;
  const named = names.length <= MAX_NAMED ? `: ${names.join(", ")}` : "";
  const worse =
    others === 0 ? "No variant is clearly better than another" : `${others} ${others === 1 ? "is" : "are"} worse`;
  return [
    `${names.length} variants may be the best${named}. ${worse} (${percent}, sure even though all variants were compared).`,
  ];
}

/** Where every interval holds by itself, a reader of many of them must know what chance alone would show. */
function chanceNote({ variants, study: { confidence }, procedure }: StudyResults): string[] {
  const comparisons = variants.length - 1;
  if (comparisons < 2 || procedure.errorRate === "family-wise") return [];
  if (procedure.errorRate === "false discovery") return [FALSE_DISCOVERY];
  const expected = Number((comparisons * (1 - confidence)).toFixed(2));
  return [
    `Each range stands by itself: of ${comparisons} comparisons, chance alone shows about ${expected} on average.`,
  ];
}

function unfinishedWarning({ plan }: StudyResults, { name, values, dayNotes = [], day }: VariantResults): string[] {
  const days = values.unfinished ?? [];
  const cut = days.filter((value) => value === 1).length;
  if (cut === 0) return [];
  const held = day.status === "finished" ? "" : ` On the first day: ${dayNotes.join(" ")}`;
  if (plan.week !== undefined)
    return [
      `Note on "${name}": ${cut} of ${counted(days.length, "week")} did not come to its end; later days rest on the others. ${[...whoLacked({ values }), ...dayNotes].join(" ")}`.trim(),
    ];
  return [
    `Note on "${name}": ${cut} of ${counted(days.length, "day")} did not end by itself (cut off at the plan's longest day, or stuck); its end is a lower bound.${held}`,
  ];
}

/** What a screening found on one response, as lines of text: the factor that matters most first. */
export function screeningTable({ screening, factors, study }: StudyResults, info: ResponseInfo): string[] {
  const effects = screening?.[info.key] ?? [];
  const rows = factors
    .map(({ name }, index) => ({ name, found: effects[index] ?? null }))
    .sort((a, b) => (b.found?.muStar ?? -1) - (a.found?.muStar ?? -1));
  const percent = formatConfidence(study.confidence);
  const header = ["factor", "mean size", `${percent} half-width`, "mean effect", "spread (sigma)"];
  return [
    "Effect of each factor over its whole range, its mean size first (elementary effects, Morris 1991):",
    ...textTable([header, ...rows.map(({ name, found }) => [name, ...cells(found, info)])]).map((line) => `  ${line}`),
    ...wrappedLines(
      "A spread as large as the effect means that the effect depends on the other factors or is not straight.",
    ),
  ];
}

function cells(found: ElementaryEffects | null, info: ResponseInfo): string[] {
  if (found === null) return ["no value", "", "", ""];
  const plain = (value: number | null): string => (value === null ? "" : formatSpan(value, info, "plain"));
  return [plain(found.muStar), plain(found.muStarHalfWidth), formatSpan(found.mu, info), plain(found.sigma)];
}
