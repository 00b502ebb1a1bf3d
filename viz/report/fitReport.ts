import { formatNumber } from "../../sim/text/units/index.ts";
import type { ColumnFit, FitAnswer, FitPicture } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import {
  type ChartTable,
  histogramChart,
  histogramView,
  probabilityChart,
  probabilityView,
} from "../pictures/index.ts";
import type { DecisionTable } from "../words/index.ts";
import { appendix } from "./appendix.ts";
import { DANGERS_IN_SHORT } from "./cautions.ts";
import { figuresFor } from "./figures.ts";
import { firstPages } from "./firstPages.ts";
import { html, type Markup, unbroken } from "./html.ts";
import { page } from "./renderReport.ts";
import { serverDocument } from "./serverDocument.ts";
import { type PlannedChart, slug } from "./studyCharts.ts";

/** What the report of measured times is made of; a picture for each column, in their order. */
export interface FitReport {
  /** Name of the table of times. */
  file: string;
  seed: string;
  samples: number;
  answer: FitAnswer;
  columns: readonly ColumnFit[];
  pictures: readonly FitPicture[];
}

/** Measured times as one self-contained page: what to put into the plan, column by column; pictures and checks; the method at the end. */
export function renderFitReport(found: FitReport, document: Document = serverDocument()): string {
  const { file, answer, columns, pictures } = found;
  const figures = figuresFor(document);
  const charts = columns.map((fit, index) => columnCharts(fit, pictures[index]!, index));
  const first = html`<h1><bdi>${isolated(`Times of ${file}`)}</bdi></h1>
<p class="question"><b>Question:</b> Which distributions should the plan take from these times?</p>
${firstPages(
  {
    verdict: isolated(answer.verdict),
    words: columns.length === 1 ? [] : answer.columns.map(({ heading, verdict }) => isolated(`${heading}: ${verdict}`)),
    table: columnTable(answer, columns),
    note: "What was timed, what the plan should take, and how many times are missing for a mean within 5 %.",
    picture: charts[0]?.[0],
    next: answer.next.map(isolated),
  },
  figures,
)}`;
  const parts = [
    ...columns.map(
      (fit, index) =>
        html`<h2><bdi>${isolated(fit.heading)}</bdi></h2>${checkList(fit)}${figures(index === 0 ? charts[0]!.slice(1) : charts[index]!)}`,
    ),
    html`<h2>Cautions of this work</h2>${DANGERS_IN_SHORT.map((line) => html`<p class="caution">${line}</p>`)}`,
    method(found),
  ];
  return page(`Times of ${file}`, [first, ...appendix(parts, "")]).markup;
}

function columnTable({ columns }: FitAnswer, fits: readonly ColumnFit[]): DecisionTable {
  const plain = (value: string) => ({ value, range: "", shown: null });
  return {
    rowsAre: "Timed",
    columns: ["Times", "Mean", "Use in the plan", "Time more", "Findings"],
    rows: columns.map(({ heading, use, more, answer }, index) => {
      const { ended, open, summary, unit, checks } = fits[index]!;
      const mean = summary === null ? plain("\u2013") : meanCell(summary, unit);
      const findings = checks
        .filter(({ verdict }) => verdict === "strong" || verdict === "look")
        .map(({ name }) => name);
      return {
        name: isolated(heading),
        cells: [
          plain(String(ended.length + open.length)),
          mean,
          plain(answer === "no" ? "nothing yet: find out first" : isolated(use)),
          plain(more === 0 ? "" : String(more)),
          plain(findings.join(", ")),
        ],
        ...{ best: false, harm: null },
      };
    }),
    more: 0,
  };
}

function meanCell({ mean, meanLow, meanHigh }: NonNullable<ColumnFit["summary"]>, unit: string) {
  const range =
    meanLow === null || meanHigh === null ? "" : `${formatNumber(meanLow)} to ${formatNumber(meanHigh)} ${unit}`;
  return { value: `${formatNumber(mean)} ${unit}`, range, shown: null };
}

function columnCharts(fit: ColumnFit, picture: FitPicture, index: number): PlannedChart[] {
  const stem = `${index + 1}-${slug(fit.heading)}`;
  const times = histogramView(fit, picture);
  const ranks = probabilityView(fit, picture);
  const chart = (name: string, { title, description }: { title: string; description: string }) => ({
    name,
    title,
    description,
    readings: null,
  });
  return [
    {
      ...chart(`times-${stem}`, times),
      draw: (context) => histogramChart(times, context),
      table: () => binTable(times.bins, fit.unit),
    },
    ...(ranks === null
      ? []
      : [
          {
            ...chart(`probability-${stem}`, ranks),
            draw: (context: Parameters<typeof probabilityChart>[1]) => probabilityChart(ranks, context),
            table: () => rankTable(ranks.points, fit.unit),
          },
        ]),
  ];
}

function binTable(bins: ReturnType<typeof histogramView>["bins"], unit: string): ChartTable {
  return {
    columns: [
      { name: "from", unit },
      { name: "to", unit },
      { name: "share of the times", unit: "%" },
    ],
    rows: bins.map(({ from, to, share }) => [from, to, 100 * share]),
  };
}

function rankTable(points: NonNullable<ReturnType<typeof probabilityView>>["points"], unit: string): ChartTable {
  return {
    columns: [
      { name: "fitted", unit },
      { name: "observed", unit },
      { name: "band from", unit },
      { name: "band to", unit },
    ],
    rows: points.map(({ fitted, observed, low, high }) => [fitted, observed, low, high]),
  };
}

function checkList({ checks, advice }: ColumnFit): Markup {
  const told = checks.filter(({ verdict }) => verdict !== "fine");
  const fine = checks.filter(({ verdict }) => verdict === "fine").map(({ name }) => name);
  return html`<p>${unbroken(isolated(advice.words))}</p>
<ul>${told.map(({ name, verdict, words }) => html`<li><b>${verdict === "strong" ? "Strong finding" : verdict === "look" ? "Worth a look" : "Not checked"}, ${name}:</b> ${unbroken(isolated(words))}</li>`)}</ul>
${fine.length === 0 ? "" : html`<p class="small">Nothing found in: ${fine.join(", ")}.</p>`}`;
}

function method({ seed, samples }: FitReport): Markup {
  return html`<h2>Method</h2>
<p class="small">Families are fitted by maximum likelihood and ranked by AIC (Akaike 1974). Each is tested by the distances of Kolmogorov and of Anderson and Darling against up to ${samples} samples drawn from the fit and fitted again, seed <code>${isolated(seed)}</code>. Means have Student's interval at 95 %, which takes the times as independent.</p>`;
}
