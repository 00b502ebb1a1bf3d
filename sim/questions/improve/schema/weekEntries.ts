import { z } from "zod";
import { clock, name, oneKeyOf, record, reference, whole } from "../../../asked/plan/index.ts";
import { GAP, gapKeys, momentKeys } from "./moments.ts";

const MAX_ENTRIES = 50;
const MAX_POSITIONS = 50;
const MAX_DAYS = 56;
const MAX_PEOPLE = 100_000;

/** What of single days may be moved. */
export function week() {
  return record({
    mostPeople: whole(0, MAX_PEOPLE)
      .optional()
      .describe(
        "Most people of all entries of people together, a person counted for each day: so many as are at hand in the week. Default: no bound.",
      ),
    among: z
      .array(
        oneKeyOf({
          load: record({ ...momentKeys(), on: on() })
            .describe("The lorry's due time on that day, of a repeated one the first; all repeats move with it.")
            .optional(),
          gap: record({ ...gapKeys(), on: on() })
            .describe(GAP)
            .optional(),
          shift: record({ ...momentKeys(), on: on() })
            .describe("A shift's start; it keeps its length.")
            .optional(),
          break: record({ ...momentKeys(), on: on() })
            .describe("A break's start; it keeps its length.")
            .optional(),
          day: day().optional(),
          people: people().optional(),
        }),
      )
      .min(1)
      .max(MAX_ENTRIES)
      .describe("What may be moved."),
  }).describe("Days of a plan's week: hours of lorries, shifts and breaks, the day of a load, people of a crew.");
}

function on() {
  return reference().describe("A day of the week on which work is done, and which is counted.");
}

function day() {
  return record({
    load: name().describe("A load of that day."),
    on: on(),
    days: z.array(reference()).min(1).max(MAX_DAYS).describe("Days on which it may come as well."),
    lorries: whole(1, MAX_PEOPLE)
      .optional()
      .describe("Of a load that repeats, so many of the last lorries; the others stay. Default: all of them."),
    at: clock().optional().describe("The hour of the first of them on another day. Default: the hour that it has."),
  }).describe("Lorries that may come on another day.");
}

function people() {
  return record({
    crew: reference().describe("A crew of the plan, with as many people in every shift that it works."),
    on: on(),
    from: whole(0, MAX_PEOPLE).default(1).describe("Fewest people that work on that day."),
    to: whole(1, MAX_PEOPLE).describe("Most people."),
    positions: z
      .array(name())
      .max(MAX_POSITIONS)
      .default([])
      .describe(
        "Stations that get one position more for each person more on that day, one fewer for each fewer. Default: none.",
      ),
  }).describe("People of a crew on one day.");
}
