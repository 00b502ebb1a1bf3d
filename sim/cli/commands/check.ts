import { inputKind } from "../../plan/index.ts";
import type { Study } from "../../study/index.ts";
import { BadInput, PLAN_GUIDE, STUDY_GUIDE } from "../badInput.ts";
import { type Ceilings, ceilingsOf } from "../ceilings.ts";
import { type InputFile, readInputFile } from "../inputFile.ts";
import { loadPlanWithWarnings } from "../loadPlan.ts";
import type { Terminal } from "../terminal.ts";

export interface CheckCommandOptions {
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** What says how a file must be; a study has a plan in it. */
const GUIDES = { plan: [PLAN_GUIDE], study: [STUDY_GUIDE, PLAN_GUIDE] };

interface Checked {
  file: string;
  kind: "plan" | "study" | null;
  sound: boolean;
  faults: readonly string[];
  /** What a sound plan probably does not mean. */
  warnings: readonly string[];
}

/** Reads each file and says everything that is wrong with it; nothing is simulated. */
export async function checkCommand(
  terminal: Terminal,
  paths: readonly string[],
  options: CheckCommandOptions,
): Promise<void> {
  const all: Checked[] = [];
  for (const path of paths) all.push(await checkFile(terminal, path, ceilingsOf(options)));
  if (options.json) terminal.data(`${JSON.stringify(all, null, 2)}\n`);
  const faults = all.flatMap((checked) => checked.faults);
  const guides = all.filter(({ sound }) => !sound).flatMap(({ kind }) => (kind === null ? [] : GUIDES[kind]));
  if (faults.length > 0) throw new BadInput(faults, [...new Set(guides)]);
}

async function checkFile(terminal: Terminal, path: string, ceilings: Ceilings): Promise<Checked> {
  let kind: Checked["kind"] = null;
  try {
    const file = readInputFile(path, ceilings);
    kind = inputKind(file.json);
    if (kind === null)
      throw new BadInput([
        `${path}: neither a plan (it has no "line") nor a study (no "plan"). "gambrel schema" shows what they hold.`,
      ]);
    const { words, warnings } = kind === "plan" ? checkPlan(file) : await checkStudy(file);
    terminal.say(`${path}: sound. ${words}`, "green");
    for (const warning of warnings) terminal.say(warning, "yellow");
    return { file: path, kind, sound: true, faults: [], warnings };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return { file: path, kind, sound: false, faults: error.lines, warnings: [] };
  }
}

interface Sound {
  words: string;
  warnings: readonly string[];
}

function checkPlan(file: InputFile): Sound {
  const { plan, warnings } = loadPlanWithWarnings(file);
  const words = `Plan "${plan.name}" with ${plan.line.length} stages and ${plan.limits.length} limits.`;
  return { words, warnings };
}

/** A rule decides how many days are run; what the study says is then the most of them. */
function mostWords({ procedure }: Study): string {
  return procedure.stopping === null && procedure.selection === null ? "" : "at most ";
}

async function checkStudy(file: InputFile): Promise<Sound> {
  // A study names responses, and what knows them is half of the program: not loaded for a plan.
  const { loadStudy } = await import("../loadStudy.ts");
  const { study } = loadStudy(file);
  const words = `Study "${study.name}" with ${study.variants.length} variants, ${mostWords(study)}${study.replications} replications each.`;
  return { words, warnings: [] };
}
