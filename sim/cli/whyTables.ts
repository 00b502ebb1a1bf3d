import { slopeName, WHY_NOTE, whyWords } from "../../viz/words/index.ts";
import { formatRange, formatResponse, type ResponseInfo } from "../observations/index.ts";
import type { MeanEstimate, SlopeEstimate, Why } from "../results/index.ts";
import { textTable } from "./textTable.ts";

const DURATION: ResponseInfo = { key: "", label: "", unit: "s", format: "duration", better: null };
const SHARE: ResponseInfo = { ...DURATION, format: "share" };
const MOST_PARTS = 12;
const MOST_SLOPES = 10;

/** Where the time to the end of work went, in the sentences of the report. */
export function whereTimeWent(why: Why): string[] {
  return ["Where the time went", ...whyWords(why).map((line) => `  ${line}`), `  ${WHY_NOTE}`];
}

/** What the end of work was owed to, most first; then the slopes and the momentary bottleneck. */
export function whyTables(why: Why): string[] {
  return [...partsTable(why), "", ...slopesTable(why), "", ...bottleneckTable(why)];
}

/** The parts alone: all that one day is asked for. */
export function partsTable({ parts, total }: Why): string[] {
  const shown = parts.slice(0, MOST_PARTS);
  const rest = total.mean - shown.reduce((sum, { seconds }) => sum + seconds.mean, 0);
  const rows = shown.map(({ label, seconds }) => [label, ...cells(seconds, DURATION), share(seconds.mean, total.mean)]);
  const others = parts.length > shown.length ? [["all else", format(rest, DURATION), "", share(rest, total.mean)]] : [];
  return textTable([...rows, ...others]);
}

/** Only slopes that hold, each for a step small against its mean: what a change is worth has to be simulated. */
function slopesTable({ slopes }: Why): string[] {
  const sure = slopes.filter(({ caution, meanSeconds }) => caution === null && meanSeconds > 0);
  const strongest = [...sure].sort((a, b) => strength(b) - strength(a)).slice(0, MOST_SLOPES);
  if (strongest.length === 0) return [];
  const rows = strongest.map((found) => {
    const step = stepOf(found.meanSeconds);
    return [
      slopeName(found),
      `each ${Number(step.toPrecision(1))} s more`,
      ...cells(times(found.slope, step), DURATION),
    ];
  });
  return [
    "Near today's value, a longer mean time makes work end later by (small changes only)",
    ...textTable(rows).map((line) => `  ${line}`),
  ];
}

/** What a change of the mean by a share of itself would do. */
function strength({ slope, meanSeconds }: SlopeEstimate): number {
  return Math.abs(slope.mean) * meanSeconds;
}

/** The power of ten between a hundredth and a tenth of the mean. */
function stepOf(meanSeconds: number): number {
  return 10 ** (Math.floor(Math.log10(meanSeconds)) - 1);
}

function times(estimate: MeanEstimate, by: number): MeanEstimate {
  const scaled = (value: number | null) => (value === null ? null : value * by);
  return { ...estimate, mean: estimate.mean * by, low: scaled(estimate.low), high: scaled(estimate.high) };
}

function bottleneckTable({ bottleneck }: Why): string[] {
  if (bottleneck.length === 0) return [];
  const sorted = [...bottleneck].sort((a, b) => b.sole.mean + b.shifting.mean - a.sole.mean - a.shifting.mean);
  const rows = sorted.map(({ stage, sole, shifting }) => {
    return [stage, ...cells(sole, SHARE), ...cells(shifting, SHARE)];
  });
  const header = ["Momentary bottleneck", "alone", "", "with others", ""];
  return textTable([header, ...rows]);
}

function cells(found: MeanEstimate, info: ResponseInfo): [string, string] {
  const { mean, low, high } = found;
  if (low === null || high === null) return [format(mean, info), ""];
  return [format(mean, info), `(${formatRange(format(low, info), format(high, info))})`];
}

function format(value: number, info: ResponseInfo): string {
  return formatResponse(value, info, 0);
}

function share(part: number, whole: number): string {
  return `${((part / whole) * 100).toFixed(1)} %`;
}
