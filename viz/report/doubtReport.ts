import { formatSpan } from "../../sim/text/units/index.ts";
import type { Doubt, DoubtEstimate, DoubtWords, ResponseInfo } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import {
  chancesChart,
  chancesTable,
  chancesView,
  spansChart,
  spansTable,
  spansView,
  tornadoChart,
  tornadoTable,
  tornadoView,
} from "../pictures/index.ts";
import {
  type DecisionCell,
  type DecisionTable,
  doubtName,
  figuresWanted,
  planName,
  responseFormat,
  responseHeading,
  variantsShown,
  variantTold,
  worldsText,
} from "../words/index.ts";
import { appendix } from "./appendix.ts";
import { DANGERS_IN_SHORT } from "./cautions.ts";
import { type Figures, figuresFor } from "./figures.ts";
import { firstPages } from "./firstPages.ts";
import { html, type Markup, unbroken } from "./html.ts";
import { page } from "./renderReport.ts";
import { serverDocument } from "./serverDocument.ts";
import { type PlannedChart, planned, slug } from "./studyCharts.ts";

/** What the report of a study of many worlds is made of. */
export interface DoubtReport {
  doubt: Doubt;
  words: Pick<DoubtWords, "verdict" | "words" | "next">;
}

/** What is luck, what is not known, and which figure to measure next, as one self-contained page: the answer first. */
export function renderDoubtReport({ doubt, words }: DoubtReport, document: Document = serverDocument()): string {
  const { name, variants } = doubt;
  const figures = figuresFor(document);
  const charts = doubtCharts(doubt);
  const [picture, second] = firstCharts(doubt, charts);
  const several = variants.length > 1;
  // Before the figure to measure stands the span: the verdict, or the first sentence below that of a choice.
  const lead = doubt.decision === null ? 0 : 1;
  // The figure, and how many more readings of it are worth their time.
  const steps = doubt.readings.some((advice) => advice !== null && advice.enough !== null) ? 2 : 1;
  const first = html`<h1><bdi>${isolated(name)}</bdi></h1>
<p class="question"><b>Question:</b> ${several ? "Which plan to choose, for all that is not known" : "What is luck, what is not known"}, and which figure to measure next?</p>
${firstPages(
  {
    verdict: isolated(words.verdict),
    words: [...words.words.slice(0, lead), ...words.next.slice(0, steps), ...words.words.slice(lead)].map(isolated),
    table: several ? planTable(doubt) : resultTable(doubt),
    note: tableNote(doubt),
    picture,
    next: [...words.next.slice(steps), MEASURE].map(isolated),
    second,
  },
  figures,
)}`;
  const parts = [
    html`<h2>The figures that are not known</h2>${figureTable(doubt)}`,
    ...moreResults(
      doubt,
      charts.filter((chart) => chart !== picture && chart !== second),
      figures,
    ),
    html`<h2>Cautions of this work</h2>${DANGERS_IN_SHORT.map((line) => html`<p class="caution">${line}</p>`)}`,
    method(doubt),
  ];
  return page(name, [first, ...appendix(parts, "")]).markup;
}

const MEASURE =
  "Time the figure that weighs most; `gambrel fit TIMES.csv --uncertain` turns the times into the range to write into the plan. Then ask again.";

/** Results that are drawn; the tables have all. */
const DRAWN_RESPONSES = 3;

/** Every picture of it: spans of the first results, which figure owes what, how surely each plan is the best. */
export function doubtCharts(doubt: Doubt): PlannedChart[] {
  const chances = chancesView(doubt);
  const tornado = tornadoView(doubt);
  return [
    ...(chances === null ? [] : [planned("chances", chances, chancesChart, chancesTable)]),
    ...doubt.responses.slice(0, DRAWN_RESPONSES).map(({ key }, response) => {
      const name = `spans-${response + 1}-${slug(key)}`;
      return planned(name, spansView(doubt, response), spansChart, spansTable);
    }),
    ...(tornado === null ? [] : [planned("tornado", tornado, tornadoChart, tornadoTable)]),
  ];
}

/** With more plans table and two pictures do not fit two printed pages. */
const MAX_TWICE = 5;

/** Of a choice how sure it is and the plans' spans; of a plan alone its span and what owes it. */
function firstCharts(doubt: Doubt, charts: readonly PlannedChart[]): (PlannedChart | undefined)[] {
  const of = (start: string) => charts.find(({ name }) => name.startsWith(start));
  if (doubt.decision === null) return [of("spans-1-"), of("tornado")];
  return [of("chances"), ...(doubt.variants.length > MAX_TWICE ? [] : [of("spans-1-")])];
}

function plain(value: string, range = ""): DecisionCell {
  return { value, range, shown: null };
}

/** Days of 95 of 100, what luck alone would leave, the mean as it may be, and how much is not known. */
function estimateCells(doubt: Doubt, info: ResponseInfo, estimate: DoubtEstimate | null): DecisionCell[] {
  if (estimate === null) return [plain("no value"), plain(""), plain(""), plain("")];
  const { calendar } = doubt;
  const format = responseFormat(info, calendar.startClockSeconds, undefined, calendar.period);
  const { days, luck } = figuresWanted(estimate, format);
  const { mean, full, spanNotKnown } = estimate;
  const half = (full.high - full.low) / 2;
  return [
    plain(days),
    plain(luck),
    plain(format.value(mean, half), format.range(full.low, full.high, half)),
    spanNotKnown === null ? plain("") : plain(percent(spanNotKnown.value), between(spanNotKnown)),
  ];
}

function headingsOf({ confidence, calendar }: Doubt): string[] {
  return [
    `${Math.round(100 * confidence)} of 100 ${calendar.period}s`,
    "Luck alone",
    "Mean, as it may be",
    "Not known of the span",
  ];
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}

function between({ low, high }: { low: number; high: number }): string {
  return `${Math.round(100 * low)} to ${Math.round(100 * high)} %`;
}

/** Results of one plan alone, one a row. */
function resultTable(doubt: Doubt): DecisionTable {
  const told = variantTold(doubt);
  return {
    rowsAre: "Result",
    columns: headingsOf(doubt),
    rows: doubt.responses.map((info, response) => ({
      name: responseHeading(info),
      cells: estimateCells(doubt, info, doubt.estimates[response]![told] ?? null),
      ...{ best: false, harm: null },
    })),
    more: 0,
  };
}

/** The plans that there is room for, by the first result. */
function planTable(doubt: Doubt): DecisionTable {
  const { decision, variants, harms } = doubt;
  const info = doubt.responses[0]!;
  const chosen = decision === null ? [] : ["Best in", "Gives away"];
  const shown = variantsShown(doubt);
  return {
    columns: [...headingsOf(doubt), ...chosen],
    rows: shown.map((variant) => {
      const found = decision?.variants[variant] ?? null;
      const chance = found === null ? [plain(""), plain("")] : chanceCells(found, info);
      return {
        name: planName(doubt, variant),
        cells: [
          ...estimateCells(doubt, info, doubt.estimates[0]![variant] ?? null),
          ...(decision === null ? [] : chance),
        ],
        best: decision?.best === variant,
        harm: harms[variant]!,
      };
    }),
    more: variants.length - shown.length,
  };
}

function chanceCells(found: NonNullable<NonNullable<Doubt["decision"]>["variants"][number]>, info: ResponseInfo) {
  const { chanceBest, bestWithin, regret } = found;
  return [
    plain(worldsText(chanceBest), `${Math.round(100 * bestWithin.low)} to ${Math.round(100 * bestWithin.high)}`),
    plain(formatSpan(regret, info, "plain")),
  ];
}

function tableNote({ responses, variants, counts, calendar, confidence }: Doubt): string {
  const of = variants.length > 1 ? `${isolated(responses[0]!.label)}. ` : "";
  return `${of}${counts.worlds} worlds of ${counts.days} ${calendar.period}s each. Luck alone: what the span would be if every figure were known. Mean: its ${Math.round(100 * confidence)} % range counts what is not known, too.`;
}

/** What each figure may be, who says so, and what it does to the first result of the plan that is told. */
function figureTable(doubt: Doubt): Markup {
  const { figures, decision } = doubt;
  const info = doubt.responses[0]!;
  const estimate = doubt.estimates[0]![variantTold(doubt)] ?? null;
  const rows = figures.map((figure, index) => {
    const all = figure.factors[0]!;
    const effect = estimate?.figures[index] ?? null;
    const share = effect?.share ?? null;
    return html`<tr><th scope="row"><bdi>${doubtName(figure)}</bdi></th><td><bdi>${figure.paths.map(isolated).join(", ")}</bdi></td><td>${Math.min(...all).toPrecision(3)} to ${Math.max(...all).toPrecision(3)}</td><td>${figure.note === "" ? "\u2013" : isolated(figure.note)}</td><td>${share === null ? "\u2013" : unbroken(`${percent(share.value)} (${between(share)})`)}</td><td>${effect === null ? "\u2013" : formatSpan(effect.narrower, info, "plain")}</td>${decision === null ? "" : html`<td>${formatSpan(decision.figures[index]!, info, "plain")}</td>`}</tr>`;
  });
  const heads = [
    "Figure",
    "Where in the plan",
    "Times what the plan says",
    "Who says so",
    "Of what is not known",
    "Narrower by",
    ...(decision === null ? [] : ["Worth for the choice"]),
  ];
  return html`<p class="small">A range that nobody measured is a guess, and so is what follows from it.</p>
<div class="scroll" tabindex="0" role="group" aria-label="Table of figures that are not known"><table><thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

function moreResults(doubt: Doubt, charts: readonly PlannedChart[], figures: Figures): Markup[] {
  if (charts.length === 0 && doubt.variants.length < 2) return [];
  const tables =
    doubt.variants.length < 2 ? [] : doubt.responses.map((info, response) => responseRows(doubt, info, response));
  return [html`<h2>Results</h2>${figures(charts)}${tables}`];
}

/** One result of every variant. */
function responseRows(doubt: Doubt, info: ResponseInfo, response: number): Markup {
  const rows = doubt.variants.map((name, variant) => {
    const cells = estimateCells(doubt, info, doubt.estimates[response]![variant] ?? null);
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th>${cells.map(({ value, range }) => html`<td>${unbroken(value)}${range === "" ? "" : html`<span class="range">${unbroken(range)}</span>`}</td>`)}</tr>`;
  });
  const label = isolated(info.label);
  return html`<div class="scroll" tabindex="0" role="group" aria-label="Table: ${label}"><table><caption>${label}</caption><thead><tr><th scope="col">Plan</th>${headingsOf(doubt).map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

function method({ counts, calendar }: Doubt): Markup {
  const { worlds, days, seed } = counts;
  return html`<h2>Method</h2>
<p class="small">${worlds} worlds, each of ${days} ${calendar.period}s, seed <code>${isolated(seed)}</code>. In a world every uncertain figure is drawn once (Latin hypercube, McKay, Beckman and Conover 1979) and stays; plans are compared on the same ${calendar.period}s of the same worlds. Variance within and between worlds by analysis of variance (Searle, Casella and McCulloch 1992). Luck alone: the span, shortened about its mean by the root of the part of the variance that is luck. What one figure owes: first-order index (Sobol) by regression on the worlds, interval by the jackknife; what several figures do together only belongs to none of them. Best in: normal worlds with normal luck; interval of a share of so many worlds (Wilson 1927). Gives away: the mean of the best plan of each world less that of this one; of the best plan this is the value of knowing every figure first (Raiffa and Schlaifer 1961).</p>
<p class="small">Only the figures that the plan calls uncertain are varied. Everything else is taken as written, and the model has limits of its own.</p>`;
}
