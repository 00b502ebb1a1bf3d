import { capital, formatClock, formatConfidence, formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { DayRecord, KillStop, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import {
  estimateWords,
  isSingleDay,
  observationNoun,
  quoted,
  responseFormat,
  stopDefinition,
  stopEndWords,
  stopReasonWords,
  waitWords,
  whichDay,
} from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { html, type Markup, unbroken, unsplit } from "./html.ts";
import { dayId } from "./reportSections.ts";
import { killStopCharts } from "./studyCharts.ts";

type Stops = NonNullable<DayRecord["killStops"]>;

/** The record of stops for the official veterinarian: over all days per variant, then each stop of one day. */
export function killStopSection(results: StudyResults, figures: Figures): Markup {
  const base = results.variants[0]!;
  const { killStops } = base.day;
  if (killStops === null) return html``;
  const day = isSingleDay(results)
    ? html``
    : html`<h3>${capital(whichDay(results, base.day))} of ${quoted(base.name)}, one example</h3>`;
  const table = stopTable(base, killStops);
  return html`<h2>Stops of the kill line</h2>
<p>For the official veterinarian: every time the line stood between stunning and the end of bleeding, and the heads that were caught there.</p>
<p class="small">${unbroken(stopDefinition(killStops))}</p>
${isSingleDay(results) ? "" : variantTable(results)}
${day}
<div data-of-day="${dayId(0)}">${figures(killStopCharts(results, base, "base"))}</div>
${isSingleDay(results) ? table : html`<details><summary>Every stop of this day</summary>${table}</details>`}`;
}

/** Whether `killStopSection` has anything to say. */
export function recordsKillStops({ variants }: StudyResults): boolean {
  return variants[0]!.day.killStops !== null;
}

/** Means over the days, each with its interval. */
function variantTable(results: StudyResults): Markup {
  const { variants, study } = results;
  const infos = variants.flatMap(({ killLine }) => killLine?.stops ?? []).map(({ info }) => info);
  const columns = [...new Map(infos.map((info) => [info.key, info])).values()];
  if (columns.length === 0) return html``;
  const formats = columns.map((info) =>
    responseFormat(info, 0, { value: largestOf(variants, info.key), difference: 0 }),
  );
  const rows = variants.map(({ name, killLine }) => {
    const cells = columns.map((info, index) => {
      const found = killLine?.stops.find((stop) => stop.info.key === info.key)?.estimate;
      const words = estimateWords(found, formats[index]!, study.confidence);
      return html`<td>${words.mean}<span class="range">${words.interval}</span></td>`;
    });
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th>${cells}</tr>`;
  });
  const heads = columns.map(({ label }) => html`<th scope="col">${label}</th>`);
  const caption = `Average of a day over all ${observationNoun(results)}, with ${formatConfidence(study.confidence)} intervals. A day without a stop counts as 0.`;
  return html`<div class="scroll"><table class="even"><caption>${caption}</caption><thead><tr><th scope="col">Variant</th>${heads}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

/** The largest end of any interval, 1 at least: all cells of a column are written alike. */
function largestOf(variants: readonly VariantResults[], key: string): number {
  const estimates = variants.flatMap(({ killLine }) => killLine?.stops ?? []).filter(({ info }) => info.key === key);
  return Math.max(1, ...estimates.map(({ estimate }) => estimate.high ?? estimate.mean));
}

/** More rows than this are read by nobody; they are in stops.csv. */
const MAX_ROWS = 40;

function stopTable({ day }: VariantResults, killStops: Stops): Markup {
  const { stops, count } = killStops;
  if (stops.length === 0) return html``;
  const rows = stops.slice(0, MAX_ROWS).map((stop, index) => stopRow(stop, index + 1, day.startClockSeconds));
  const shown = Math.min(count, MAX_ROWS);
  const more =
    shown === count
      ? ""
      : ` The first ${shown} of ${formatDecimals(count, 0)}; stops.csv has the first ${formatDecimals(stops.length, 0)}.`;
  const heads = [
    "",
    "Began",
    "Lasted",
    "What stood and why",
    "Stunned, not stuck",
    "Bleeding",
    "Longest wait until stuck",
    "Then",
  ];
  const caption = `Heads: when the stop began; the most during it. Longest wait: of a stunned head that the stop caught, from the end of stunning to the start of sticking.${more}`;
  return html`<div class="scroll"><table class="wide"><caption>${caption}</caption><thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

function stopRow(stop: KillStop, number: number, startClockSeconds: number): Markup {
  const { fromSeconds, toSeconds, reasons, caught } = stop;
  const wait = caught === 0 ? "\u2013" : unsplit(waitWords(stop.longestWaitSeconds));
  const cells = [
    formatClock(startClockSeconds + fromSeconds, true),
    unsplit(formatDuration(toSeconds - fromSeconds)),
    reasons.map(stopReasonWords).join("; then also "),
    `${stop.stunned}; ${stop.stunnedMost}`,
    `${stop.bleeding}; ${stop.bleedingMost}`,
    wait,
    stopEndWords(stop),
  ];
  return html`<tr><th scope="row">${number}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`;
}
