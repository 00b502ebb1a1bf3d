import { z } from "zod";
import { mass, rate, time } from "../../../text/units/index.ts";
import { ALLOWANCE_BASES, SHARE_SHAPES } from "../plan.ts";
import { stationBreakdowns } from "./breakdowns.ts";
import { byProducts } from "./byProducts.ts";
import { capital } from "./capital.ts";
import { CEILINGS } from "./ceilings.ts";
import { crewNames } from "./crewNames.ts";
import { point } from "./limit.ts";
import { pace } from "./pace.ts";
import { quantity, quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";
import { settings } from "./settings.ts";
import { name, reference, saidText } from "./text.ts";
import { utilities } from "./utilities.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

const MAX_PER_KG = 10;

/** Keys that every stage of the line has. */
export function commonParts(varying: VaryingQuantities) {
  return {
    name: name().describe("Name of the stage."),
    section: name().prefault("line").describe("Stretch of the line it is counted in for work in process."),
    travel: varying.time
      .nullable()
      .default(null)
      .describe("Time from leaving this stage to reaching the next. Default: null, none."),
    ...ways(),
    takesOff: byProducts(),
    ...utilities(),
    capital: capital(),
    settings: settings(),
  };
}

/** Where heads go from a stage. */
function ways() {
  return {
    next: reference()
      .nullable()
      .default(null)
      .describe("Stage heads go to from here. Default: null, the next in the list that is not off the line."),
    offLine: z
      .boolean()
      .default(false)
      .describe("Off the line: heads come only when another stage sends them. Default: false."),
    leftOut: z
      .boolean()
      .default(false)
      .describe("Left out of the plant, as if it were not written; nothing else may name it. Default: false."),
    removals: z
      .array(removal())
      .max(CEILINGS.removals)
      .default([])
      .describe("Heads that leave the line for good when the work of this stage on them ends. Default: none."),
    diversions: z
      .array(diversion())
      .max(CEILINGS.diversions)
      .default([])
      .describe("Heads sent to another stage when the work here ends; no head is sent from here twice. Default: none."),
  };
}

function removal() {
  return record({
    as: name().describe("Where these heads are counted, such as condemned."),
    ...shares(),
  });
}

function diversion() {
  return record({
    to: reference().describe("Stage they are sent to."),
    ...shares(),
  });
}

function shares() {
  return {
    share: share().optional().describe('Share of the heads that the stage works on. Either this or "shareBy".'),
    shareBy: shareBy()
      .optional()
      .describe('Share that depends on the live weight or on how long a head waited. Either this or "share".'),
  };
}

/** Keys of every station, on a chain or not. */
export function workParts(varying: VaryingQuantities) {
  return {
    positions: whole(1, CEILINGS.positions).default(1).describe("Heads worked on side by side."),
    cycle: varying.timeAboveZero.optional().describe('Time for one head at one position. Either this or "rate".'),
    rate: quantityAboveZero(rate)
      .optional()
      .describe('Heads per time of one position, always the same. Either this or "cycle".'),
    pace: pace(),
    weightFactor: record({
      perKg: z
        .number()
        .min(-MAX_PER_KG)
        .max(MAX_PER_KG)
        .describe("Part of the cycle that one kilogram of live weight more adds: 0.2 for a fifth."),
      at: quantityAboveZero(mass).describe("Live weight at which the cycle is as written."),
    })
      .nullable()
      .default(null)
      .describe("How the cycle grows with the live weight; never below a tenth of it. Default: null, not at all."),
    changeover: quantity(time)
      .nullable()
      .default(null)
      .describe("Time that a position takes before the first head of another lot. Default: null, none."),
    allowance: allowance(),
    learning: record({
      rate: share().describe("What the time for one head falls to with each doubling of the heads done: 90 %."),
      known: whole(2, CEILINGS.heads).describe("Heads done at a position after which the cycle is as written."),
      done: whole(1, CEILINGS.heads)
        .default(1)
        .describe("Heads done at each position before the first day. Default: 1."),
    })
      .nullable()
      .default(null)
      .describe("People who still learn the work (Wright 1936, read for units). Default: null, they know it."),
    crew: crewNames("Crew that holds each position for the whole cycle."),
    peoplePerPosition: whole(1, CEILINGS.peoplePerPosition).default(1).describe("People it takes at each position."),
    breakdowns: stationBreakdowns(varying),
  };
}

/** Rest that people take between heads, more of it the longer the shift. */
function allowance() {
  const step = record({
    after: quantity(time).describe("So long after the start of the shift."),
    share: share().describe("From then on until the next entry."),
  });
  return record({
    steps: z.array(step).min(1).max(CEILINGS.paces).describe("Shares by the time since the start of the shift."),
    of: z
      .enum(ALLOWANCE_BASES)
      .default("basic time")
      .describe(
        'Shares of the cycle as written, which is "basic time" (default), or of the "shift", work and rest together.',
      ),
    source: saidText().describe("Where the shares come from: a time study, an agreement, a handbook with its edition."),
  })
    .nullable()
    .default(null)
    .describe("Rest allowances, which lengthen the cycle over the shift. Default: null, none.");
}

/** A share that depends on the head's live weight, or on the time it took between two points of its way. */
function shareBy() {
  const atWeight = record({
    at: quantityAboveZero(mass).describe("Live weight."),
    share: share().describe("Share of heads of that weight."),
  });
  const atTime = record({
    at: quantity(time).describe("Time between the two points."),
    share: share().describe("Share of heads that took that time."),
  });
  return record({
    weight: z
      .array(atWeight)
      .min(1)
      .max(CEILINGS.sharePoints)
      .optional()
      .describe('The share by live weight, lightest first. Either this or "time".'),
    time: z
      .array(atTime)
      .min(1)
      .max(CEILINGS.sharePoints)
      .optional()
      .describe('The share by the time from "from" to "to", shortest first. Either this or "weight".'),
    from: point().optional().describe("With time: where it starts."),
    to: point().optional().describe("With time: where it ends. Default: the end of the work of this stage."),
    between: z
      .enum(SHARE_SHAPES)
      .default("a line")
      .describe("Whether the share runs straight from point to point, or goes in steps: each holds from its point on."),
  });
}
