import { formatConfidence } from "../../sim/text/units/index.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import {
  differenceIn,
  differenceWords,
  estimateWords,
  observationNoun,
  observationsOf,
  observationsWords,
  periodNoun,
  type ResponseFormat,
  rankedEffects,
  shownWords,
  studyFormat,
} from "../words/index.ts";
import { html, type Markup } from "./html.ts";

/** More variants than this are turned on their side: one table per response, one row per variant. */
const MAX_COLUMNS = 4;

/** Whether every difference stands in a row of its own, in a table of its response. */
export function listsDifferences({ responses, variants }: StudyResults): boolean {
  return responses.length > 0 && variants.length > MAX_COLUMNS;
}

/** Every response of every variant with interval and difference to the base. */
export function responseTable(results: StudyResults): Markup {
  if (results.responses.length === 0) return html`<p>The study asks for no result.</p>`;
  const table = listsDifferences(results)
    ? html`<p class="small">${captionOf(results)}</p>${results.responses.map((info) => oneResponse(results, info))}`
    : sideBySide(results);
  return html`${table}${meanings(results)}`;
}

/** What shares are taken over, each definition once. */
function meanings({ responses }: StudyResults): Markup[] {
  const sentences = new Set(responses.flatMap(({ meaning }) => (meaning === undefined ? [] : [meaning])));
  return [...sentences].map((sentence) => html`<p class="small">${isolated(sentence)}</p>`);
}

function sideBySide(results: StudyResults): Markup {
  const heads = results.variants.map(
    (variant, index) =>
      html`<th scope="col"><bdi>${isolated(variant.name)}</bdi>${index === 0 && results.variants.length > 1 ? html`<span class="range">today's plan</span>` : ""}</th>`,
  );
  const rows = results.responses.map((info) => {
    const written = { results, info, format: studyFormat(results, info) };
    const cells = results.variants.map((variant) => html`<td>${cell(written, variant)}</td>`);
    return html`<tr><th scope="row"><bdi>${isolated(info.label)}</bdi></th>${cells}</tr>`;
  });
  return html`<div class="scroll"><table class="even"><caption>${captionOf(results)}</caption><thead><tr><th scope="col">Result</th>${heads}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

function oneResponse(results: StudyResults, info: ResponseInfo): Markup {
  const written = { results, info, format: studyFormat(results, info) };
  const rows = results.variants.map(
    (variant, index) =>
      html`<tr><th scope="row"><bdi>${isolated(variant.name)}</bdi></th><td>${meanCell(written, variant)}</td><td>${index === 0 ? "today's plan" : differenceLine(written, variant)}</td></tr>`,
  );
  return html`<h3><bdi>${isolated(info.label)}</bdi></h3><div class="scroll"><table class="even"><thead><tr><th scope="col">Variant</th><th scope="col">Mean</th><th scope="col">Difference</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

/** A response and how it is written, which depends on all variants: worked out once. */
interface Written {
  results: StudyResults;
  info: ResponseInfo;
  format: ResponseFormat;
}

function cell(written: Written, variant: VariantResults): Markup {
  const difference = differenceLine(written, variant);
  return html`${meanCell(written, variant)}${difference === "" ? "" : html`<span class="range">difference ${difference}</span>`}`;
}

function meanCell({ results, info, format }: Written, variant: VariantResults): Markup {
  const { confidence, replications } = results.study;
  const estimate = variant.estimates[info.key];
  const words = estimateWords(estimate, format, confidence);
  // A single day has no interval anywhere; saying so once above the table is enough.
  const interval = replications < 2 ? "" : html`<span class="range">${words.interval}</span>`;
  return html`${words.mean}${interval}${fewerNote(results, variant, estimate?.n)}`;
}

/** Says when a mean rests on less than the others: days without a value, or a variant that was dropped. */
function fewerNote(results: StudyResults, variant: VariantResults, n: number | undefined): Markup | "" {
  const noun = observationNoun(results);
  const own = observationsOf(results, variant);
  if (n !== undefined && n < own) return html`<span class="range">${n} of ${own} ${noun} gave a value</span>`;
  if (variant.days === results.study.replications) return "";
  return html`<span class="range">dropped after ${own} ${noun}</span>`;
}

function differenceLine({ results, info, format }: Written, variant: VariantResults): string {
  const difference = differenceIn(variant, info.key);
  if (!difference) return "";
  const words = differenceWords(difference, format, results.study.confidence);
  return `${words.mean}${words.interval === "" ? "" : ` (${words.interval})`}: ${words.verdict}`;
}

function captionOf(results: StudyResults): string {
  const { replications, confidence } = results.study;
  if (replications < 2) return `One simulated ${periodNoun(results)}; another would differ.`;
  const differences =
    results.variants.length > 1
      ? ` Differences are to today's plan, compared on the same ${periodNoun(results)}s. ${shownWords(results)}`
      : "";
  return `Mean over ${observationsWords(results)}, with ${formatConfidence(confidence)} intervals.${differences}`;
}

/** The effects of a screening's factors on every response, the factor that matters most first; nothing for other designs. */
export function screeningTables(results: StudyResults): Markup {
  if (results.screening === null) return html``;
  return html`${results.responses.map((info) => oneScreening(results, info))}`;
}

function oneScreening(results: StudyResults, info: ResponseInfo): Markup {
  const format = studyFormat(results, info);
  const ranked = rankedEffects(results, info);
  if (ranked.length === 0) return html``;
  const rows = ranked.map(({ name, effects: { muStar, muStarHalfWidth, mu, sigma, n } }) => {
    const plain = (value: number | null) =>
      value === null ? "no value" : format.difference(value, muStarHalfWidth).replace(/^\+/, "");
    return html`<tr><th scope="row"><bdi>${name}</bdi></th><td>${plain(muStar)}</td><td>${plain(muStarHalfWidth)}</td><td>${format.difference(mu, muStarHalfWidth)}</td><td>${plain(sigma)}</td><td>${n}</td></tr>`;
  });
  const caption = `What each factor does over its whole range. Elementary effects (Morris 1991), mean size after Campolongo, Cariboni and Saltelli (2007), half-width at ${formatConfidence(results.study.confidence)} over trajectories.`;
  return html`<h3>Which factors matter: <bdi>${isolated(info.label)}</bdi></h3><div class="scroll"><table class="even"><caption>${caption}</caption><thead><tr><th scope="col">Factor</th><th scope="col">Mean size \u03BC*</th><th scope="col">Half-width</th><th scope="col">Mean \u03BC</th><th scope="col">Spread \u03C3</th><th scope="col">Effects</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}
