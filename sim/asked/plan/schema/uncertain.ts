import { z } from "zod";
import { CEILINGS } from "./ceilings.ts";
import { oneKeyOf, record } from "./record.ts";
import { freeText, name } from "./text.ts";

/** How far from what is written a guess may be, as a share of it. */
const GUESSES = { "a tenth": 1 / 10, "a fifth": 1 / 5, "a quarter": 1 / 4, "a third": 1 / 3, "a half": 1 / 2 } as const;
const GUESS_NAMES = Object.keys(GUESSES) as (keyof typeof GUESSES)[];

const MAX_FACTOR = 100;
const MAX_CV = 3;

/** A figure that nobody knows exactly: where it stands, and what it may be as a multiple of what stands there. */
export function uncertainFigure() {
  return record({
    name: name().describe("What is not known, such as skinning's jams."),
    paths: z
      .array(z.string().max(500))
      .min(1)
      .max(CEILINGS.uncertainPaths)
      .describe(
        'Where it stands, such as "line.skinning.cycle": a quantity, a number or a distribution. Several places go together.',
      ),
    guess: z
      .enum(GUESS_NAMES)
      .optional()
      .describe('A guess that may be wrong by so much, up or down, everything between as likely. Instead of "factor".'),
    factor: factor().optional().describe("What the figure is multiplied by, where more than a guess is known."),
    kind: z
      .enum(["guess", "measured"])
      .optional()
      .describe('With "factor", and needed there: whether it comes from measurements, or is a guess.'),
    readings: z
      .int()
      .min(2)
      .max(CEILINGS.readings)
      .optional()
      .describe(
        "With what was measured: from how many readings. gambrel doubt then says what more of them would bring.",
      ),
    note: freeText().default("").describe("Who guessed it, or how it was measured."),
  })
    .superRefine(oneOfBoth)
    .transform(({ guess, factor, kind, readings = null, ...rest }) => ({
      ...rest,
      readings,
      factor:
        guess === undefined
          ? factor!
          : { family: "uniform" as const, min: 1 - GUESSES[guess], max: 1 + GUESSES[guess] },
      kind: kind ?? ("guess" as const),
    }));
}

interface Written {
  paths: readonly string[];
  guess?: string | undefined;
  factor?: { family: string; rows?: readonly (readonly number[])[] } | undefined;
  kind?: string | undefined;
  readings?: number | undefined;
}

function oneOfBoth(written: Written, context: z.core.$RefinementCtx): void {
  const wrong = wrongIn(written);
  if (wrong === null) return;
  const [path, found, allowed, remedy] = wrong;
  context.addIssue({ code: "custom", path, params: { found, allowed, remedy } });
}

type Wrong = [path: string[], found: string, allowed: string, remedy: string];

function wrongIn({ paths, guess, factor, kind, readings }: Written): Wrong | null {
  if ((guess === undefined) === (factor === undefined)) {
    const found = guess === undefined ? 'neither "guess" nor "factor"' : 'both "guess" and "factor"';
    return [[], found, "one of the two", 'write for example "guess": "a third"'];
  }
  if (guess !== undefined && kind === "measured")
    return [["kind"], '"measured" beside "guess"', '"guess", or nothing', 'write "factor" for what was measured'];
  if (factor !== undefined && kind === undefined)
    return [[], 'a "factor" without "kind"', '"kind": "guess" or "measured"', "say whether it was measured"];
  if (readings !== undefined && kind !== "measured")
    return [
      ["readings"],
      "readings of a guess",
      "readings of what was measured",
      'write "kind": "measured", or leave them out',
    ];
  const uneven = factor?.rows?.find((row) => row.length !== 1 && row.length !== paths.length);
  if (uneven === undefined) return null;
  const found = `a draw of ${uneven.length} numbers for ${paths.length} paths`;
  return [["factor", "draws"], found, "one number, or one for each path", "give every draw as many"];
}

function factor() {
  const positive = z.number().gt(0).max(MAX_FACTOR);
  const end = z.number().min(0).max(MAX_FACTOR);
  const [min, max] = [end.describe("Smallest factor."), positive.describe("Largest factor.")];
  const mode = end.describe("Most likely factor.");
  const mean = positive.describe("Mean factor: 1 where the figure as written is right on average.");
  const cv = z.number().gt(0).max(MAX_CV).describe("Coefficient of variation: standard deviation divided by mean.");
  const sd = positive.describe("Standard deviation, before the cut at 0.");
  const row = z.union([positive, z.array(positive).min(1).max(CEILINGS.uncertainPaths)]);
  return oneKeyOf({
    uniform: record({ min, max })
      .superRefine(inOrder)
      .transform((given) => ({ family: "uniform" as const, ...given }))
      .optional()
      .describe("Every factor from min to max is equally likely."),
    triangular: record({ min, mode, max })
      .superRefine(inOrder)
      .transform((given) => ({ family: "triangular" as const, ...given }))
      .optional()
      .describe("From min to max, most likely at the mode."),
    lognormal: record({ mean, cv })
      .transform((given) => ({ family: "lognormal" as const, ...given }))
      .optional()
      .describe("Skewed to the right, never 0."),
    normal: record({ mean, sd })
      .transform((given) => ({ family: "normal" as const, ...given }))
      .optional()
      .describe("Normal, cut at 0 and renormalised; mean and sd are those before the cut."),
    draws: z
      .array(row)
      .min(2)
      .max(CEILINGS.observedValues)
      .transform((written) => ({ family: "draws" as const, rows: written.map((each) => [each].flat()) }))
      .optional()
      .describe("Factors each as likely as the others: a number for all paths, or a list with one for each path."),
  }).transform((chosen) => Object.values(chosen).find((each) => each !== undefined)!);
}

function inOrder(given: { min: number; mode?: number; max: number }, context: z.core.$RefinementCtx): void {
  const { min, mode = min, max } = given;
  if (min < max && min <= mode && mode <= max) return;
  const found = min < max ? "the mode lies outside min to max" : "min is not smaller than max";
  const allowed = min < max ? "min <= mode <= max" : "min < max";
  context.addIssue({ code: "custom", params: { found, allowed, remedy: "put the values in order" } });
}
