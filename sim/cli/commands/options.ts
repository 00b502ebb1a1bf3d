import { formatFault } from "../../plan/index.ts";
import { stableJson } from "../../results/index.ts";
import type { Study } from "../../study/index.ts";
import { type LineUpQuestion, lineUp, readOptions } from "../../worth/index.ts";
import { BadInput } from "../badInput.ts";
import { CAUTION } from "../caution.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../ceilings.ts";
import { chooseRunner } from "../chooseRunner.ts";
import { commandLine } from "../commandLine.ts";
import { readInputFile } from "../inputFile.ts";
import { lineUpSummary } from "../lineUpSummary.ts";
import { refuseOtherKind } from "../otherKind.ts";
import { programVersion } from "../programVersion.ts";
import { simulateStudy } from "../simulateStudy.ts";
import type { Terminal } from "../terminal.ts";

export interface OptionsCommandOptions {
  seed?: string;
  replications?: number;
  threads?: number;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates the plan as it is and with each option, and tells what each is worth. */
export async function optionsCommand(terminal: Terminal, path: string, options: OptionsCommandOptions): Promise<void> {
  const question = asked(path, options);
  const results = await simulate(terminal, path, question.study, options);
  const found = lineUp(question, results);
  for (const { line, style } of lineUpSummary(found, results)) terminal.say(line, style);
  terminal.say(CAUTION, "dim");
  if (options.json) terminal.data(stableJson({ lineUp: found, simulated: results }));
}

function asked(path: string, options: OptionsCommandOptions): LineUpQuestion {
  const file = readInputFile(path, ceilingsOf(options));
  refuseOtherKind(file, "options");
  const { question, faults } = readOptions(file.json, file.files);
  if (question === null) throw new BadInput(faults.map((fault) => `${path}: ${formatFault(fault)}`));
  const { seed = question.study.seed, replications = question.study.replications } = options;
  if (replications < 2) throw new BadInput(["--replications: one day has no interval; give 2 or more."]);
  return { ...question, study: { ...question.study, seed, replications } };
}

function simulate(terminal: Terminal, path: string, study: Study, options: OptionsCommandOptions) {
  const { events: mostEvents, days: mostDays } = ceilingsOf(options);
  const gambrel = programVersion();
  const fixed = ["--seed", study.seed, "--replications", String(study.replications), ...ceilingWords(options)];
  const command = commandLine(["gambrel", "options", path, ...fixed]);
  terminal.say(study.name, "bold");
  if (study.question !== "") terminal.say(study.question);
  const { threads } = options;
  const days = study.variants.length * study.replications;
  return chooseRunner(terminal, days, gambrel, threads === undefined ? {} : { threads }).then((runner) =>
    simulateStudy(terminal, study, { traces: "none", gambrel, command, runner, mostEvents, mostDays }),
  );
}
