import type { ElementaryEffects, ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/** A factor with what it does to a response. */
export interface FactorEffect {
  name: string;
  effects: ElementaryEffects;
}

/** The factors of a screening with an effect on a response, the one that matters most first; empty for other designs. */
export function rankedEffects({ screening, factors }: StudyResults, { key }: ResponseInfo): FactorEffect[] {
  const found = screening?.[key] ?? [];
  return factors
    .flatMap(({ name }, index) => {
      const effects = found[index];
      return effects ? [{ name: isolated(name), effects }] : [];
    })
    .sort((a, b) => b.effects.muStar - a.effects.muStar);
}

const TOLD = 3;

/** Which factors matter most, in sentences. */
export function screeningWords(results: StudyResults, info: ResponseInfo, format: ResponseFormat): string[] {
  const ranked = rankedEffects(results, info);
  if (ranked.length === 0) return ["No effect of any factor could be worked out."];
  return [
    ...ranked.slice(0, TOLD).map(({ name, effects }, rank) => {
      const { muStar, muStarHalfWidth, mu } = effects;
      const size = format.comparison(Math.abs(muStar), muStarHalfWidth).replace(/ \S+$/, "");
      const half =
        muStarHalfWidth === null
          ? ""
          : `, give or take ${format.comparison(muStarHalfWidth, muStarHalfWidth).replace(/ \S+$/, "")}`;
      const way = Math.abs(mu) < muStar / 2 ? "; up or down depends on the other factors" : "";
      const place = rank === 0 ? "matters most" : "comes next";
      return `\u201C${name}\u201D ${place}: over its whole range it changes the result by ${size} on average${half}${way}.`;
    }),
    ...(ranked.length > TOLD
      ? [
          `The other ${ranked.length - TOLD === 1 ? "factor is" : `${ranked.length - TOLD} factors are`} in the picture and the table.`,
        ]
      : []),
  ];
}
