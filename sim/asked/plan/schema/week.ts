import { z } from "zod";
import { mass } from "../../../text/units/index.ts";
import { readDate } from "../readDate.ts";
import { CEILINGS } from "./ceilings.ts";
import { breaks, closing, shifts } from "./day.ts";
import { clock, quantityAboveZero, readBy } from "./readBy.ts";
import { record } from "./record.ts";
import { loads } from "./supply.ts";
import { freeText, name, reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

/** Days of at most eight weeks. */
const MAX_WEEK_DAYS = 56;
const MAX_ORDERS = 200;

/** Days one after another. */
export function week(varying: VaryingQuantities) {
  return record({
    begins: readBy(readDate, { type: "string", pattern: "^\\d{4}-\\d{2}-\\d{2}$", examples: ["2031-03-17"] })
      .nullable()
      .default(null)
      .describe("Date of the first day, for calendars and workbooks. Default: null, no dates."),
    days: z
      .array(weekDay(varying))
      .min(1)
      .max(MAX_WEEK_DAYS)
      .describe("In the order of the calendar; days without work belong to it."),
    overnight: overnight()
      .default({})
      .describe(
        "Stages whose heads may stay until the next day, chillers above all, each with the hour until which heads leave it: " +
          "who is in it then, or comes later, stays. Default: none, every day ends with an empty line.",
      ),
    warmUp: whole(0, MAX_WEEK_DAYS - 1)
      .default(0)
      .describe(
        "So many of the first days are simulated and not counted, so that the others begin with what a running plant " +
          "holds in the morning. Default: 0, the first day begins with an empty plant.",
      ),
    machinesAsNew: z
      .boolean()
      .default(false)
      .describe("Machines begin every day as new. Default: false, how long they have run goes on from day to day."),
    orders: z.array(order()).max(MAX_ORDERS).default([]).describe("What is promised to buyers. Default: none."),
  });
}

/** One day: the plan's own day but for what stands here. */
function weekDay(varying: VaryingQuantities) {
  return record({
    name: name().describe("Name of the day, such as Monday."),
    notes: freeText().default("").describe("Anything a reader should know of it."),
    closed: z.boolean().default(false).describe("No work: a holiday, a weekend. Default: false."),
    start: clock().optional().describe("When its clock starts. Default: as in the plan."),
    shifts: shifts().optional().describe("In place of the plan's shifts."),
    breaks: breaks().optional().describe("In place of the plan's breaks."),
    closing: closing().optional().describe("How it ends, in place of the plan's closing."),
    loads: loads(varying).optional().describe("Its lorries, in place of the plan's."),
    people: z
      .record(reference(), z.union([whole(0, CEILINGS.people), z.record(z.string(), whole(0, CEILINGS.people))]))
      .default({})
      .describe("Crews that have another number of people: a number, or a number by shift. Default: none."),
    ill: z
      .record(reference(), whole(1, CEILINGS.people))
      .default({})
      .describe("Crews of which so many people are missing, in every shift that they work. Default: none."),
    down: z
      .array(down())
      .max(CEILINGS.breaks)
      .default([])
      .describe("Stages at which nothing is done for a while, as planned: a head in hand is finished. Default: none."),
    overnight: overnight().default({}).describe("Other hours than the week's. Default: none."),
    set: z
      .record(z.string(), z.unknown())
      .default({})
      .describe("Anything else that is different, by its path in the plan; stages and places stay. Default: none."),
  });
}

function overnight() {
  return z.record(reference(), clock());
}

function down() {
  return record({
    stage: reference().describe("The stage, by the name that results give it."),
    from: clock().describe("From this hour."),
    to: clock().describe("Until this hour."),
  });
}

/** Carcasses promised by a time. */
function order() {
  return record({
    name: name().describe("Name of the order."),
    day: reference().describe("The day by which it is to be ready."),
    by: clock().describe("The hour of that day."),
    carcasses: whole(1, CEILINGS.heads).optional().describe("How many; or give kilograms."),
    kilograms: quantityAboveZero(mass).optional().describe("Their weight; or give carcasses."),
  });
}

export type WeekFile = z.output<ReturnType<typeof week>>;
