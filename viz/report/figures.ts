import { decimalsFor, formatDecimals } from "../../sim/text/units/index.ts";
import { type ChartContext, svgText } from "../frame/index.ts";
import type { Cell, ChartTable, TimeReadings } from "../pictures/index.ts";
import { html, type Markup, trusted, unbroken } from "./html.ts";
import { packedReadings } from "./packedReadings.ts";
import type { PlannedChart } from "./studyCharts.ts";

/** Draws planned charts as figures with their finding below; ids are numbered so that no two charts of the page share one. */
export type Figures = (charts: readonly PlannedChart[]) => Markup;

export function figuresFor(document: Document): Figures {
  let count = 0;
  return (charts) => html`${charts.map((chart) => figure(chart, ++count, document))}`;
}

/** Pixels. An A4 page less its margins holds so much: printed without being scaled (see `printClass`). */
const WIDTH = 700;
/** Pixels that the smallest usual telephone (360) leaves between the page's margins. */
const PHONE_WIDTH = 336;
const PAGE_HEIGHT = 940;

/**
 * The picture, wide and once more for a telephone, what the page's script reads off it, its finding, and its figures as a
 * table that opens on demand.
 */
function figure(chart: PlannedChart, number: number, document: Document): Markup {
  const context: ChartContext = { document, theme: "auto", styleInside: false };
  const wide = chart.draw({ ...context, width: WIDTH, idPrefix: `figure-${number}` });
  const narrow = chart.draw({ ...context, width: PHONE_WIDTH, idPrefix: `figure-${number}-phone` });
  const tall = printClass(Number(wide.getAttribute("height")));
  const over = chart.readings === null ? "" : trusted(" data-over-time");
  const keys = chart.readings === null ? "arrow keys step through its values" : "arrow keys move the time cursor";
  // Moving a cursor over a day would have a screen reader talk without end; the table tells it all.
  const live = chart.readings === null ? "polite" : "off";
  const plot = (kind: string, drawing: SVGSVGElement) =>
    html`<div class="plot ${kind}" tabindex="0" role="group" aria-label="Figure ${number}, ${chart.title}: ${keys}"${over}>${trusted(svgText(drawing))}</div>`;
  return html`<figure>${plot(`wide${tall}`, wide)}
${plot("phone", narrow)}
<p class="reading" aria-live="${live}"></p>
<figcaption><b>Figure ${number}.</b> ${unbroken(chart.description)}</figcaption>
${chart.readings === null ? "" : readingsData(chart.readings())}${tableOf(chart.table(), number)}</figure>
`;
}

/**
 * A picture that is taller than a page is printed at 5/6 or 4/6 of its size. Only at such steps does a texture tile of
 * 6 px stay whole pixels; at any other one browsers print each textured area as a huge image.
 */
function printClass(height: number): string {
  if (height <= PAGE_HEIGHT) return "";
  return (height * 5) / 6 <= PAGE_HEIGHT ? " tall" : " taller";
}

function readingsData(readings: TimeReadings): Markup {
  return html`<script type="application/json" class="readings">${trusted(jsonInPage(packedReadings(readings)))}</script>\n`;
}

/** JSON that cannot end the element it stands in. */
function jsonInPage(value: unknown): string {
  return JSON.stringify(value)
    .replace(/</g, "\\u003c")
    .replace(/\u2028/g, "\\u2028")
    .replace(/\u2029/g, "\\u2029");
}

function tableOf({ columns, rows }: ChartTable, number: number): Markup {
  const heads = columns.map(
    ({ name, unit }) =>
      html`<th scope="col"><bdi>${name}</bdi>${unit === "" ? "" : html`<span class="range">${unit}</span>`}</th>`,
  );
  const decimals = columns.map((_, column) => decimalsOf(rows.map((row) => row[column] ?? null)));
  const body = rows.map(
    (row) =>
      html`<tr>${row.map((cell, column) => html`<td><bdi>${cellText(cell, decimals[column]!)}</bdi></td>`)}</tr>`,
  );
  return html`<details><summary>Figure ${number} as a table</summary><div class="scroll" tabindex="0" role="group" aria-label="Table of figure ${number}"><table><thead><tr>${heads}</tr></thead><tbody>${body}</tbody></table></div></details>`;
}

/** Decimals that show the values of a column to about three digits of the largest; 0 for whole numbers. */
function decimalsOf(cells: readonly Cell[]): number {
  const numbers = cells.filter((cell) => typeof cell === "number");
  if (numbers.every(Number.isInteger)) return 0;
  const largest = Math.max(...numbers.map(Math.abs));
  return Math.max(0, decimalsFor(largest / 10, 1));
}

function cellText(cell: Cell, decimals: number): string {
  if (cell === null) return "\u2013";
  return typeof cell === "number" ? formatDecimals(cell, decimals) : cell;
}
