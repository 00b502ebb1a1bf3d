import {
  carriedBy,
  type Fault,
  formatFault,
  inputKind,
  isRecord,
  type Plan,
  type PlanReading,
  parseJson,
  readPlan,
  type TextFiles,
} from "../../../sim/asked/plan/index.ts";
import { readOnce, readStudy, type Study } from "../../../sim/asked/study/index.ts";
import { responsesOf, usualResponses } from "../../../sim/day/observations/index.ts";
import { daySource } from "../../../sim/days/run/index.ts";
import { plansOfWorlds } from "../../../sim/questions/doubt/index.ts";
import { does } from "../../../sim/text/kinds/index.ts";
import { studyFile } from "../plan/studyFile.ts";
import type { PlanFault, PlanText, Question, QuestionReading } from "./messages.ts";

/** As many as a study may name. */
const MOST = 100;

/** First on the page, in this order, where the plan has them. */
const FIRST = ["headsPerHour", "finish", "carcasses", "overtime", "costPerHead", "timeInSystem.mean"];

/**
 * Reads what a person wrote, with the same checks and the same words as the command line, and makes the study of it: the
 * plan, and beside it the variant when anything is changed.
 */
export function readQuestion(question: Question): QuestionReading {
  const { plan: written } = question;
  const { value: whole, fault } = parseJson(written.text);
  if (fault !== null) return bad([planFault(written, fault)]);
  const value = usualDay(whole);
  if (inputKind(value) === "study") {
    const words = 'this is a study; run it with "gambrel study", or name a plan.';
    return bad([{ path: "", words, line: `${written.name}: ${words}` }]);
  }
  const { reading, files } = readBase(written, value);
  if (reading.plan === null) return bad(reading.faults.map((each) => planFault(written, each)));
  const warnings = reading.warnings.map((each) => planFault(written, each, "warning: "));
  const responses = shownResponses(reading.plan);
  const built = studyOf(value, files, question, responses);
  return { ...built, faults: [], warnings };
}

/** The page plays one day: of a plan with a week its usual one. */
function usualDay(value: unknown): unknown {
  if (!isRecord(value) || "plan" in value) return value;
  const { week: _, ...day } = value;
  return day;
}

/** A plan and its files as they were read last. */
interface ReadPlan {
  written: string;
  files: TextFiles;
  reading: PlanReading;
}

let lastRead: ReadPlan | null = null;

/** Controls move many times on the same plan, which is read once; its checks are built once for it and its variants. */
function readBase(written: PlanText, value: unknown): ReadPlan {
  const key = JSON.stringify(written);
  if (lastRead?.written !== key) {
    const files = readOnce(filesOf(written));
    lastRead = { written: key, files, reading: readPlan(value, files) };
  }
  return lastRead;
}

function studyOf(
  plan: unknown,
  files: TextFiles,
  { plan: written, set, seed, replications, inWorlds = false }: Question,
  responses: readonly string[],
): Omit<QuestionReading, "faults" | "warnings"> {
  const changed = Object.keys(set).length > 0;
  // A study has a change in it: one that says what the plan says already.
  const nothing = { notes: (plan as { notes?: unknown }).notes ?? "" };
  const asked = studyFile({ plan, set: changed ? set : nothing, seed, replications, responses });
  // What the end of work was owed to is not among the figures of the page, and would lengthen every day by a third.
  const reading = readStudy({ ...asked, why: false }, files, { knownResponses: responsesOf });
  if (reading.study === null) {
    const variantFaults = reading.faults.map((each) => planFault(written, each));
    return { study: null, source: null, worldPlans: null, variantFaults };
  }
  const study = changed ? reading.study : baseOnly(reading.study);
  const source = daySource(study, "none", false);
  const isUnsure = study.variants.some(({ plan: { uncertain = [] } }) => uncertain.length > 0);
  if (!inWorlds || !isUnsure) return { study, source, worldPlans: null, variantFaults: [] };
  const worlds = plansOfWorlds(
    { study, base: { json: plan, files }, studyFiles: files },
    { worlds: replications, days: 1, seed },
  );
  const variantFaults = worlds.faults.map((each) => planFault(written, each));
  return { study, source, worldPlans: worlds.faults.length > 0 ? null : worlds.plans, variantFaults };
}

/** Nothing is changed: only the plan itself is run. */
function baseOnly(study: Study): Study {
  return { ...study, variants: study.variants.slice(0, 1) };
}

function bad(faults: PlanFault[]): QuestionReading {
  return { study: null, source: null, worldPlans: null, faults, variantFaults: [], warnings: [] };
}

function planFault({ name }: PlanText, fault: Fault, before = ""): PlanFault {
  const line = formatFault(fault);
  const where = fault.path === "" ? "the file as a whole: " : `${fault.path}: `;
  const words = line.startsWith(where) ? line.slice(where.length) : line;
  return { path: fault.path, words, line: `${name}: ${before}${line}` };
}

function filesOf({ files }: PlanText): TextFiles {
  return {
    readText(path) {
      const text = files[path.replace(/^\.\//u, "")];
      if (text === undefined) throw new Error("the page does not have this file; open it together with the plan");
      return text;
    },
  };
}

/** Keys of the responses that the page shows: the day, the limits, then how every station spent its time and what waited. */
function shownResponses(plan: Plan): string[] {
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  const usual = usualResponses(plan);
  const limits = plan.limits.map(({ name }) => `beyond.${name}`);
  const stations = plan.line.flatMap((stage) => {
    if (does(stage, "work")) return stationKeys(stage.name);
    return carriedBy(stage).flatMap(({ name }) => [`working.${name}`, `blocked.${name}`]);
  });
  const wanted = [...FIRST, ...limits, ...usual, ...stations];
  return [...new Set(wanted)].filter((key) => known.has(key)).slice(0, MOST);
}

function stationKeys(name: string): string[] {
  return [`queue.${name}.mean`, `working.${name}`, `blocked.${name}`, `starved.${name}`];
}
