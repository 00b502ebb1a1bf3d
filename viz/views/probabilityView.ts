import type { ProbabilityColumns } from "../charts/index.ts";
import type { ColumnFit, FitPicture } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { fitTestWords } from "../words/index.ts";

/** Observed against fitted times of the family that is advised (or foremost); null where nothing was fitted. */
export function probabilityView(fit: ColumnFit, { quantiles }: FitPicture): ProbabilityColumns | null {
  if (quantiles === null) return null;
  const { family, points } = quantiles;
  const band =
    fit.open.length === 0
      ? "Band: where 95 % of such points lie, each on its own, when the fit is right"
      : "No band with open times";
  const tests = fitTestWords(fit.fits.find((each) => each.family === family)!);
  return {
    title: `${isolated(fit.heading)}: observed against fitted, ${family}`,
    caption:
      "Points on the line: the fit is right. Points above it at the right end: long times are longer than fitted; below, shorter",
    subtitle: band,
    description: tests.join("; "),
    fitted: { kind: "number", label: `fitted (${family})`, unit: fit.unit },
    observed: { kind: "number", label: "observed", unit: fit.unit },
    points,
  };
}
