import {
  rankedSlopes,
  slopeName,
  timesEstimate,
  WHY_NOTE,
  whyWords,
  withheldWords,
  wrappedLines,
} from "../../viz/index.ts";
import type { ResponseInfo } from "../day/observations/index.ts";
import type { MeanEstimate, Why } from "../days/results/index.ts";
import { formatEstimate, formatResponse, textTable } from "../text/units/index.ts";

const DURATION: ResponseInfo = { key: "", label: "", unit: "s", format: "duration", better: null };

const MAX_PARTS = 12;

const SECONDS: ResponseInfo = { key: "", label: "", unit: "s", format: "number", better: null };

const SHARE: ResponseInfo = { ...SECONDS, format: "share" };

const MAX_SLOPES = 10;

/** Seconds: slopes are told for so small a change and never drawn out. */
const STEP = 0.1;

/** Where the time to the end of work went, in the sentences of the report; `note`: what they do not say. */
export function whereTimeWent(why: Why, note = WHY_NOTE): string[] {
  return ["Where the time went", ...[...whyWords(why), note].flatMap((line) => wrappedLines(line, "  "))];
}

/** What the end of work was owed to, most first; then the slopes and the momentary bottleneck. */
export function whyTables(why: Why): string[] {
  return [...partsTable(why), "", ...slopesTable(why), "", ...bottleneckTable(why)];
}

/** Those that are right, then what is missing and why. */
function slopesTable(why: Why): string[] {
  const strongest = rankedSlopes(why.slopes).slice(0, MAX_SLOPES);
  const missing = withheldWords(why);
  if (strongest.length === 0) return missing;
  const rows = strongest.map((slope) => [
    slopeName(slope),
    ...estimateCells(timesEstimate(slope.slope, STEP), SECONDS),
  ]);
  const head = `Near today's value, ${STEP} s more of a mean time makes work end later by`;
  return [head, ...textTable(rows).map((line) => `  ${line}`), ...missing];
}

function bottleneckTable({ bottleneck }: Why): string[] {
  if (bottleneck.length === 0) return [];
  const sorted = [...bottleneck].sort((a, b) => b.sole.mean + b.shifting.mean - a.sole.mean - a.shifting.mean);
  const rows = sorted.map(({ stage, sole, shifting }) => {
    return [stage, ...estimateCells(sole, SHARE), ...estimateCells(shifting, SHARE)];
  });
  const header = ["Momentary bottleneck", "alone", "", "with others", ""];
  return textTable([header, ...rows]);
}

/** What the end of work was owed to, most first: all that one day is asked for. */
export function partsTable({ parts, total }: Why): string[] {
  const shown = parts.slice(0, MAX_PARTS);
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
function estimateCells(found: MeanEstimate, info: ResponseInfo): [string, string] {
  const [mean, range] = formatEstimate(found, info, 0);
  return [mean, range === "" ? "" : `(${range})`];
}

function share(part: number, whole: number): string {
  return `${((part / whole) * 100).toFixed(1)} %`;
}
