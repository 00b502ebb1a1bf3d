import { formatEstimate, formatResponse, type ResponseInfo } from "../observations/index.ts";
import type { MeanEstimate, SlopeEstimate, Why } from "../results/index.ts";
import { textTable } from "./textTable.ts";

const DURATION: ResponseInfo = { key: "", label: "", unit: "s", format: "duration", better: null };
const SHARE: ResponseInfo = { ...DURATION, format: "share" };
const MOST_PARTS = 12;
const MOST_SLOPES = 10;

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

function slopesTable({ slopes }: Why): string[] {
  const strongest = [...slopes].sort((a, b) => strength(b) - strength(a)).slice(0, MOST_SLOPES);
  if (strongest.length === 0) return [];
  const rows = strongest.map(({ label, slope, caution }) => [label, ...slopeCells(slope), caution ?? ""]);
  return ["One second more of a mean time makes work end later by", ...textTable(rows).map((line) => `  ${line}`)];
}

/** What a change of the mean by a share of itself would do. */
function strength({ slope, meanSeconds }: SlopeEstimate): number {
  return Math.abs(slope.mean) * (meanSeconds || 1);
}

function slopeCells(slope: MeanEstimate): [string, string] {
  return cells(slope, DURATION);
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
  const [mean, range] = formatEstimate(found, info, 0);
  return [mean, range === "" ? "" : `(${range})`];
}

function format(value: number, info: ResponseInfo): string {
  return formatResponse(value, info, 0);
}

function share(part: number, whole: number): string {
  return `${((part / whole) * 100).toFixed(1)} %`;
}
