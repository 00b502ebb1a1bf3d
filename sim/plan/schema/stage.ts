import { z } from "zod";
import { rate } from "../../units/index.ts";
import { breakdowns } from "./breakdowns.ts";
import { CEILINGS } from "./ceilings.ts";
import { quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";
import { name, reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

/** One stage of the line: a station that works on heads, or a dwell that holds them for a time. */
export function stage(varying: VaryingQuantities) {
  return z.discriminatedUnion("kind", [station(varying), dwell(varying)]);
}

function common(varying: VaryingQuantities) {
  return {
    name: name().describe("Name of the stage."),
    section: name().prefault("line").describe("Stretch of the line it is counted in for work in process."),
    travel: varying.time
      .nullable()
      .default(null)
      .describe("Time from leaving this stage to reaching the next. Default: null, none."),
    removals: z
      .array(removal())
      .max(CEILINGS.removals)
      .default([])
      .describe("Heads that leave the line for good when the work of this stage on them ends. Default: none."),
  };
}

function station(varying: VaryingQuantities) {
  return record({
    ...common(varying),
    kind: z.literal("station").describe("A station: parallel positions with places before them."),
    work: z
      .enum(["machine", "manual"])
      .optional()
      .describe('"manual" needs a crew. Default: "manual" when a crew is named, else "machine".'),
    positions: whole(1, CEILINGS.positions).default(1).describe("Heads worked on side by side."),
    buffer: z
      .union([whole(0, CEILINGS.places), z.null()])
      .default(0)
      .describe("Places before the positions; null for no limit."),
    cycle: varying.timeAboveZero.optional().describe('Time for one head at one position. Either this or "rate".'),
    rate: quantityAboveZero(rate)
      .optional()
      .describe('Heads per time of one position, always the same. Either this or "cycle".'),
    crew: reference()
      .nullable()
      .default(null)
      .describe("Crew that holds each position for the whole cycle. Default: null, nobody."),
    peoplePerPosition: whole(1, CEILINGS.peoplePerPosition).default(1).describe("People it takes at each position."),
    breakdowns: breakdowns(varying),
  });
}

function dwell(varying: VaryingQuantities) {
  return record({
    ...common(varying),
    kind: z.literal("dwell").describe("A dwell: heads stay side by side for at least a time and leave in order."),
    places: z.union([whole(1, CEILINGS.places), z.null()]).describe("Heads it holds; null for no limit."),
    dwell: varying.time.describe("Least time each head stays."),
  });
}

function removal() {
  return record({
    as: name().describe("Where these heads are counted, such as condemned."),
    share: share().describe("Share of the heads that the stage works on."),
  });
}
