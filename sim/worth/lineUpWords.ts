import type { LineUp } from "./lineUp.ts";

/** What was found, in sentences: which may be the best of all; each option, the best first; what is not reckoned. */
export function lineUpWords(found: Omit<LineUp, "words">): string[] {
  const ranked = found.options.toSorted((a, b) => b.worth.perYear.mean - a.worth.perYear.mean);
  return [
    bestWords(found),
    ...ranked.map(({ words }) => words),
    "Not in it: taxes, inflation, training, building work, and days lost while it is put in.",
  ];
}

/** Which may be the best, buying nothing included. */
function bestWords({ options, nothing, confidence }: Omit<LineUp, "words">): string {
  const percent = `${Number((confidence * 100).toFixed(2))} %`;
  const sound = options.filter(({ harm }) => harm === null);
  const may = sound.filter((option) => option.againstBest.mayBeBest).map(({ name }) => `"${name}"`);
  const names = nothing.mayBeBest ? [...may, "buying nothing"] : may;
  const words =
    names.length === 0
      ? "What earns most breaks a limit more often than the plan as it is: none of what may be best by its yearly amount is to be bought"
      : names.length === 1
        ? `The best of the line-up by its yearly amount is ${names[0]}`
        : `The best by its yearly amount may be ${names.join(", ")}`;
  return `${words}, at ${percent} for all comparisons at once; options are taken one at a time, not together.`;
}
