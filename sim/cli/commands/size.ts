import { existsSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { pid } from "node:process";
import { DANGERS_IN_SHORT } from "../../../viz/report/cautions.ts";
import type { Plan } from "../../asked/plan/index.ts";
import { type StudyResults, stableJson } from "../../days/results/index.ts";
import { singleDayStudy } from "../../days/run/index.ts";
import {
  ALTERNATIVES,
  type AlternativeName,
  type GuessEntry,
  guessesOf,
  type PlantDesign,
  readDemand,
  sizePlant,
} from "../../questions/size/index.ts";
import { BadInput } from "../faults.ts";
import { readInputFile, refused, refuseOtherKind } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { simulateStudy } from "../simulate.ts";
import { sizeSummary } from "../sizeSummary.ts";
import { CAUTION, counted, type Terminal } from "../terminal.ts";

export interface SizeCommandOptions {
  seed: string;
  replications?: number;
  threads?: number;
  out?: string;
  alternative?: AlternativeName;
  uncertain?: boolean;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/**
 * Sizes a plant from a weekly demand, beside other kinds of plant; simulates the plan of each, and writes that of the kind asked for where a
 * file is named.
 */
export async function sizeCommand(terminal: Terminal, path: string, options: SizeCommandOptions): Promise<void> {
  const { out, overwrite = false, json } = options;
  if (out !== undefined && !isFile(out)) return dossierCommand(terminal, path, { ...options, out });
  if (out !== undefined) checkNewFile(out, overwrite);
  const sizings = sized(path, options);
  const designs = sizings.map(({ design }) => design);
  const simulated = await simulate(terminal, sizings, path, options);
  for (const { line, style } of sizeSummary(designs, simulated)) terminal.say(line, style);
  terminal.say("");
  terminal.say(DANGERS_IN_SHORT.join(" "), "yellow");
  terminal.say(CAUTION, "dim");
  const [design, ...others] = designs;
  const guesses = options.uncertain ? sizings[0].guesses() : [];
  const plan = guesses.length === 0 ? design!.plan : { ...(design!.plan as object), uncertain: guesses };
  if (guesses.length > 0)
    terminal.say(
      `${counted(guesses.length, "figure")} that nobody gave may be a third off in this plan: gambrel doubt says which to measure first.`,
    );
  if (out !== undefined) writeNewFile(out, `${JSON.stringify(plan, null, 2)}\n`);
  terminal.say(
    out === undefined ? "Nothing was written. Add --out FILE to write the plan." : `Written: ${out}`,
    "green",
  );
  if (json) terminal.data(stableJson({ design: { ...design!, plan }, others, simulated }));
}

/** Days of each plan where nobody says how many. */
const USUAL_DAYS = 20;

/** A plan goes into a file, a dossier into a folder. */
function isFile(out: string): boolean {
  return out === "" || out.endsWith(".json");
}

/** Sizes, simulates, reckons and writes the whole answer to "what should we build?". */
async function dossierCommand(
  terminal: Terminal,
  path: string,
  options: SizeCommandOptions & { out: string },
): Promise<void> {
  const { out, overwrite = false, json, seed, alternative, replications: asked, uncertain = false } = options;
  if (alternative !== undefined)
    throw new BadInput(['--alternative: a dossier compares kinds of plant; name them under "compare" in the demand.']);
  const { checkDossierFolder, dossierStudy, writeDossier } = await import("../dossierFolder.ts");
  checkDossierFolder(out, overwrite);
  const file = readInputFile(path, ceilingsOf(options));
  refuseOtherKind(file, "demand");
  const { kinds, study } = dossierStudy({ file, seed, replications: asked });
  const { replications } = study;
  terminal.say(
    `${study.name}: ${kinds.length} kinds of plant, ${replications} days of each, and as many pressed ones.`,
  );
  const words = ["size", path, "--seed", seed, "--replications", String(replications), "--out", out];
  const results = await simulateStudy(terminal, study, { words, options, traces: "all" });
  const { lines, dossier, missing } = await writeDossier(out, { kinds, results, file, overwrite, uncertain });
  for (const { line, style } of lines) terminal.say(line, style);
  terminal.say("");
  terminal.say(DANGERS_IN_SHORT.join(" "), "yellow");
  terminal.say(CAUTION, "dim");
  terminal.say(`Written: ${out}/dossier.html, its annexes, tables.xlsx and every plan in ${out}/plans.`, "green");
  if (json) terminal.data(dossier);
  if (missing !== null) throw missing;
}

interface Sized {
  design: PlantDesign;
  plan: Plan;
}

/** The kind of plant whose plan is written, and its guesses once they are asked for. */
interface Chosen extends Sized {
  guesses(): GuessEntry[];
}

/** The kind of plant asked for, then the others that the demand can be sized to. */
function sized(path: string, options: SizeCommandOptions): [Chosen, ...Sized[]] {
  const file = readInputFile(path, ceilingsOf(options));
  refuseOtherKind(file, "demand");
  const { demand, faults: unsound } = readDemand(file.json, file.files);
  if (demand === null) throw refused(path, unsound);
  const chosen = options.alternative ?? demand.alternative;
  const { design, plan, faults } = sizePlant(demand, file.files, chosen);
  if (design === null) throw refused(path, faults);
  const others = ALTERNATIVES.filter((name) => name !== chosen).flatMap((name) => {
    const other = sizePlant(demand, file.files, name);
    return other.design === null ? [] : [other];
  });
  const guesses = () => guessesOf(design.plan as Record<string, unknown>, file.json, file.files);
  return [{ design, plan, guesses }, ...others];
}

async function simulate(
  terminal: Terminal,
  sizings: readonly Sized[],
  path: string,
  options: SizeCommandOptions,
): Promise<StudyResults> {
  const { seed, replications = USUAL_DAYS, alternative } = options;
  const single = singleDayStudy(sizings[0]!.plan, seed);
  const variants = sizings.map(({ design, plan }) => ({ ...single.variants[0]!, name: design.alternative, plan }));
  const study = { ...single, variants, replications, why: false };
  const choice = alternative === undefined ? [] : ["--alternative", alternative];
  const words = ["size", path, ...choice, "--seed", seed, "--replications", String(replications)];
  return simulateStudy(terminal, study, { words, options, traces: "none" });
}

/** Refuses a file that cannot be written, before time is spent on what goes into it. */
export function checkNewFile(path: string, overwrite: boolean): void {
  if (path === "") throw new BadInput(["--out: the name is empty; name a file."]);
  const folder = dirname(path);
  if (!existsSync(folder)) throw new BadInput([`${path}: there is no folder ${folder}; make it first.`]);
  if (!existsSync(path)) return;
  if (statSync(path).isDirectory()) throw new BadInput([`${path}: this is a folder; name a file.`]);
  if (!overwrite) throw new BadInput([`${path}: this file exists; name another one, or add --overwrite.`]);
}

/** Writes the whole file or nothing: under another name first, which then takes its place. */
export function writeNewFile(path: string, text: string): void {
  const draft = `${path}.${pid}.tmp`;
  try {
    writeFileSync(draft, text);
    renameSync(draft, path);
  } catch (error) {
    rmSync(draft, { force: true });
    throw error;
  }
}
