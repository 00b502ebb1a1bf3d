import { type Fault, formatPath } from "../plan/index.ts";
import type { KnownResponse } from "./knownResponse.ts";
import { nearestResponses } from "./nearestResponses.ts";
import type { Amount } from "./schema/amount.ts";
import type { StudyFile } from "./schema/studyFile.ts";

type At = readonly (string | number)[];

/** What is wrong with the responses a study file names, seen from the base plan: unknown ones, and amounts of the wrong form. */
export function responseFaults(file: StudyFile, known: readonly KnownResponse[]): Fault[] {
  const until = untilOf(file);
  return [
    ...file.responses.flatMap((response, index) => unknownResponse(response, ["responses", index], known)),
    ...(until === undefined ? [] : untilFaults(until, known)),
    ...(file.selection === undefined ? [] : selectionFaults(file.selection, known)),
    ...file.matters.flatMap(({ response, difference }, index) => {
      const at = ["matters", index];
      if (response === MONEY) return amountFault(difference, [...at, "difference"], MONEY_RESPONSE);
      const unknown = unknownResponse(response, [...at, "response"], known);
      return [...unknown, ...amountFault(difference, [...at, "difference"], find(response, known))];
    }),
    ...file.controls.flatMap((control, index) => {
      const at = ["controls", index];
      const unknown = unknownResponse(control.response, [...at, "response"], known);
      return [...unknown, ...amountFault(control.mean, [...at, "mean"], find(control.response, known))];
    }),
  ];
}

/** What a change brings or costs a day; no response of a plan, since it needs another plan beside it. */
const MONEY = "money";
const MONEY_RESPONSE: KnownResponse = { key: MONEY, format: "number", better: "more" };

export function untilOf({ replications }: StudyFile) {
  return typeof replications === "object" ? replications.until : undefined;
}

type Until = NonNullable<ReturnType<typeof untilOf>>;

function untilFaults({ response, halfWidth }: Until, known: readonly KnownResponse[]): Fault[] {
  const at = ["replications", "until"];
  const found = find(response, known);
  if (halfWidth.form !== "percent")
    return [
      ...unknownResponse(response, [...at, "response"], known),
      ...amountFault(halfWidth, [...at, "halfWidth"], found),
    ];
  if (found?.format !== "clock") return unknownResponse(response, [...at, "response"], known);
  const words = `${halfWidth.written} of a time of day has no meaning`;
  return [fault([...at, "halfWidth"], words, "a time", 'write for example "2 min"')];
}

function selectionFaults(selection: NonNullable<StudyFile["selection"]>, known: readonly KnownResponse[]): Fault[] {
  const { response, better, difference } = selection;
  const found = find(response, known);
  const undirected = found !== undefined && found.better === null && better === undefined;
  const remedy = 'write "better": "more" or "better": "less"';
  return [
    ...unknownResponse(response, ["selection", "response"], known),
    ...amountFault(difference, ["selection", "difference"], found),
    ...(undirected
      ? [fault(["selection"], `more of '${response}' is neither better nor worse by itself`, "", remedy)]
      : []),
  ];
}

function find(key: string, known: readonly KnownResponse[]): KnownResponse | undefined {
  return known.find((response) => response.key === key);
}

function unknownResponse(response: string, at: At, known: readonly KnownResponse[]): Fault[] {
  if (find(response, known) !== undefined) return [];
  const remedy = response.startsWith("slope.")
    ? "the plan has no such time, or one run cannot show its slope: run gambrel why to see which and why"
    : meantWords(nearestResponses(response, known));
  return [fault(at, `'${response}' is not a result`, "", remedy)];
}

/** "did you mean 'costPerHead' or 'margin'?", and where the whole list is. */
function meantWords(meant: readonly string[]): string {
  const all = "gambrel check --responses PLAN lists all that there are";
  const quoted = meant.map((key) => `'${key}'`);
  const last = quoted.pop();
  if (last === undefined) return all;
  return `did you mean ${quoted.length === 0 ? last : `${quoted.join(", ")} or ${last}`}? ${all}`;
}

/** A time in minutes says nothing of heads per hour, and a bare number nothing of a time. */
export function amountFault({ form, written }: Amount, at: At, response: KnownResponse | undefined): Fault[] {
  if (response === undefined) return [];
  const isTime = response.format === "clock" || response.format === "duration";
  if (isTime && form !== "time")
    return [fault(at, `${written} is no time, and '${response.key}' is one`, "a time", 'write for example "2 min"')];
  const suits = isTime || form === "number" || (form === "percent" && response.format === "share");
  if (suits) return [];
  const allowed = response.format === "share" ? "a share" : "a number in the response's own unit";
  const example = response.format === "share" ? '"0.5 %" or 0.005' : "5";
  return [fault(at, `${written} does not suit '${response.key}'`, allowed, `write for example ${example}`)];
}

function fault(at: At, found: string, allowed: string, remedy: string): Fault {
  return { path: formatPath(at), found, allowed, remedy };
}
