import { formatConfidence, formatDecimals, formatMinutes, SECONDS_PER_DAY } from "../../sim/text/units/index.ts";
import type { LotRecord, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { observationsWords, type WeekTold, weekClock, weekTold, welfareLead } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { firstPages } from "./firstPages.ts";
import { html, type Markup, unsplit } from "./html.ts";
import { weekCharts } from "./studyCharts.ts";

type Outline = NonNullable<StudyResults["plan"]["week"]>;

/** Whether one plan of a week is told: several are compared as any plans are. */
export function isOneWeek({ plan, variants }: StudyResults): boolean {
  return plan.week !== undefined && variants.length === 1;
}

/** The week in words, its board, its days and its orders. */
export function weekSection(results: StudyResults, figures: Figures): Markup {
  const told = weekTold(results);
  const lead = welfareLead(results);
  const { replications, confidence } = results.study;
  return firstPages(
    {
      ...told,
      words: lead === null ? told.words : [lead, ...told.words],
      note:
        replications === 1
          ? "One simulated week; another would differ."
          : `Means over ${observationsWords(results)}, with ${formatConfidence(confidence)} ranges.`,
      picture: weekCharts(results, results.variants[0]!, "base")[0],
      isWide: true,
      more: orderTable(results, told),
    },
    figures,
  );
}

function orderTable(results: StudyResults, { orders }: WeekTold): Markup {
  const week = results.plan.week!;
  if (orders.length === 0) return html``;
  const first = results.variants[0]!.day.week?.orders ?? [];
  const heads = ["Order", "Due", "Wanted", "Ready in time", "Filled in the week of the picture"];
  const rows = week.orders.map(({ name, bySeconds, carcasses, kilograms }) => {
    const filled = first.find((order) => order.name === name)?.filledSeconds ?? null;
    const cells = [
      weekClock(week.days, bySeconds),
      carcasses === null ? `${formatDecimals(kilograms!, 0)} kg` : `${formatDecimals(carcasses, 0)} carcasses`,
      inTimeWords(results, name),
      momentWords(week, filled, "not filled"),
    ];
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th>${cells.map((cell, column) => html`<td data-label="${heads[column + 1]!}"><span>${cell}</span></td>`)}</tr>`;
  });
  return html`<div class="decided"><div class="scroll"><table class="cards"><caption>Orders, filled by carcasses as they leave, the one that is due first before the others.</caption><thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table></div></div>`;
}

function inTimeWords({ variants }: StudyResults, order: string): string {
  // No value: never ready in that week.
  const late = variants[0]!.values[`order.${order}.late`] ?? [];
  return `${late.filter((value) => value === 0).length} of ${late.length} ${late.length === 1 ? "week" : "weeks"}`;
}

function momentWords({ days }: Outline, seconds: number | null, none = "\u2013"): string {
  return seconds === null ? none : weekClock(days, seconds);
}

/** Each lot of the first week from its lorry to its last head out, and from each day back to its lots; null where no lots were followed. */
export function lotSection(results: StudyResults): Markup | null {
  const week = results.plan.week;
  const lots = results.variants[0]!.day.week?.lots ?? [];
  if (week === undefined || lots.length === 0) return null;
  return html`<h2>Lots</h2>
<p>Loads of the first simulated week of ${results.variants.length === 1 ? "the plan" : "today's plan"}, with the numbers that they have on the week board. Other weeks differ.</p>
${lotTable(week, lots)}
${dayTable(results, week, lots)}`;
}

function lotTable(week: Outline, lots: readonly LotRecord[]): Markup {
  const ways = Object.keys(lots[0]!.out);
  const heads = [
    ...["No.", "Lot", "Arrived", "Waited for hanging", "Hung", "Last head out", "Heads hung", "Went out as"],
    ...["Live weight", "Carcass weight"],
  ];
  const rows = lots.map((lot, index) => {
    const { arrivedSeconds: arrived, firstHungSeconds: first, lastHungSeconds: last } = lot;
    const cells = [
      momentWords(week, arrived),
      arrived === null || first === null ? "\u2013" : unsplit(formatMinutes(Math.max(0, first - arrived))),
      first === null || last === null ? "\u2013" : spanWords(week, first, last),
      momentWords(week, lot.lastOutSeconds),
      `${formatDecimals(lot.hung, 0)} of ${formatDecimals(lot.heads, 0)}`,
      ways.map((way) => `${formatDecimals(lot.out[way] ?? 0, 0)} ${isolated(way)}`).join(", "),
      ...[lot.liveKg, lot.outKg.carcass ?? 0].map((kilograms) => unsplit(`${formatDecimals(kilograms, 0)} kg`)),
    ];
    return html`<tr><td>${index + 1}</td><th scope="row"><bdi>${isolated(lot.name)}</bdi></th>${cells.map((cell) => html`<td><bdi>${cell}</bdi></td>`)}</tr>`;
  });
  return html`<div class="scroll" tabindex="0" role="group" aria-label="Lots"><table><caption>From the lorry to the last head out. A dash: that did not happen in this week.</caption><thead><tr>${heads.map((head) => html`<th scope="col"><bdi>${head}</bdi></th>`)}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

/** "Monday 06:06 to 06:59"; with the name of the day twice where it is another one. */
function spanWords({ days }: Outline, from: number, to: number): string {
  const [begin, end] = [weekClock(days, from), weekClock(days, to)];
  const day = begin.slice(0, begin.lastIndexOf(" ") + 1);
  return `${begin} to ${end.startsWith(day) ? end.slice(day.length) : end}`;
}

/** Back from a carcass: which lots may have left the line on a day. */
function dayTable({ variants }: StudyResults, week: Outline, lots: readonly LotRecord[]): Markup {
  const records = variants[0]!.day.week!.days;
  const body = records.map(({ replication, startClockSeconds, finishSeconds, heads }) => {
    const day = replication % week.days.length;
    const from = day * SECONDS_PER_DAY + startClockSeconds;
    const to = from + finishSeconds;
    const hung = numbers(lots, ({ firstHungSeconds: first, lastHungSeconds: last }) => isWithin(first, last, from, to));
    const out = numbers(lots, ({ firstHungSeconds: first, lastOutSeconds: last }) => isWithin(first, last, from, to));
    return html`<tr><th scope="row"><bdi>${isolated(week.days[day]!.name)}</bdi></th><td>${formatDecimals(heads.out.carcass ?? 0, 0)}</td><td>${hung}</td><td>${out}</td></tr>`;
  });
  return html`<div class="scroll"><table><caption>From a day back to its lots: a carcass that left on a day is of one of the lots that were on the line then.</caption><thead><tr><th scope="col">Day</th><th scope="col">Carcasses out</th><th scope="col">Lots hung</th><th scope="col">Lots on the line or in the chiller</th></tr></thead><tbody>${body}</tbody></table></div>`;
}

function isWithin(first: number | null, last: number | null, from: number, to: number): boolean {
  return first !== null && first <= to && (last ?? to) >= from;
}

function numbers(lots: readonly LotRecord[], wanted: (lot: LotRecord) => boolean): string {
  const found = lots.flatMap((lot, index) => (wanted(lot) ? [index + 1] : []));
  return found.length === 0 ? "none" : found.join(", ");
}
