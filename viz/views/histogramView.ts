import { tickStep } from "d3";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { HistogramColumns } from "../charts/index.ts";
import type { ColumnFit, FamilyFit, FitPicture } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { fitTestWords } from "../words/index.ts";

/** Plain steps lie up to a factor of 2.5 apart; this makes the next smaller one the likely choice. */
const FINER = 1.5;

const CAPTION =
  "A curve fits when it follows the bars at both ends, not only in the middle; two humps are two kinds of work";

/** How the times of a column are spread, with the foremost fits. */
export function histogramView(fit: ColumnFit, picture: FitPicture): HistogramColumns {
  const width = binWidth(fit);
  const bins = binsOf(fit, picture, width);
  const curves = picture.densities.map(({ family, x, density }) => ({
    text: curveWords(fit.fits.find((each) => each.family === family)!),
    points: x.map((at, i) => ({ x: at, share: density[i]! * width })),
  }));
  return {
    title: `${isolated(fit.heading)}: times and fits`,
    caption: curves.length === 0 ? "" : CAPTION,
    subtitle: subtitle(fit, picture),
    description: fit.advice.words,
    quantity: { kind: "number", label: isolated(fit.heading), unit: fit.unit },
    bins,
    curves,
  };
}

function subtitle({ ended, open, zeros }: ColumnFit, { densities }: FitPicture): string {
  const times = `${ended.length} times${zeros > 0 ? `, ${zeros} of 0 left out` : ""}`;
  const still = open.length > 0 ? `; ${open.length} still open pass their share on to longer times` : "";
  return `${times}${still}${densities.length > 0 ? ". Curves: lowest AIC first" : ""}`;
}

function curveWords(fit: FamilyFit): string[] {
  const behind = fit.behind === 0 ? "lowest AIC" : `AIC ${formatDecimals(fit.behind, 1)} above`;
  return [fit.family, behind, ...fitTestWords(fit)];
}

/** Freedman and Diaconis 1981, rounded down to a plain step that is a whole multiple of the step of the stopwatch. */
function binWidth({ ended, resolution }: ColumnFit): number {
  if (ended.length === 0) return 1;
  const at = (p: number) => ended[Math.min(ended.length - 1, Math.floor(p * ended.length))]!;
  const span = ended.at(-1)! - ended[0]!;
  const wished = (2 * (at(0.75) - at(0.25))) / Math.cbrt(ended.length) || span / 8;
  const plain = span > 0 ? tickStep(0, span, Math.min(40, Math.max(6, (FINER * span) / wished))) : resolution || 1;
  return resolution > 0 ? Math.max(1, Math.round(plain / resolution)) * resolution : plain;
}

function binsOf({ resolution }: ColumnFit, { steps }: FitPicture, width: number): HistogramColumns["bins"] {
  if (steps.length === 0) return [];
  // Edges lie between two readings of the stopwatch, so that no reading lies on one.
  const start = Math.floor((steps[0]!.time + resolution / 2) / width) * width - resolution / 2;
  const count = Math.floor((steps.at(-1)!.time - start) / width + 1e-9) + 1;
  const shares = new Array<number>(count).fill(0);
  for (const { time, share } of steps) shares[Math.floor((time - start) / width + 1e-9)]! += share;
  return shares.map((share, k) => ({ from: start + k * width, to: start + (k + 1) * width, share }));
}
