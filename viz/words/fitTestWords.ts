import { formatDecimals } from "../../sim/text/units/index.ts";
import type { FamilyFit } from "../contract.ts";

/** The two tests of a fit in a few words each. */
export function fitTestWords({ test }: FamilyFit): string[] {
  if (test === null) return ["tests: no answer"];
  const { kolmogorov, andersonDarling } = test;
  return [
    `D ${formatDecimals(kolmogorov.statistic, 3)}, ${pWords(kolmogorov.p)}`,
    `A\u00B2 ${formatDecimals(andersonDarling.statistic, 2)}, ${pWords(andersonDarling.p)}`,
  ];
}

function pWords(p: number): string {
  return p < 0.01 ? "p < 0.01" : `p ${p.toFixed(2)}`;
}
