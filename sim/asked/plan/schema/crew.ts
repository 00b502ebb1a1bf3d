import { z } from "zod";
import { time } from "../../../text/units/index.ts";
import { CREW_RULES } from "../plan.ts";
import { CEILINGS } from "./ceilings.ts";
import { pay } from "./moneyText.ts";
import { quantity, share } from "./readBy.ts";
import { record } from "./record.ts";
import { name } from "./text.ts";
import { whole } from "./whole.ts";

/** A pool of people. */
export function crew() {
  return record({
    name: name().describe("Name of the crew."),
    people: z
      .union([whole(0, CEILINGS.people), z.record(z.string(), whole(0, CEILINGS.people))])
      .describe(
        "How many are there: one number for every shift, or a number by shift name (a shift not named has none).",
      ),
    rule: z
      .enum(CREW_RULES)
      .default("furthest downstream")
      .describe("Which of the waiting stations gets a person who is free."),
    walking: quantity(time)
      .prefault("0 s")
      .describe("Time to walk to another station than the last one; it counts as work. Default: none."),
    absent: share()
      .prefault(0)
      .describe("Chance of each person, on their own, to be missing for the whole day. Default: 0."),
    pay: pay().nullable().default(null).describe('Of one person; needs "money". Default: null, not reckoned.'),
  });
}
