import type { Decision } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { type DecisionCell, type DecisionTable, decisionTable } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { html, type Markup, unbroken } from "./html.ts";
import type { PlannedChart } from "./studyCharts.ts";

/** What every report begins with, whatever was asked: it is to fit two printed pages. */
export interface FirstPages {
  /** The answer in one sentence. */
  verdict: string;
  /** What it rests on, a few sentences. */
  words: readonly string[];
  /** Null where there is nothing to choose among. */
  table: DecisionTable | null;
  /** What stands below the table: what is compared, how sure. */
  note: string;
  picture: PlannedChart | undefined;
  /** What to do next. */
  next: readonly string[];
}

/** Most plans that a decision is told of on the first pages. */
export const MAX_ROWS = 12;

export function firstPages({ verdict, words, table, note, picture, next }: FirstPages, figures: Figures): Markup {
  return html`<h2>Answer</h2>
<p class="verdict">${unbroken(verdict)}</p>
<div class="${picture === undefined ? "told" : "told beside"}">
<div class="answer">${words.map((sentence) => html`<p>${unbroken(sentence)}</p>`)}${nextSteps(next)}</div>
${picture === undefined ? "" : figures([picture])}
</div>
${table === null ? "" : decisionMarkup(table, note)}
<p class="caution">A planning aid built on the numbers it is given. Animal welfare and people's safety come before throughput: read the <a href="#cautions">cautions</a>.</p>`;
}

/** The decision of a study as its first pages have it. */
export function decisionPages(decision: Decision, startClockSeconds: number): Omit<FirstPages, "picture" | "note"> {
  return {
    verdict: isolated(decision.verdict),
    words: decision.words.map(isolated),
    table: decision.rows.length > 1 ? decisionTable(decision, startClockSeconds, MAX_ROWS) : null,
    next: decision.next.map(isolated),
  };
}

function nextSteps(next: readonly string[]): Markup {
  if (next.length === 0) return html``;
  return html`<h3>What to do next</h3><ul>${next.map((step) => html`<li>${unbroken(step)}</li>`)}</ul>`;
}

function decisionMarkup({ columns, rows, more }: DecisionTable, note: string): Markup {
  const heads = columns.map((column) => html`<th scope="col"><bdi>${column}</bdi></th>`);
  const body = rows.map(
    ({ name, cells, best, harm }) =>
      html`<tr class="${best ? "best" : harm === null ? "" : "harmful"}"><th scope="row"><bdi>${name}</bdi>${best ? html` <span class="tag">best</span>` : ""}${harm === null ? "" : html`<span class="range">does harm: ${isolated(harm)}</span>`}</th>${cells.map(cellMarkup)}</tr>`,
  );
  const left = more === 0 ? "" : html`<p class="small">${more} more stand under Results.</p>`;
  return html`<div class="scroll"><table class="even decision"><caption>${note}</caption><thead><tr><th scope="col">Plan</th>${heads}</tr></thead><tbody>${body}</tbody></table></div>${left}`;
}

/** A difference that is not shown is greyed, and said so for who does not see grey. */
function cellMarkup({ value, range, shown }: DecisionCell): Markup {
  const words = range === "" ? "" : html`<span class="range">${range}</span>`;
  return html`<td class="${shown === false ? "unshown" : ""}"${shown === false ? html` title="no difference to today's plan shown"` : ""}>${value}${words}</td>`;
}
