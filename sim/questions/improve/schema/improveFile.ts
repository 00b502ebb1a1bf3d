import { z } from "zod";
import {
  freeText,
  moneyAmount,
  name,
  oneKeyOf,
  record,
  share,
  shareAboveZero,
  whole,
} from "../../../asked/plan/index.ts";
import { amountAboveZero, planReference, seed } from "../../../asked/study/index.ts";
import { offer } from "../../options/index.ts";
import { GOALS } from "../goal.ts";
import { gaps, moments } from "./moments.ts";
import { week } from "./weekEntries.ts";

const MAX_TOTAL = 100_000;
const MAX_ELEMENTS = 50;
/** Every set of options is counted. */
const MAX_OPTIONS = 16;
const MAX_LIMITS = 20;
const MAX_DAYS = 100_000;
const MAX_DESIGNS = 1000;
const MAX_FINALISTS = 20;
const DAYS_OF_YEAR = 366;

/** The shape of the file. What it says of the plan is checked by `readImprove`. */
export function improveFile() {
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the question."),
    question: freeText().default("").describe("What is to be decided, in a sentence."),
    plan: planReference().describe(
      "The plan as it is: the path of its file, from the folder of this one, or the plan itself.",
    ),
    baseName: name().prefault("as it is").describe("What the plan as it is is called."),
    seed: seed().prefault("1").describe("Any text or whole number; the same seed gives the same results."),
    goal: z
      .enum(GOALS)
      .describe(
        "What is to be had: most carcasses an hour, most margin of the day (it needs money and prices in the plan), " +
          "least cost without the animals (it needs money), or least overtime; of a plan with a week all but the first over the whole week.",
      ),
    allocate: oneKeyOf({
      places: places().optional(),
      people: people().optional(),
      budget: budget().optional(),
      times: times().optional(),
      week: week().optional(),
    }),
    orders: shareAboveZero()
      .optional()
      .describe(
        'Of the orders of the plan\'s week, the share that is late has to stay below this: "2 %". Default: not more are late than today.',
      ),
    limits: z
      .array(
        record({
          limit: name().describe("Name of a time limit of the plan."),
          beyond: share().describe('The share of heads outside it has to stay below this: "1 %".'),
        }),
      )
      .max(MAX_LIMITS)
      .default([])
      .describe("Time limits that have to be kept. Default: none."),
    difference: amountAboveZero("5")
      .optional()
      .describe(
        "Smallest difference worth finding, in carcasses an hour, money a day, or as a time. Default: 1 % of what the " +
          "plan as it is does, 2 min of overtime.",
      ),
    probability: z
      .number()
      .min(0.51)
      .max(0.9999)
      .default(0.95)
      .describe(
        "Least probability that the best of the finalists is picked when it is better than the others by that difference.",
      ),
    confidence: z.number().min(0.5).max(0.9999).default(0.95).describe("Of every interval."),
    firstStage: whole(4, MAX_DAYS).default(10).describe("Days of every finalist before any is dropped."),
    atMost: whole(4, MAX_DAYS).default(200).describe("Days of a finalist at which the choice stops undecided."),
    search: search().prefault({}).describe("How much is tried."),
    interest: share()
      .optional()
      .describe(
        'Interest a year, such as "6 %"; for a budget with margin as its goal, to reckon what a purchase costs.',
      ),
    daysPerYear: whole(1, DAYS_OF_YEAR).optional().describe("Working days a year; for the same."),
  });
}

export type ImproveFile = z.output<ReturnType<typeof improveFile>>;

function places() {
  return record({
    ...total("places"),
    among: z
      .array(
        record({
          station: name().describe("A station of the line."),
          from: whole(0, MAX_TOTAL).default(0).describe("Fewest places before it."),
          to: whole(0, MAX_TOTAL).describe("Most places before it."),
        }),
      )
      .min(1)
      .max(MAX_ELEMENTS)
      .describe("The buffers that share them."),
  }).describe("Places before stations.");
}

function people() {
  return record({
    ...total("people"),
    among: z
      .array(
        record({
          crew: name().describe("A crew of the plan, with as many people in every shift that it works."),
          from: whole(0, MAX_TOTAL).default(1).describe("Fewest people; 0 where the plan does without the crew."),
          to: whole(1, MAX_TOTAL).describe("Most people."),
          positions: z
            .array(name())
            .max(MAX_ELEMENTS)
            .default([])
            .describe("Stations that get as many positions as the crew has people. Default: none."),
        }),
      )
      .min(1)
      .max(MAX_ELEMENTS)
      .describe("The crews that share them."),
  }).describe("People of crews, in each shift.");
}

function budget() {
  return record({
    total: moneyAmount().describe("What may be spent."),
    options: z
      .array(offer())
      .min(1)
      .max(MAX_OPTIONS)
      .describe(
        "What can be bought, each once; as in files of options. Two that set the same thing exclude each other.",
      ),
  }).describe("Money for options.");
}

function times() {
  return record({
    among: z
      .array(
        oneKeyOf({
          load: moments("load: the lorry's due time, of a repeated one the first; all repeats move with it").optional(),
          gap: gaps().optional(),
          shift: moments("shift: its start; it keeps its length").optional(),
          break: moments("break: its start; it keeps its length").optional(),
        }),
      )
      .min(1)
      .max(MAX_ELEMENTS)
      .describe("What may be moved."),
  }).describe("Hours of the plan: lorries, shifts, breaks.");
}

function total(what: string) {
  return {
    total: whole(1, MAX_TOTAL).describe(`How many ${what} there are to share out.`),
    least: whole(0, MAX_TOTAL).optional().describe(`Fewest ${what} to use. Default: as few as the elements allow.`),
  };
}

function search() {
  return record({
    days: whole(2, MAX_DAYS).default(5).describe("Days of every design that is tried."),
    designs: whole(1, MAX_DESIGNS).default(40).describe("Most designs that are tried."),
    finalists: whole(2, MAX_FINALISTS).default(6).describe("Designs that the choice is made among."),
    curve: whole(0, MAX_FINALISTS).default(6).describe("Points of the trade-off curve; 0: none."),
  });
}
