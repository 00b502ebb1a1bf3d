import { type Fault, formatFault, nearestName, type Plan } from "../../asked/plan/index.ts";
import { responsesOf } from "../../day/observations/index.ts";
import { whyResponse } from "../why/index.ts";
import type { Try } from "./tries.ts";

/** How the tries are run and judged. */
export interface TryQuestion {
  tries: readonly Try[];
  seed: string;
  days: number;
  /** Key of the response that decides; left out: the end of work, or what a plan without one has. */
  decides?: string | undefined;
  /** "finish=10 min". */
  matters: readonly string[];
  /** Keys of responses to tell besides. */
  also?: readonly string[] | undefined;
  /** For whom it is written; left out: a planner. */
  reader?: string | undefined;
}

const TODAY = "as planned";
/** Of a day that alone is tried; of the week: overtime of all days, and whether orders are ready. */
const OF_ONE_DAY = ["overtime", "carcasses"];
const OF_WEEK = ["ordersMet", "week.overtime"];
const USUAL = ["finish", "overtime", "headsPerHour", "carcasses", "costPerHead", "margin"];
const MONEY = "money";
const LONGEST_NAME = 60;

/** The same question as a study file would ask it; `plan`: the path of the plan from the study's folder, or the plan. */
export function tryStudyFile(plan: Plan, planReference: unknown, question: TryQuestion): Record<string, unknown> {
  const { tries, seed, days, matters, also = [], reader = "planner" } = question;
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  const day = oneDay(tries, known);
  const decides = question.decides ?? `${day}${whyResponse(plan)}`;
  const usual = tries.length === 0 ? [] : usualOf(plan, day);
  const wanted = [...new Set([decides, ...also, ...usual])];
  return {
    name: shortened(nameOf(plan, tries)),
    question: questionOf(plan, tries),
    ...(tries.length === 0 ? {} : { asks: "what if" }),
    ...(matters.length === 0 ? {} : { matters: matters.map(toMatters) }),
    reader,
    plan: planReference,
    baseName: TODAY,
    seed,
    replications: days,
    responses: wanted.filter((key) => key === decides || also.includes(key) || known.has(key)),
    ...(tries.length === 0 ? {} : { design: { list: tries.map(({ name, set }) => ({ name, set })) } }),
  };
}

/** "Thursday." where all tries are of that counted day alone, else "". */
function oneDay(tries: readonly Try[], known: ReadonlySet<string>): string {
  const days = new Set(tries.flatMap((each) => each.days));
  const prefix = `${[...days][0] ?? ""}.`;
  return days.size === 1 && known.has(`${prefix}finish`) ? prefix : "";
}

function usualOf({ week }: Plan, day: string): string[] {
  if (week === undefined) return USUAL.slice(0, 4);
  return day === "" ? [...USUAL.slice(0, 4), ...OF_WEEK] : [...OF_ONE_DAY.map((key) => `${day}${key}`), ...OF_WEEK];
}

function nameOf(plan: Plan, tries: readonly Try[]): string {
  if (tries.length === 0) return `Days of ${plan.name}`;
  return `What if: ${tries.length === 1 ? tries[0]!.name : `${tries.length} tries of ${plan.name}`}`;
}

/** To the length of a name, between two words. */
function shortened(text: string): string {
  const letters = [...text];
  if (letters.length <= LONGEST_NAME) return text;
  const kept = letters.slice(0, LONGEST_NAME - 3).join("");
  return `${kept.slice(0, kept.lastIndexOf(" ")).replace(/[,;:]$/, "")} ...`;
}

function questionOf(plan: Plan, tries: readonly Try[]): string {
  if (tries.length === 0) return `What do days of ${plan.name} come to, as it is planned?`;
  const notes = [...new Set(tries.flatMap((each) => each.notes))];
  return [`What if: ${tries.map(({ name }) => name).join("; or: ")}?`, ...notes].join(" ");
}

/** A bare number stays a number: for a response that is neither time nor share. */
function toMatters(written: string): { response: string; difference: unknown } {
  const [response, difference] = partsOf(written);
  const isNumber = /^\d+(\.\d+)?$/.test(difference);
  return { response, difference: isNumber ? Number(difference) : difference };
}

function partsOf(written: string): [response: string, difference: string] {
  const at = written.indexOf("=");
  return [written.slice(0, at).trim(), written.slice(at + 1).trim()];
}

/** What is wrong with the responses that were named. */
export function questionFaults(
  plan: Plan,
  { decides, matters, also = [] }: Pick<TryQuestion, "decides" | "matters" | "also">,
): Fault[] {
  const keys = responsesOf(plan).map(({ key }) => key);
  return [
    ...(decides === undefined || keys.includes(decides) ? [] : [unknown(`--decides ${decides}`, decides, keys)]),
    ...also.flatMap((key) => (keys.includes(key) ? [] : [unknown(`--also ${key}`, key, keys)])),
    ...matters.flatMap((written): Fault[] => {
      const path = `--matters ${written}`;
      const [response, difference] = partsOf(written);
      if (!written.includes("=") || response === "" || difference === "")
        return [
          {
            path,
            found: "no result with an amount",
            allowed: "a result, '=' and an amount",
            remedy: 'write for example --matters "finish=10 min"',
          },
        ];
      return response === MONEY || keys.includes(response) ? [] : [unknown(path, response, [...keys, MONEY])];
    }),
  ];
}

/** A plan has hundreds of results: the usual ones are named, and what is like the word that was written. */
function unknown(path: string, written: string, keys: readonly string[]): Fault {
  const like = keys.filter((key) => !key.includes(".") && key.toLowerCase().includes(written.toLowerCase()));
  const near = nearestName(written, keys);
  const meant = like.length > 0 ? like.slice(0, 3) : near === null ? [] : [near];
  const usual = USUAL.filter((key) => keys.includes(key));
  return {
    path,
    found: `'${written}' is not a result of this plan`,
    allowed: `${usual.map((key) => `'${key}'`).join(", ")} and the others in summary.csv of a run`,
    remedy: meant.length === 0 ? "" : `did you mean ${meant.map((key) => `'${key}'`).join(" or ")}?`,
  };
}

/** A fault of the study that the tries make, by the words of the command line. */
export function tryFaultWords(fault: Fault, { tries, matters }: Pick<TryQuestion, "tries" | "matters">): string {
  const [, index] = /^matters\[(\d+)\]/.exec(fault.path) ?? [];
  if (index !== undefined) return formatFault({ ...fault, path: `--matters ${matters[Number(index)]}` });
  const found = tries.find(({ name }) => fault.path.startsWith(`variant '${name}': `));
  if (found === undefined) return formatFault(fault);
  return formatFault({
    ...fault,
    path: `try '${found.name}', ${fault.path.slice(`variant '${found.name}': `.length)}`,
  });
}
