import { z } from "zod";
import { name, record, whole } from "../../plan/index.ts";
import { amount, amountAboveZero } from "./amount.ts";

export const DEFAULT_REPLICATIONS = 20;
const MAX_REPLICATIONS = 100_000;
const MAX_CONTROLS = 10;

/** How often each variant is run: a number of days, or a rule that adds days. */
export function replications() {
  return z.union([whole(1, MAX_REPLICATIONS), record({ until: until() })]).meta({
    description:
      "How many days are simulated of every variant: a number, or a rule that adds days, as many to every variant, " +
      `until the intervals are narrow enough. Default: ${DEFAULT_REPLICATIONS}.`,
  });
}

function until() {
  return record({
    response: name().describe("Key of the response whose intervals are looked at."),
    halfWidth: amountAboveZero('"1 %"').describe(
      'Wanted half-width: "1 %" of the mean, a number in the response\'s own unit, or a time such as "2 min".',
    ),
    of: z
      .enum(["mean", "difference"])
      .default("mean")
      .describe("Whether the interval of each variant's mean counts, or that of its difference to the base."),
    atLeast: whole(2, MAX_REPLICATIONS).default(10).describe("Days of every variant before the first look."),
    atMost: whole(2, MAX_REPLICATIONS).default(200).describe("Days of every variant at which the run stops anyhow."),
  }).describe("Stops when every variant's interval is narrow enough, or at the most days; the report says which.");
}

/** Responses with known means, to take luck out of the estimates. */
export function controls() {
  return z
    .array(
      record({
        response: name().describe("Key of a response whose mean over many days is known for every variant."),
        mean: amount("720").describe("That mean: a number in the response's own unit, a percentage of shares, a time."),
      }),
    )
    .max(MAX_CONTROLS)
    .describe(
      "Control variates: what these responses missed their known means by is taken out of the other estimates by " +
        "regression. A variant that changes such a mean makes its estimates wrong. Default: none.",
    );
}

/** The least differences that matter to whoever asks. */
export function matters() {
  return z
    .array(
      record({
        response: name().describe('Key of a response, or "money": what a change brings or costs a day.'),
        difference: amountAboveZero("5").describe(
          'Least difference that matters: a number in the response\'s own unit, a time such as "5 min", of shares also "0.5 %".',
        ),
      }),
    )
    .max(MAX_CONTROLS)
    .describe(
      "Differences below these are told as too small to act on, however sure they are. Default: 5 min of an end of the " +
        "day, 0.1 % of the heads, 1 % of any other value, 0.5 % of a day's costs.",
    );
}

/** The choice of the best variant. */
export function selection() {
  return record({
    response: name().describe("Key of the response by which the best variant is picked."),
    better: z
      .enum(["more", "less"])
      .optional()
      .describe("Which direction is wanted. Default: the response's own, such as more heads per hour."),
    difference: amountAboveZero("5").describe(
      'Smallest difference worth finding, in the response\'s own unit: 5, or "2 min"; of shares also "0.5 %".',
    ),
    probability: z
      .number()
      .min(0.51)
      .max(0.9999)
      .default(0.95)
      .describe("Least probability that the best variant is picked when it is better than all by that difference."),
    firstStage: whole(4, MAX_REPLICATIONS).default(20).describe("Days of every variant before any is dropped."),
    atMost: whole(4, MAX_REPLICATIONS).default(1000).describe("Days of a variant at which the run stops undecided."),
  }).describe(
    "Picks the best variant, the base included, by running all of them and dropping those that fall behind " +
      "(Kim and Nelson 2001). It decides how many days are run, so it takes the place of replications.",
  );
}
