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
}

const TODAY = "as planned";
const USUAL = ["finish", "overtime", "headsPerHour", "carcasses", "costPerHead", "margin"];
const MONEY = "money";
const LONGEST_NAME = 60;

/** The same question as a study file would ask it; `plan`: the path of the plan from the study's folder, or the plan. */
export function tryStudyFile(plan: Plan, planReference: unknown, question: TryQuestion): Record<string, unknown> {
  const { tries, seed, days, matters, decides = whyResponse(plan) } = question;
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  const name = [...`What if: ${tries.map((each) => each.name).join("; or: ")}`]
    .slice(0, LONGEST_NAME)
    .join("")
    .trimEnd();
  return {
    name,
    question: questionOf(tries),
    asks: "what if",
    ...(matters.length === 0 ? {} : { matters: matters.map(toMatters) }),
    reader: "planner",
    plan: planReference,
    baseName: TODAY,
    seed,
    replications: days,
    responses: [...new Set([decides, ...USUAL.slice(0, 4)])].filter((key) => key === decides || known.has(key)),
    design: { list: tries.map(({ name, set }) => ({ name, set })) },
  };
}

function questionOf(tries: readonly Try[]): string {
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
export function questionFaults(plan: Plan, { decides, matters }: Pick<TryQuestion, "decides" | "matters">): Fault[] {
  const keys = responsesOf(plan).map(({ key }) => key);
  return [
    ...(decides === undefined || keys.includes(decides) ? [] : [unknown(`--decides ${decides}`, decides, keys)]),
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
