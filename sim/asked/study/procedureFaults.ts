import type { Fault } from "../plan/index.ts";
import { fault, repeated, twice } from "./factorFaults.ts";
import { untilOf } from "./responseFaults.ts";
import type { StudyFile } from "./schema/studyFile.ts";

type At = readonly (string | number)[];

/** What the keys that say how often and how to compare say of each other. */
export function procedureFaults(file: StudyFile): Fault[] {
  const { responses, controls, selection, replications, design } = file;
  const until = untilOf(file);
  const controlled = controls.map(({ response }) => response);
  return [
    ...repeated(responses).map((index) => twice(["responses", index], responses[index]!, "responses")),
    ...repeated(controlled).map((index) => twice(["controls", index, "response"], controlled[index]!, "controls")),
    ...(until === undefined ? [] : orderFaults(until.atLeast, until.atMost, ["replications", "until"], "atLeast")),
    ...(selection === undefined
      ? []
      : orderFaults(selection.firstStage, selection.atMost, ["selection"], "firstStage")),
    ...(selection !== undefined && replications !== undefined ? [bothRules()] : []),
    ...(selection !== undefined && design === undefined ? [nothingToPick()] : []),
    ...(file.antithetic ? pairFaults(file) : []),
  ];
}

function orderFaults(least: number, most: number, at: At, leastKey: string): Fault[] {
  if (least <= most) return [];
  return [fault([...at, leastKey], `${least}, more than atMost, which is ${most}`, `${most} or less`, "")];
}

function bothRules(): Fault {
  const found = "the selection already decides how many days are run";
  return fault(["replications"], found, "one of the two", 'delete it, or delete "selection"');
}

function nothingToPick(): Fault {
  return fault(
    ["selection"],
    "the base is the only variant, so there is nothing to pick",
    "a selection with a design",
    "add a design",
  );
}

/** Days in antithetic pairs come in even numbers, and no interval has fewer than two observations. */
function pairFaults(file: StudyFile): Fault[] {
  const until = untilOf(file);
  const numbers: [At, number, number][] = [];
  if (typeof file.replications === "number") numbers.push([["replications"], file.replications, 2]);
  if (until !== undefined)
    numbers.push(
      [["replications", "until", "atLeast"], until.atLeast, 4],
      [["replications", "until", "atMost"], until.atMost, 4],
    );
  if (file.selection !== undefined)
    numbers.push(
      [["selection", "firstStage"], file.selection.firstStage, 4],
      [["selection", "atMost"], file.selection.atMost, 4],
    );
  return numbers.flatMap(([at, number, least]) => {
    if (number % 2 === 0 && number >= least) return [];
    const allowed = `an even number from ${least} on, because antithetic days come in pairs`;
    return [fault(at, `${number} days`, allowed, "")];
  });
}
