import type { SlopeColumns } from "../charts/index.ts";
import type { SlopeEstimate, StudyResults, VariantResults, Why } from "../contract.ts";
import { decimalsFor, formatNumber, intervalDecimals, isolated } from "../frame/index.ts";
import { rankedSlopes, slopeName, spanEstimate, timesEstimate } from "../words/index.ts";
import { whyScope } from "./bindingView.ts";

const MOST_ROWS = 10;
const MINUTE = 60;

/**
 * How the end of a variant's work moves with the means that matter most, in the order of what the same relative change of
 * each would bring. A slope that one run cannot tell for sure refers to its caution below the picture. Uptimes are left out:
 * a tenth more of one does what a tenth less of its repair time does.
 */
export function slopeView(results: StudyResults, variant: VariantResults, why: Why): SlopeColumns {
  const told = rankedSlopes(why.slopes.filter(({ parameter }) => parameter !== "uptime")).slice(0, MOST_ROWS);
  const cautions = [...new Set(told.flatMap(({ caution }) => (caution === null ? [] : [caution])))];
  const rows = told.map((slope) => {
    const note = slope.caution === null ? 0 : cautions.indexOf(slope.caution) + 1;
    const { mean, low, high } = timesEstimate(slope.slope, 1 / MINUTE);
    return {
      name: slopeName(slope),
      minutesPerSecond: mean,
      low,
      high,
      valid: note === 0,
      note: slope.caution === null ? "" : isolated(slope.caution),
      text: [
        slopeText(slope),
        [tenth(slope), note === 0 ? "" : `note ${note}`].filter((part) => part !== "").join("; "),
      ]
        .filter((line) => line !== "")
        .join("\n"),
    };
  });
  return {
    title: "What a second of each mean time is worth",
    caption: "Uppermost: where the same relative change of a time moves the end of work most",
    subtitle: `${whyScope(results, variant)}. Filled dot: the slope holds for small changes; open dot: a hint only, see the notes`,
    description: describe(told),
    rows,
    footnotes: cautions.map((caution, index) => `Note ${index + 1}: ${isolated(caution)}: a hint only.`),
  };
}

/** "+18.3 (+17.0 to +19.6)", minutes per second. */
function slopeText({ slope }: SlopeEstimate): string {
  const { mean, low, high, halfWidth } = timesEstimate(slope, 1 / MINUTE);
  const decimals = Math.min(
    3,
    halfWidth === null ? decimalsFor(Math.abs(mean) / 10, 1) : halfWidth > 0 ? intervalDecimals(halfWidth) : 2,
  );
  const signed = (value: number) => {
    const text = formatNumber(value, decimals);
    return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
  };
  return low === null || high === null ? signed(mean) : `${signed(mean)} (${signed(low)} to ${signed(high)})`;
}

/** What a tenth less of the mean would bring; nothing for a dwell, which is no time to save. */
function tenth({ parameter, slope, meanSeconds }: SlopeEstimate): string {
  if (meanSeconds === 0 || parameter === "dwell") return "";
  const gain = spanEstimate({ ...slope, mean: (Math.abs(slope.mean) * meanSeconds) / 10, low: null, high: null });
  return `10 % less: ${gain} ${slope.mean < 0 ? "later" : ""}`.trim();
}

function describe(slopes: readonly SlopeEstimate[]): string {
  const first = slopes[0];
  if (first === undefined) return "No time of this plan has a slope.";
  const all = slopes.map((slope) => `${slopeName(slope)} ${slopeText(slope)}`).join("; ");
  const care = first.caution === null ? "" : ` (take care: ${isolated(first.caution)})`;
  return `The end of work moves most with ${slopeName(first)}, ${slopeText(first)} min/s${care}. Minutes by which work ends later for each second more: ${all}.`;
}
