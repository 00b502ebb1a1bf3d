import process from "node:process";
import { wrappedLines } from "../../../viz/index.ts";
import type { Plan } from "../../asked/plan/index.ts";
import { type StudyResults, stableJsonParts } from "../../days/results/index.ts";
import { answerWhy } from "../../questions/why/index.ts";
import { formatConfidence } from "../../text/units/index.ts";
import { decidedLines } from "../answerLines.ts";
import { dayNamed, loadPlanWithWarnings, readInputFile } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { alone, runInto } from "../runFolder.ts";
import { type SearchThreads, simulateStudy, withSearchThreads } from "../simulate.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION, untilInterrupted } from "../terminal.ts";
import { whereTimeWent, whyTables } from "../whyTables.ts";

export interface WhyCommandOptions {
  seed: string;
  replications?: number;
  on?: string;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Tells why a plan's work ends when it does, tries the changes that this suggests, and ranks them. */
export async function whyCommand(terminal: Terminal, path: string, options: WhyCommandOptions): Promise<void> {
  const file = readInputFile(path, ceilingsOf(options));
  const { plan, warnings } = loadPlanWithWarnings(file);
  for (const warning of warnings) terminal.say(warning, "yellow");
  const { out, overwrite = false, json } = options;
  const on = options.on === undefined ? undefined : dayNamed(plan, options.on);
  const simulate = () => withSearchThreads((rounds) => runWhy(terminal, path, plan, { ...options, on, rounds }));
  const results =
    out === undefined
      ? await simulate()
      : await runInto(out, overwrite, alone(out), async (write) => {
          const results = await simulate();
          await write({ results, plan: file.json });
          return results;
        });
  const { decision, variants } = results;
  if (decision != null && results.advice !== null)
    for (const { line, style } of decidedLines(decision, variants[0]!.day.startClockSeconds)) terminal.say(line, style);
  for (const line of summary(results)) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html and more.`, "green");
  if (json) for (const part of stableJsonParts(results)) terminal.data(part);
}

/** Of a plan without replications asked for: a week takes as long as its days. */
const DAYS = 20;
const WEEKS = 8;

function runWhy(
  terminal: Terminal,
  path: string,
  plan: Plan,
  { rounds, on, ...options }: Omit<WhyCommandOptions, "on"> & { on: string | undefined; rounds: SearchThreads },
): Promise<StudyResults> {
  const { seed, replications = plan.week === undefined ? DAYS : WEEKS } = options;
  const ofDay = on === undefined ? [] : ["--on", on];
  const words = ["why", path, ...ofDay, "--seed", seed, "--replications", String(replications)];
  terminal.say(plan.name, "bold");
  return untilInterrupted(process, (signal) =>
    answerWhy(
      plan,
      { seed, replications, confidence: 0.95, ...(on === undefined ? {} : { on }) },
      {
        simulate: async (study, journal, traces) => {
          signal.throwIfAborted();
          return simulateStudy(terminal, study, { words, options, traces, journal, rounds });
        },
        say: (words) => terminal.say(words, "dim"),
      },
    ),
  );
}

function summary({ variants, advice, study, plan }: StudyResults): string[] {
  const { why } = variants[0]!;
  if (why === null && advice !== null)
    return ["What each change is worth", ...advice.words.flatMap((line) => wrappedLines(line, "  "))];
  if (why === null) {
    return [
      "Days of this plan do not end by themselves, or nothing is worked on them: there is no end of work to account for. See gambrel day.",
    ];
  }
  return [
    ...(advice === null
      ? whereTimeWent(why)
      : [
          "What each change is worth",
          ...advice.words.flatMap((line) => wrappedLines(line, "  ")),
          "",
          ...whereTimeWent(why, "This shows where the time went; what a change is worth is told above."),
        ]),
    "",
    ...(plan.week === undefined ? [] : ["Traced on days like it that begin with an empty plant, each alone."]),
    `Means over ${why.total.n} days of seed "${study.seed}", ${formatConfidence(study.confidence)} intervals in brackets.`,
    "",
    ...whyTables(why),
  ];
}
