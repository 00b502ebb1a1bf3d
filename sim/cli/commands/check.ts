import { DANGERS_IN_SHORT } from "../../../viz/report/cautions.ts";
import {
  costsMoreThanPlanned,
  type Fault,
  formatFault,
  type InputKind,
  inputKind,
  type Plan,
  stopFit,
} from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import { formatNumber } from "../../text/units/index.ts";
import {
  BadInput,
  IMPROVE_GUIDE,
  OPTIONS_GUIDE,
  PLAN_GUIDE,
  SEASON_GUIDE,
  SIZE_GUIDE,
  STUDY_GUIDE,
} from "../faults.ts";
import { type InputFile, loadPlan, loadPlanWithWarnings, loadStudy, readInputFile, refused } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { counted, readingProgress, type Terminal } from "../terminal.ts";

export interface CheckCommandOptions {
  json?: boolean;
  /** List what a study of the plan can be asked for. */
  responses?: boolean;
  /** Every response, not one of those that are alike. */
  more?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** What says how a file must be; most have a plan in them. */
const GUIDES: Record<InputKind, string[]> = {
  plan: [PLAN_GUIDE],
  study: [STUDY_GUIDE, PLAN_GUIDE],
  demand: [SIZE_GUIDE],
  options: [OPTIONS_GUIDE, PLAN_GUIDE],
  improve: [IMPROVE_GUIDE, PLAN_GUIDE],
  season: [SEASON_GUIDE, PLAN_GUIDE],
};

interface Checked {
  file: string;
  kind: InputKind | null;
  sound: boolean;
  faults: readonly string[];
  /** What a sound plan probably does not mean. */
  warnings: readonly string[];
}

/** Reads each file and says everything that is wrong with it. Nothing is simulated but some days of a plan whose breaks seem not to fit. */
export async function checkCommand(
  terminal: Terminal,
  paths: readonly string[],
  options: CheckCommandOptions,
): Promise<void> {
  if (options.more && !options.responses) throw new BadInput(["--more: this belongs to --responses; add that."]);
  if (options.responses) return listResponses(terminal, paths, options);
  const all: Checked[] = [];
  for (const path of paths) all.push(await checkFile(terminal, path, ceilingsOf(options)));
  if (all.some(({ sound }) => sound)) terminal.say(DANGERS_IN_SHORT.join(" "), "yellow");
  if (options.json) terminal.data(`${JSON.stringify(all, null, 2)}\n`);
  const faults = all.flatMap((checked) => checked.faults);
  const guides = all.filter(({ sound }) => !sound).flatMap(({ kind }) => (kind === null ? [] : GUIDES[kind]));
  if (faults.length > 0) throw new BadInput(faults, [...new Set(guides)]);
}

async function listResponses(
  terminal: Terminal,
  paths: readonly string[],
  options: CheckCommandOptions,
): Promise<void> {
  const [path, ...others] = paths;
  if (others.length > 0) throw new BadInput(["--responses: name one plan at a time."]);
  const plan = loadPlan(readInputFile(path!, ceilingsOf(options)));
  const { responseGroups } = await import("../../day/observations/index.ts");
  const { responseLines } = await import("../responseLines.ts");
  const groups = responseGroups(plan);
  if (options.json) return terminal.data(`${JSON.stringify(groups, null, 2)}\n`);
  const every = options.more === true;
  const number = groups.reduce((sum, { responses }) => sum + responses.length, 0);
  terminal.say(`What a study of "${plan.name}" can be asked for, in its "responses": ${counted(number, "result")}.`);
  for (const { line, style } of responseLines(groups, every)) terminal.say(line, style);
  if (!every) terminal.say("Add --more to list every one.");
}

async function checkFile(terminal: Terminal, path: string, ceilings: Ceilings): Promise<Checked> {
  let kind: Checked["kind"] = null;
  try {
    const file = readInputFile(path, ceilings);
    kind = inputKind(file.json);
    if (kind === null)
      throw new BadInput([
        `${path}: this is no plan (it has no "line"), no study or question about a plan (no "plan"), and no demand (no "week"). "gambrel schema" shows what each holds.`,
      ]);
    const { words, warnings } = await CHECKS[kind](file, terminal);
    terminal.say(`${path}: valid. ${words}`, "green");
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

async function checkPlan(file: InputFile): Promise<Sound> {
  const { plan, warnings } = loadPlanWithWarnings(file);
  const stops = await stopsThatDoNotFit(plan);
  const words = `Plan "${plan.name}": ${counted(plan.line.length, "stage")}, ${counted(plan.limits.length, "time limit")}.${weekWords(plan)}${expectedWords(plan)}`;
  return { words, warnings: [...warnings, ...stops.map((words) => `${file.path}: warning: ${words}`)] };
}

function weekWords({ week }: Plan): string {
  if (week === undefined) return "";
  const working = week.days.filter(({ plan }) => plan !== null).length;
  const orders = week.orders.length === 0 ? "" : `, ${counted(week.orders.length, "order")}`;
  return ` A week of ${counted(week.days.length, "day")}, ${working} of them with work${orders}.`;
}

/** What simulates is loaded only where breaks give reason to. */
async function stopsThatDoNotFit(plan: Plan): Promise<string[]> {
  const fit = stopFit(plan);
  if (fit === null || !costsMoreThanPlanned(fit.lostSeconds, fit.plannedSeconds)) return [];
  const { stopWarning } = await import("../../days/run/index.ts");
  const found = stopWarning(plan, fit);
  return found === null ? [] : [formatFault(found)];
}

/** Where lorries may stay away: the heads that come on the average. */
function expectedWords({ supply }: Plan): string {
  if (supply.kind !== "loads" || supply.loads.every(({ comesShare }) => comesShare === 1)) return "";
  const { loads } = supply;
  const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
  const heads = loads.map(({ crates, headsPerCrate }) => crates * headsPerCrate);
  const expected = formatNumber(Math.round(sum(loads.map(({ comesShare }, row) => comesShare * heads[row]!))));
  const lorries = formatNumber(Number(sum(loads.map(({ comesShare }) => comesShare)).toFixed(1)));
  return ` On average ${expected} of ${formatNumber(sum(heads))} heads come, with ${lorries} of ${counted(loads.length, "lorry", "lorries")}.`;
}

/** A rule decides how many days are run; what the study says is then the most of them. */
function mostWords({ procedure }: Study): string {
  return procedure.stopping === null && procedure.selection === null ? "" : "at most ";
}

async function checkStudy(file: InputFile, terminal: Terminal): Promise<Sound> {
  const shown = readingProgress(terminal, () => performance.now());
  const { study } = await loadStudy(file, shown.update).finally(shown.end);
  const observed = study.variants[0]!.plan.week === undefined ? "simulated day" : "simulated week";
  const words = `Study "${study.name}": ${counted(study.variants.length, "variant")}, ${mostWords(study)}${counted(study.replications, observed)} each.`;
  return { words, warnings: [] };
}

/** What knows the other kinds is loaded for them alone. */
async function checkDemand(file: InputFile): Promise<Sound> {
  const { readDemand, sizePlant } = await import("../../questions/size/index.ts");
  const { demand, faults } = readDemand(file.json, file.files);
  refuse(file, faults);
  const { design, faults: impossible } = sizePlant(demand!, file.files);
  refuse(file, impossible);
  return { words: `Demand "${demand!.name}": a plan of ${counted(design!.stations.length, "station")}.`, warnings: [] };
}

async function checkOptions(file: InputFile): Promise<Sound> {
  const { readOptions } = await import("../../questions/options/index.ts");
  const { question, faults } = readOptions(file.json, file.files);
  refuse(file, faults);
  const { study, offerCosts } = question!;
  const words = `Options "${study.name}": ${counted(offerCosts.length, "option")}, ${counted(study.replications, "simulated day")} each.`;
  return { words, warnings: [] };
}

async function checkImprove(file: InputFile): Promise<Sound> {
  const { countDesigns, readImprove } = await import("../../questions/improve/index.ts");
  const { question, faults } = readImprove(file.json, file.files);
  refuse(file, faults);
  const { name, space } = question!;
  const words = `Question "${name}": ${counted(countDesigns(space), "allowed design")}.`;
  return { words, warnings: [] };
}

async function checkSeason(file: InputFile): Promise<Sound> {
  const { readSeason } = await import("../../questions/season/index.ts");
  const { question, faults } = readSeason(file.json, file.files);
  refuse(file, faults);
  const { name, entries, study } = question!;
  const weeks = entries.reduce((sum, { times }) => sum + times, 0);
  const words = `Season "${name}": ${counted(weeks, "week")} of ${counted(study.variants.length, "kind")}, ${counted(study.replications, "simulated week")} each.`;
  return { words, warnings: [] };
}

function refuse({ path }: InputFile, faults: readonly Fault[]): void {
  if (faults.length > 0) throw refused(path, faults);
}

const CHECKS: Record<InputKind, (file: InputFile, terminal: Terminal) => Sound | Promise<Sound>> = {
  plan: checkPlan,
  study: checkStudy,
  demand: checkDemand,
  options: checkOptions,
  improve: checkImprove,
  season: checkSeason,
};
