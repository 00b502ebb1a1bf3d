import process from "node:process";
import type { Plan } from "../../asked/plan/index.ts";
import { type StudyResults, stableJsonParts } from "../../days/results/index.ts";
import { advise } from "../../questions/why/index.ts";
import { formatConfidence } from "../../text/units/index.ts";
import { commandLine } from "../commandLine.ts";
import { loadPlanWithWarnings, readInputFile } from "../inputs.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../options.ts";
import { programVersion } from "../project.ts";
import { runInto } from "../runFolder.ts";
import { chooseRunner, simulateStudy } from "../simulate.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION, untilInterrupted } from "../terminal.ts";
import { whereTimeWent, whyTables } from "../whyTables.ts";

export interface WhyCommandOptions {
  seed: string;
  replications: number;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Threads are started anew for each round: with fewer days that takes longer than it saves. */
const FEW_DAYS = 40;

/** Tells why a plan's work ends when it does, tries the changes that this suggests, and ranks them. */
export async function whyCommand(terminal: Terminal, path: string, options: WhyCommandOptions): Promise<void> {
  const file = readInputFile(path, ceilingsOf(options));
  const { plan, warnings } = loadPlanWithWarnings(file);
  for (const warning of warnings) terminal.say(warning, "yellow");
  const { out, overwrite = false, json } = options;
  const simulate = () => advised(terminal, path, plan, options);
  const results = out === undefined ? await simulate() : await runInto(out, overwrite, file.json, simulate);
  for (const line of summary(results)) terminal.say(line);
  terminal.say(CAUTION, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html and more.`, "green");
  if (json) for (const part of stableJsonParts(results)) terminal.data(part);
}

function advised(terminal: Terminal, path: string, plan: Plan, options: WhyCommandOptions): Promise<StudyResults> {
  const { seed, replications } = options;
  const { events: mostEvents, days: mostDays } = ceilingsOf(options);
  const fixed = ["--seed", seed, "--replications", String(replications), ...ceilingWords(options)];
  const command = commandLine(["gambrel", "why", path, ...fixed]);
  const gambrel = programVersion();
  terminal.say(plan.name, "bold");
  return untilInterrupted(process, (signal) =>
    advise(
      plan,
      { seed, replications, confidence: 0.95 },
      {
        simulate: async (study, traces, journal) => {
          signal.throwIfAborted();
          const days = study.variants.length * study.replications;
          const threads = options.threads ?? (days < FEW_DAYS ? 1 : undefined);
          const runner = await chooseRunner(terminal, days, gambrel, threads === undefined ? {} : { threads });
          return simulateStudy(terminal, study, { traces, gambrel, command, runner, mostEvents, mostDays, journal });
        },
        say: (words) => terminal.say(words, "dim"),
      },
    ),
  );
}

function summary({ variants, advice, study }: StudyResults): string[] {
  const { why } = variants[0]!;
  if (why === null) {
    return [
      "Days of this plan do not end by themselves, or nothing is worked on them: there is no end of work to account for. See gambrel day.",
    ];
  }
  return [
    ...(advice === null ? [] : ["What to change first", ...advice.words.map((line) => `  ${line}`), ""]),
    ...whereTimeWent(why),
    "",
    `Means over ${why.total.n} days of seed "${study.seed}", ${formatConfidence(study.confidence)} intervals in brackets.`,
    "",
    ...whyTables(why),
  ];
}
