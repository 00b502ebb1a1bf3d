import { formatFault, type Plan } from "../../plan/index.ts";
import { type StudyResults, stableJson } from "../../results/index.ts";
import { singleDayStudy } from "../../run/index.ts";
import { type Design, readDemand, sizePlant } from "../../size/index.ts";
import { BadInput } from "../badInput.ts";
import { CAUTION } from "../caution.ts";
import { type Ceilings, ceilingsOf, ceilingWords } from "../ceilings.ts";
import { chooseRunner } from "../chooseRunner.ts";
import { commandLine } from "../commandLine.ts";
import { readInputFile } from "../inputFile.ts";
import { checkNewFile, writeNewFile } from "../newFile.ts";
import { refuseOtherKind } from "../otherKind.ts";
import { programVersion } from "../programVersion.ts";
import { simulateStudy } from "../simulateStudy.ts";
import { sizeSummary } from "../sizeSummary.ts";
import type { Terminal } from "../terminal.ts";

export interface SizeCommandOptions {
  seed: string;
  replications: number;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Sizes a plant from a weekly demand, simulates the plan that comes of it, and writes the plan where a file is named. */
export async function sizeCommand(terminal: Terminal, path: string, options: SizeCommandOptions): Promise<void> {
  const { out, overwrite = false, json } = options;
  if (out !== undefined) checkNewFile(out, overwrite);
  const { design, plan } = sized(path, options);
  const simulated = await simulate(terminal, plan, path, options);
  for (const { line, style } of sizeSummary(design, simulated)) terminal.say(line, style);
  terminal.say(CAUTION, "dim");
  if (out !== undefined) writeNewFile(out, `${JSON.stringify(design.plan, null, 2)}\n`);
  terminal.say(out === undefined ? "Nothing was written; --out FILE writes the plan." : `Written: ${out}`, "green");
  if (json) terminal.data(stableJson({ design, simulated }));
}

function sized(path: string, options: SizeCommandOptions): { design: Design; plan: Plan } {
  const file = readInputFile(path, ceilingsOf(options));
  refuseOtherKind(file, "demand");
  const reading = readDemand(file.json, file.files);
  const { design, plan, faults } =
    reading.demand === null ? { design: null, plan: null, ...reading } : sizePlant(reading.demand, file.files);
  if (design === null || plan === null) throw new BadInput(faults.map((fault) => `${path}: ${formatFault(fault)}`));
  return { design, plan };
}

async function simulate(
  terminal: Terminal,
  plan: Plan,
  path: string,
  options: SizeCommandOptions,
): Promise<StudyResults> {
  const { seed, replications, threads } = options;
  const { events: mostEvents, days: mostDays } = ceilingsOf(options);
  const gambrel = programVersion();
  const study = { ...singleDayStudy(plan, seed), replications, why: false };
  const fixed = ["--seed", seed, "--replications", String(replications), ...ceilingWords(options)];
  const command = commandLine(["gambrel", "size", path, ...fixed]);
  const runner = await chooseRunner(terminal, replications, gambrel, threads === undefined ? {} : { threads });
  return simulateStudy(terminal, study, { traces: "none", gambrel, command, runner, mostEvents, mostDays });
}
