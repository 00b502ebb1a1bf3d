import { z } from "zod";
import { time, volume } from "../../../text/units/index.ts";
import { BREAK_ENDS } from "../plan.ts";
import { CEILINGS } from "./ceilings.ts";
import { clock, quantity, quantityAboveZero } from "./readBy.ts";
import { oneKeyOf, record } from "./record.ts";
import { name, reference } from "./text.ts";
import { whole } from "./whole.ts";

const MIDNIGHT_WORDS = "Hours from 24 on are those of the next day.";

/** The calendar of one day. */
export function day() {
  return record({
    start: clock()
      .optional()
      .describe("When the clock of the simulated day starts. Default: the start of the first shift."),
    shifts: shifts().describe("One after another; gaps are allowed, overlaps are not."),
    breaks: breaks().default([]).describe("Planned pauses. Default: none."),
    closing: closing()
      .prefault({ finish: true })
      .describe(
        "How the day ends: finish all that arrived, with overtime if need be (default), or stop hanging at an hour.",
      ),
    preStart: quantity(time)
      .prefault("0 s")
      .describe(
        "Checks before the first head: the crews begin so much after the start of the first shift. Default: none.",
      ),
    cleaning: record({
      length: quantityAboveZero(time)
        .optional()
        .describe('How long it takes, after the last work. Either this, or "sections", or both.'),
      sections: z
        .array(cleanedSection())
        .max(CEILINGS.stages)
        .default([])
        .describe("Sections that are cleaned each as soon as nothing comes there any more. Default: none."),
      crews: z.array(reference()).max(CEILINGS.crews).optional().describe("Crews that clean. Default: every crew."),
    })
      .nullable()
      .default(null)
      .describe("Cleaning at the end of the day. Default: null, none."),
    safeStop: record({
      from: reference().describe("Stage whose starting is held back when a planned stop is due."),
      to: reference().describe("Stage at whose end a head is through."),
    })
      .nullable()
      .default(null)
      .describe(
        "Stretch that must be empty before those who work on it leave for a break, so that no stunned animal is left unbled. Default: null, none.",
      ),
    ceiling: quantityAboveZero(time)
      .prefault("48 h")
      .describe("The run stops, and says so, when the day has lasted this long; counted from its start."),
  });
}

/** One section's cleaning. */
function cleanedSection() {
  return record({
    section: reference().describe("Section of the line."),
    length: quantityAboveZero(time).describe("How long it takes with so many people."),
    people: whole(1, CEILINGS.people).default(1).describe("How many of the crews that clean it takes. Default: 1."),
    water: quantity(volume)
      .nullable()
      .default(null)
      .describe('What it uses; needs "utilities". Default: null, not reckoned.'),
  });
}

/** The shifts of a day. */
export function shifts() {
  return z.array(shift()).min(1).max(CEILINGS.shifts);
}

/** The breaks of a day. */
export function breaks() {
  return z.array(pause()).max(CEILINGS.breaks);
}

function shift() {
  return record({
    name: name().describe("Name of the shift; crews give their people by it."),
    from: clock().describe("Start of the shift."),
    to: clock().describe(`End of the shift. ${MIDNIGHT_WORDS}`),
  });
}

function pause() {
  return record({
    name: name().describe("Name of the break."),
    at: clock().describe("When it starts; a head in hand is finished first."),
    length: quantityAboveZero(time).describe("How long it lasts."),
    ends: z
      .enum(BREAK_ENDS)
      .default("after its length")
      .describe(
        'For who had a head to finish first: "after its length", so that everybody has the whole break (default), or "at its time", for all at once.',
      ),
    crews: z.array(reference()).max(CEILINGS.crews).optional().describe("Crews that go. Default: every crew."),
    later: z
      .record(reference(), quantity(time))
      .prefault({})
      .describe(
        'Crews that go and come back so much later than "at", so that the line runs empty in the order of the work and no stunned animal waits.',
      ),
    stages: z
      .array(reference())
      .max(CEILINGS.stages)
      .optional()
      .describe("Stages whose machines pause too. Default: none."),
  });
}

/** How a day ends. */
export function closing() {
  return oneKeyOf({
    finish: z
      .literal(true)
      .optional()
      .describe("Everything that arrived is processed, with overtime after the last shift."),
    stopHangingAt: clock()
      .optional()
      .describe("No head is hung after this hour; what hangs is finished, the rest stays in lairage."),
  });
}
