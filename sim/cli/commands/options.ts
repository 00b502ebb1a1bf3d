import { formatFault } from "../../asked/plan/index.ts";
import { basePlan, type Study } from "../../asked/study/index.ts";
import { type StudyResults, stableJson } from "../../days/results/index.ts";
import type { TraceKind } from "../../days/run/index.ts";
import { type LineUpQuestion, lineUp, readOptions } from "../../questions/options/index.ts";
import { BadInput } from "../badInput.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../ceilings.ts";
import { chooseRunner } from "../chooseRunner.ts";
import { commandLine } from "../commandLine.ts";
import { type InputFile, readInputFile } from "../inputFile.ts";
import { MOST_TRACED } from "../mostTraced.ts";
import { lineUpSummary } from "../optionsSummary.ts";
import { refuseOtherKind } from "../otherKind.ts";
import { programVersion } from "../programVersion.ts";
import { runInto } from "../runInto.ts";
import { simulateStudy } from "../simulateStudy.ts";
import type { Terminal } from "../terminal.ts";
import { CAUTION } from "../terminal.ts";

export interface OptionsCommandOptions {
  seed?: string;
  replications?: number;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates the plan as it is and with each option, and tells what each is worth. */
export async function optionsCommand(terminal: Terminal, path: string, options: OptionsCommandOptions): Promise<void> {
  const { out, overwrite = false, json = false } = options;
  const file = readInputFile(path, ceilingsOf(options));
  const question = asked(file, options);
  const run = (traces: TraceKind) => simulate(terminal, question.study, { path, options, traces });
  const results = out === undefined ? await run("none") : await written(file, question, { out, overwrite, run });
  const found = lineUp(question, results);
  for (const { line, style } of lineUpSummary(found, results)) terminal.say(line, style);
  terminal.say(CAUTION, "dim");
  if (out !== undefined) terminal.say(`Written: ${out}/report.html, line-up.json and more.`, "green");
  if (json) terminal.data(stableJson({ lineUp: found, simulated: results }));
}

function asked(file: InputFile, options: OptionsCommandOptions): LineUpQuestion {
  refuseOtherKind(file, "options");
  const { question, faults } = readOptions(file.json, file.files);
  if (question === null) throw new BadInput(faults.map((fault) => `${file.path}: ${formatFault(fault)}`));
  const { seed = question.study.seed, replications = question.study.replications } = options;
  if (replications < 2) throw new BadInput(["--replications: one day has no interval; give 2 or more."]);
  return { ...question, study: { ...question.study, seed, replications } };
}

interface Written {
  out: string;
  overwrite: boolean;
  run: (traces: TraceKind) => Promise<StudyResults>;
}

/** The folder is that of a study of the options; what they are worth goes with it. */
function written(file: InputFile, question: LineUpQuestion, { out, overwrite, run }: Written): Promise<StudyResults> {
  const traces = question.study.variants.length > MOST_TRACED ? "none" : "binned";
  return runInto(
    out,
    overwrite,
    basePlan(file.json, file.files)!.json,
    () => run(traces),
    (results) => {
      const found = lineUp(question, results);
      const files = [
        { path: "asked.json", text: file.text },
        { path: "line-up.json", text: stableJson(found) },
      ];
      return { files, answer: { lineUp: found } };
    },
  );
}

function simulate(
  terminal: Terminal,
  study: Study,
  { path, options, traces }: { path: string; options: OptionsCommandOptions; traces: TraceKind },
) {
  const { events: mostEvents, days: mostDays } = ceilingsOf(options);
  const gambrel = programVersion();
  const fixed = ["--seed", study.seed, "--replications", String(study.replications), ...ceilingWords(options)];
  const command = commandLine(["gambrel", "options", path, ...fixed]);
  terminal.say(study.name, "bold");
  if (study.question !== "") terminal.say(study.question);
  const { threads } = options;
  const days = study.variants.length * study.replications;
  return chooseRunner(terminal, days, gambrel, threads === undefined ? {} : { threads }).then((runner) =>
    simulateStudy(terminal, study, { traces, gambrel, command, runner, mostEvents, mostDays }),
  );
}
