import { foundWords, type Reading } from "../../text/units/index.ts";
import type { Moment, Point } from "./plan.ts";

const MOMENT_WORDS: Record<string, Moment> = {
  "entry to": "entry",
  "start of": "start",
  "end of": "end",
  "exit from": "exit",
};
const POINT = /^(entry to|start of|end of|exit from) (.+)$/su;

/** Reads a point of a head's way in words: "arrival", "end of stunning". That the stage exists is checked elsewhere. */
export function readPoint(written: unknown): Reading<Point> {
  if (written === "arrival") return { value: { stage: null, moment: "entry" }, fault: null };
  if (written === "leaving the line") return { value: { stage: null, moment: "exit" }, fault: null };
  const parts = typeof written === "string" ? POINT.exec(written) : null;
  if (parts !== null) {
    return { value: { stage: parts[2] as string, moment: MOMENT_WORDS[parts[1] as string] as Moment }, fault: null };
  }
  return {
    value: null,
    fault: {
      found: `${foundWords(written)} is not a point on a head's way`,
      allowed: `"arrival", "leaving the line", or "entry to", "start of", "end of" or "exit from" and the name of a stage`,
      remedy: 'write for example "end of stunning"',
    },
  };
}

/** Reads the place of a gate: the start of a stage's work, as the name of the stage. */
export function readGateStart(written: unknown): Reading<string> {
  const point = readPoint(written).value;
  if (point !== null && point.stage !== null && point.moment === "start") return { value: point.stage, fault: null };
  return {
    value: null,
    fault: {
      found: `${foundWords(written)} is not a place for a gate`,
      allowed: '"start of" and the name of a stage',
      remedy: 'write for example "start of stunning"',
    },
  };
}
