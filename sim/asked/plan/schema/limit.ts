import { time } from "../../../text/units/index.ts";
import { readPoint } from "../readPoint.ts";
import { quantity, quantityAboveZero, readBy } from "./readBy.ts";
import { record } from "./record.ts";
import { name, saidText } from "./text.ts";

/** A watched time between two points of a head's way. */
export function limit() {
  return record({
    name: name().describe("Name of the limit."),
    from: point().describe("Where the time starts."),
    to: point().describe("Where it ends; further down the line."),
    min: quantity(time).nullable().default(null).describe("Least time. Default: null, none."),
    max: quantityAboveZero(time).nullable().default(null).describe("Most time. Default: null, none."),
    source: saidText().describe("Where the limit comes from: the law, guide or house rule, in words."),
  });
}

/** A point of a head's way, in words. */
export function point() {
  return readBy(readPoint, {
    type: "string",
    pattern: "^(arrival|leaving the line|(entry to|start of|end of|exit from) .+)$",
    examples: [
      "arrival",
      "entry to skinning",
      "start of skinning",
      "end of stunning",
      "exit from chilling",
      "leaving the line",
    ],
  });
}
