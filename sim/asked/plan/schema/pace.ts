import { z } from "zod";
import { rate } from "../../../text/units/index.ts";
import { CEILINGS } from "./ceilings.ts";
import { clock, quantityAboveZero } from "./readBy.ts";
import { record } from "./record.ts";

const MIN_SPEED = 0.01;
const MAX_SPEED = 10;

/** How the speed of a station or a chain depends on the hour. */
export function pace() {
  const part = record({
    from: clock().describe("From this hour until that of the next entry."),
    speed: z
      .number()
      .min(MIN_SPEED)
      .max(MAX_SPEED)
      .default(1)
      .describe("Speed as a part of the one that is written: 0.8 for four fifths."),
    atMost: quantityAboveZero(rate)
      .nullable()
      .default(null)
      .describe(
        "Upper rate of heads with all positions at work: no position takes less time for one. Default: null, none.",
      ),
  });
  return z
    .array(part)
    .max(CEILINGS.paces)
    .default([])
    .describe("Speed by the hour: a slow start, an upper rate for a time. Default: always as written.");
}
