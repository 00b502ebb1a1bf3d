import type { Decision } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { type DecisionCell, type DecisionTable, decisionTable, plansTold } from "../words/index.ts";
import { CAUTIONS } from "./cautions.ts";
import type { Figures } from "./figures.ts";
import { html, type Markup, unbroken, unsplit } from "./html.ts";
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
  /** The picture needs the whole width: it stands below the words. */
  isWide?: boolean;
  /** What to do next. */
  next: readonly string[];
  /** Below the table. */
  more?: Markup;
  /** A second picture, below that. */
  second?: PlannedChart | undefined;
  /** Above the answer; default: "Answer". */
  heading?: string;
  /** Id of the drawn day whose time cursor the picture follows; left out where it is not over the clock. */
  ofDay?: string;
}

/** Figures of a plan that fit the width of a sheet. */
const MAX_COLUMNS = 7;
/** Letters of these figures that fit beside names, as the print of a table goes. */
const MAX_LETTERS = 80;
/** Beside names of so many letters, and where many of these need a sheet of their own. */
const FEW_COLUMNS = 6;
const LONG_NAME = 30;
const FEWEST_COLUMNS = 5;
const MANY_ROWS = 8;
/** Letters of a figure; what is longer is words, which need not stay on one line. */
const MAX_UNSPLIT = 24;

export function firstPages(pages: FirstPages, figures: Figures): Markup {
  const { verdict, words, table, note, picture, next, heading = "Answer", ofDay, more, second, isWide = false } = pages;
  const drawn = picture === undefined ? "" : figures([picture]);
  const following = ofDay === undefined ? drawn : html`<div class="follows" data-of-day="${ofDay}">${drawn}</div>`;
  return html`<h2>${heading}</h2>
<p class="verdict">${unbroken(verdict)}</p>
<div class="${picture === undefined || words.length === 0 ? "told" : isWide ? "told whole" : "told beside"}">
${words.length === 0 ? "" : html`<div class="answer">${words.map((sentence) => html`<p>${unbroken(sentence)}</p>`)}</div>`}
${following}
</div>
${table === null ? "" : decisionMarkup(table, note)}
${more ?? ""}
${second === undefined ? "" : figures([second])}
<div class="then">
${nextSteps(next)}
${cautionBox()}
</div>`;
}

/** The cautions in full, once on a page: they have to be on the first sheets. */
export function cautionBox(): Markup {
  return html`<div class="caution" id="cautions"><h3>Cautions</h3>${CAUTIONS.map((line) => html`<p>${line}</p>`)}</div>`;
}

/** The decision of a study as its first pages have it. */
export function decisionPages(
  decision: Decision,
  startClockSeconds: number,
  { reader = "", hasFactors = false } = {},
): Omit<FirstPages, "picture" | "note"> {
  const room = {
    rows: plansTold(decision, hasFactors),
    columns: columnsBeside(decision),
    letters: MAX_LETTERS,
    reader,
  };
  return {
    verdict: isolated(decision.verdict),
    words: decision.words.map(isolated),
    table: decision.rows.length > 1 ? decisionTable(decision, startClockSeconds, room) : null,
    next: decision.next.map(isolated),
  };
}

function columnsBeside({ rows }: Decision): number {
  if (!rows.some(({ name }) => name.length > LONG_NAME)) return MAX_COLUMNS;
  return rows.length < MANY_ROWS ? FEW_COLUMNS : FEWEST_COLUMNS;
}

function nextSteps(next: readonly string[]): Markup {
  if (next.length === 0) return html``;
  return html`<div class="next"><h3>What to do next</h3><ul>${next.map((step) => html`<li>${withCode(step)}</li>`)}</ul></div>`;
}

/** What stands between backticks is for the terminal. */
export function withCode(step: string): Markup {
  return html`${step.split("`").map((part, index) => (index % 2 === 1 ? html`<code>${part}</code>` : unbroken(part)))}`;
}

/** On a phone each row is a card, whose figures take their headings along. */
function decisionMarkup({ columns, rows, more, rowsAre = "Plan", left = [] }: DecisionTable, note: string): Markup {
  const heads = columns.map((column) => html`<th scope="col"><bdi>${column}</bdi></th>`);
  const body = rows.map(
    ({ name, cells, best, harm }) =>
      html`<tr class="${best ? "best" : harm === null ? "" : "harmful"}"><th scope="row"><bdi>${name}</bdi>${best ? html` <span class="tag">best</span>` : ""}${harm === null ? "" : html` <span class="tag" title="${isolated(harm)}">does harm</span>`}</th>${cells.map((cell, index) => cellMarkup(cell, columns[index]!))}</tr>`,
  );
  const notes = [
    ...(more === 0
      ? []
      : [`${more === 1 ? "1 more plan stands" : `${more} more plans stand`} in the appendix, under Results.`]),
    ...(left.length === 0 ? [] : [`Left out for want of room: ${left.join(", ")}.`]),
  ];
  const long = rows.length >= MANY_ROWS && rows.some(({ name }) => name.length > LONG_NAME) ? " long" : "";
  return html`<div class="decided"><div class="scroll" tabindex="0" role="group" aria-label="Table to decide by"><table class="decision cards${long}"><caption>${note}</caption><thead><tr><th scope="col">${rowsAre}</th>${heads}</tr></thead><tbody>${body}</tbody></table></div>${notes.length === 0 ? "" : html`<p class="small">${notes.join(" ")}</p>`}</div>`;
}

/** A difference that is not shown is greyed, and said so for who does not see grey. */
function cellMarkup({ value, range, shown }: DecisionCell, column: string): Markup {
  const words = range === "" ? "" : html`<span class="range">${range}</span>`;
  if (value === "") return html`<td class="none"></td>`;
  const grey = shown === false ? html` class="unshown" title="no difference to today's plan shown"` : "";
  return html`<td data-label="${column}"${grey}><span>${value.length > MAX_UNSPLIT ? value : unsplit(value)}${words}</span></td>`;
}
