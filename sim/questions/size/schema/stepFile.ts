import { z } from "zod";
import {
  name,
  quantity,
  quantityAboveZero,
  record,
  saidText,
  share,
  stationBreakdowns,
  type VaryingQuantities,
  whole,
} from "../../../asked/plan/index.ts";
import { flow, power, rate, volume } from "../../../text/units/index.ts";
import { ZONES } from "../zones.ts";

const MAX_PLACES = 100_000;
const MAX_POSITIONS = 64;
const MAX_PEOPLE = 20;
const MAX_BY_PRODUCTS = 50;

export const KINDS_OF_WORK = ["manual", "machine", "dwell", "chilling"] as const;

/** What a demand says of one step; keys left out are those of the usual step of that name. */
export function stepFile(varying: VaryingQuantities) {
  return record({
    work: z
      .enum(KINDS_OF_WORK)
      .optional()
      .describe('By hand, by a machine, a dwell such as bleeding, or "chilling", whose time is computed.'),
    after: saidText()
      .optional()
      .describe("Step that a step of your own comes after; only for names that are no usual step."),
    zone: z
      .enum(ZONES)
      .optional()
      .describe(
        "Where its people work; nobody works in two zones. Default: that of the usual step, or of the step before.",
      ),
    leftOut: z.boolean().optional().describe("The plant does without it."),
    cycle: varying.timeAboveZero
      .optional()
      .describe("Time for one head at one position, measured by the stopwatch, say."),
    rate: quantityAboveZero(rate).optional().describe("Heads per time of one machine. Either this or cycle."),
    dwell: varying.time.optional().describe("Least stay of a head in a dwell."),
    people: whole(1, MAX_PEOPLE).optional().describe("People at each position of a manual step. Default: 1."),
    positions: whole(1, MAX_POSITIONS)
      .optional()
      .describe("So many positions, whatever the load on them. Default: as many as needed."),
    places: whole(0, MAX_PLACES)
      .optional()
      .describe("Places before the positions, or of the dwell. Default: as many as needed."),
    travel: varying.time.nullable().optional().describe("Time to the next step."),
    breakdowns: stationBreakdowns(varying).optional(),
    takesOff: z
      .array(
        record({ name: name().describe("Name of the by-product."), share: share().describe("Share of live weight.") }),
      )
      .max(MAX_BY_PRODUCTS)
      .optional()
      .describe("By-products taken off the head."),
    waterPerHead: quantity(volume).optional().describe("Water for each head."),
    waterPerHour: quantity(flow).optional().describe("Water used as long as the crew is there."),
    power: quantity(power).optional().describe("Power of one machine, drawn as long as the line runs."),
  });
}

export type StepFile = z.output<ReturnType<typeof stepFile>>;
