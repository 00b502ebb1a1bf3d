import { formatDuration, formatResponse, formatSpan } from "../../sim/text/units/index.ts";
import type { Calibration, CalibrationVerdict } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { type ChartTable, type ObservedColumns, observedChart, observedView } from "../pictures/index.ts";
import type { DecisionCell, DecisionTable } from "../words/index.ts";
import { appendix } from "./appendix.ts";
import { figuresFor } from "./figures.ts";
import { firstPages } from "./firstPages.ts";
import { html, type Markup } from "./html.ts";
import { page } from "./renderReport.ts";
import { serverDocument } from "./serverDocument.ts";

/** What the report of a comparison with observed days is made of. */
export interface CalibrationReport extends Calibration, CalibrationVerdict {
  /** Name of the plan. */
  plan: string;
  observedFile: string;
  seed: string;
}

/** A plan against observed days as one self-contained page: whether it fits; what was compared; what would explain a gap or could hide. */
export function renderCalibrationReport(found: CalibrationReport, document: Document = serverDocument()): string {
  const { plan, observedFile, verdict, next, days, observedDays, confidence } = found;
  const view = observedView(found);
  const first = html`<h1><bdi>${isolated(plan)}</bdi></h1>
<p class="lead">Observed days: <bdi>${isolated(observedFile)}</bdi></p>
<p class="question"><b>Question:</b> Does the plan behave as the line does on observed days?</p>
${firstPages(
  {
    verdict: isolated(verdict),
    words: [],
    table: comparedTable(found),
    note: `${observedDays} observed against ${days} simulated days. All ranges hold together at ${100 * confidence} %. Grey: no difference found. Found from: a true difference of that size or more would have been found in four of five cases.`,
    picture:
      view.stretches.length === 0
        ? undefined
        : {
            name: "observed",
            title: view.title,
            description: view.description,
            draw: (context) => observedChart(view, context),
            table: () => stretchTable(view),
            readings: null,
          },
    next: next.map(isolated),
  },
  figuresFor(document),
)}`;
  const parts = [
    found.gap ? explanationSection(found) : noticeableSection(found),
    html`<h2>Method</h2>
<p class="small">Student's test of two means, the spread of observed and simulated days taken as the same; each range has a share of the error probability (Bonferroni). A gap is looked into by changing one figure of the plan at a time and simulating the same days again, seed <code>${isolated(found.seed)}</code>. Heads are counted at the end of ${isolated(found.countedAt)}.</p>`,
  ];
  return page(plan, [first, ...appendix(parts, "")]).markup;
}

function comparedTable({ quantities, startClockSeconds }: CalibrationReport): DecisionTable {
  const plain = (value: string): DecisionCell => ({ value, range: "", shown: null });
  return {
    rowsAre: "Result",
    columns: ["Observed", "Simulated", "Observed less simulated", "Found from"],
    rows: quantities.map(({ info, comparison }) => {
      const name = isolated(info.label);
      const row = { name, best: false, harm: null };
      if (comparison === null) return { ...row, cells: [plain("\u2013"), plain("no value"), plain(""), plain("")] };
      const { observed, simulated, difference, low, high, shown, noticeable } = comparison;
      return {
        ...row,
        cells: [
          plain(formatResponse(observed.mean, info, startClockSeconds)),
          plain(formatResponse(simulated.mean, info, startClockSeconds)),
          {
            value: formatSpan(difference, info),
            range: `${formatSpan(low, info)} to ${formatSpan(high, info)}`,
            shown,
          },
          plain(noticeable === 0 ? "any difference" : formatSpan(Number(noticeable.toPrecision(2)), info, "plain")),
        ],
      };
    }),
    more: 0,
  };
}

function stretchTable({ stretches }: ObservedColumns): ChartTable {
  const mean = (values: readonly number[]) =>
    values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    columns: [
      { name: "from", unit: "s after the day's start" },
      { name: "to", unit: "s after the day's start" },
      { name: "observed, mean", unit: "heads" },
      { name: "simulated, mean", unit: "heads" },
    ],
    rows: stretches.map(({ fromSeconds, toSeconds, observed, simulated }) => [
      fromSeconds,
      toSeconds,
      mean(observed),
      simulated?.mean ?? null,
    ]),
  };
}

function explanationSection({ explanations }: CalibrationReport): Markup {
  if (explanations.length === 0)
    return html`<h2>What would explain the gap</h2><p>No single figure of the plan (cycle time, uptime, repair time, people) explains a tenth of it.</p>`;
  const rows = explanations.map(
    ({ label, kind, from, to, removed, left, doubt }) =>
      html`<tr><th scope="row"><bdi>${isolated(label)}</bdi></th><td>${amount(kind, from)}</td><td>${amount(kind, to)}</td><td>${Math.floor(100 * removed)}\u00A0%</td><td>${left.length === 0 ? "nothing" : isolated(left.join(", "))}</td><td>${doubt === "" ? "yes" : `hardly: ${doubt}`}</td></tr>`,
  );
  return html`<h2>What would explain the gap</h2>
<div class="scroll"><table class="even"><caption>One figure changed at a time. What would explain the gap need not be its cause: measure it before you change the plan.</caption><thead><tr><th scope="col">Figure</th><th scope="col">In the plan</th><th scope="col">Would have to be</th><th scope="col">Explains</th><th scope="col">Still differs</th><th scope="col">Plausible</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function noticeableSection({ noticeable, observedDays }: CalibrationReport): Markup {
  const rows = (noticeable ?? []).map(
    ({ label, kind, from, to, limit }) =>
      html`<tr><th scope="row"><bdi>${isolated(label)}</bdi></th><td>${amount(kind, from)}</td><td>${to === null ? `not even at ${amount(kind, limit)}` : `from ${amount(kind, to)}`}</td></tr>`,
  );
  if (rows.length === 0) return html`<h2>What could hide</h2><p>No figure was looked at.</p>`;
  return html`<h2>What could hide</h2>
<div class="scroll"><table class="even"><caption>How far each figure alone could be out before ${observedDays} observed days would show it in roughly four of five cases.</caption><thead><tr><th scope="col">Figure</th><th scope="col">In the plan</th><th scope="col">Would show</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function amount(kind: Calibration["explanations"][number]["kind"], value: number): string {
  return kind === "people" ? String(value) : formatDuration(value);
}
