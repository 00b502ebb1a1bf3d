import { readGateStart } from "../readPoint.ts";
import { CEILINGS } from "./ceilings.ts";
import { point } from "./limit.ts";
import { readBy } from "./readBy.ts";
import { record } from "./record.ts";
import { name } from "./text.ts";
import { whole } from "./whole.ts";

/** At most so many heads between two points of their way. */
export function gate() {
  return record({
    name: name().describe("Name of the gate."),
    from: readBy(readGateStart, { type: "string", pattern: "^start of .+$", examples: ["start of stunning"] }).describe(
      "Where heads are held back: the start of a stage's work.",
    ),
    to: point().describe("Where they count no longer; further down the line."),
    atMost: whole(1, CEILINGS.places).describe("Most heads between the two points."),
  });
}
