import type { ResponseInfo } from "../day/observations/index.ts";
import type { MeanEstimate, Why } from "../days/results/index.ts";
import { formatEstimate, formatResponse, textTable } from "../text/units/index.ts";

const DURATION: ResponseInfo = { key: "", label: "", unit: "s", format: "duration", better: null };
const MOST_PARTS = 12;

/** What the end of work was owed to, most first: all that one day is asked for. */
export function partsTable({ parts, total }: Why): string[] {
  const shown = parts.slice(0, MOST_PARTS);
  const rest = total.mean - shown.reduce((sum, { seconds }) => sum + seconds.mean, 0);
  const rows = shown.map(({ label, seconds }) => [
    label,
    ...estimateCells(seconds, DURATION),
    share(seconds.mean, total.mean),
  ]);
  const all = formatResponse(rest, DURATION, 0);
  const others = parts.length > shown.length ? [["all else", all, "", share(rest, total.mean)]] : [];
  return textTable([...rows, ...others]);
}

/** A mean and, in brackets, its interval; the second cell is empty without one. */
export function estimateCells(found: MeanEstimate, info: ResponseInfo): [string, string] {
  const [mean, range] = formatEstimate(found, info, 0);
  return [mean, range === "" ? "" : `(${range})`];
}

function share(part: number, whole: number): string {
  return `${((part / whole) * 100).toFixed(1)} %`;
}
