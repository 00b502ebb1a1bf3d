import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { confidenceWords, differenceIn, differenceWords, estimateWords, studyFormat } from "../words/index.ts";
import { html, type Markup } from "./html.ts";

/** More variants than this are turned on their side: one table per response, one row per variant. */
const MOST_COLUMNS = 4;

/** Every response of every variant with interval and difference to the base. */
export function responseTable(results: StudyResults): Markup {
  if (results.responses.length === 0) return html`<p>No response was asked for.</p>`;
  return results.variants.length <= MOST_COLUMNS
    ? sideBySide(results)
    : html`${results.responses.map((info) => oneResponse(results, info))}`;
}

function sideBySide(results: StudyResults): Markup {
  const heads = results.variants.map(
    (variant, index) =>
      html`<th scope="col"><bdi>${isolated(variant.name)}</bdi>${index === 0 && results.variants.length > 1 ? html`<span class="range">base case</span>` : ""}</th>`,
  );
  const rows = results.responses.map(
    (info) =>
      html`<tr><th scope="row"><bdi>${isolated(info.label)}</bdi></th>${results.variants.map((variant) => html`<td>${cell(results, info, variant)}</td>`)}</tr>`,
  );
  return html`<div class="scroll"><table class="even"><caption>${captionOf(results)}</caption><thead><tr><th scope="col">Response</th>${heads}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

function oneResponse(results: StudyResults, info: ResponseInfo): Markup {
  const rows = results.variants.map(
    (variant, index) =>
      html`<tr><th scope="row"><bdi>${isolated(variant.name)}</bdi></th><td>${meanCell(results, info, variant)}</td><td>${index === 0 ? "base case" : differenceLine(results, info, variant)}</td></tr>`,
  );
  return html`<h3><bdi>${isolated(info.label)}</bdi></h3><div class="scroll"><table class="even"><caption>${captionOf(results)}</caption><thead><tr><th scope="col">Variant</th><th scope="col">Mean</th><th scope="col">Difference</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function cell(results: StudyResults, info: ResponseInfo, variant: VariantResults): Markup {
  const difference = differenceLine(results, info, variant);
  return html`${meanCell(results, info, variant)}${difference === "" ? "" : html`<span class="range">difference ${difference}</span>`}`;
}

function meanCell(results: StudyResults, info: ResponseInfo, variant: VariantResults): Markup {
  const { confidence, replications } = results.study;
  const estimate = variant.estimates[info.key];
  const words = estimateWords(estimate, studyFormat(results, info), confidence);
  // A single day has no interval anywhere; saying so once above the table is enough.
  const interval = replications < 2 ? "" : html`<span class="range">${words.interval}</span>`;
  const fewer = estimate !== undefined && estimate.n < replications;
  const note = fewer ? html`<span class="range">${estimate.n} of ${replications} replications gave a value</span>` : "";
  return html`${words.mean}${interval}${note}`;
}

function differenceLine(results: StudyResults, info: ResponseInfo, variant: VariantResults): string {
  const difference = differenceIn(variant, info.key);
  if (!difference) return "";
  const words = differenceWords(difference, studyFormat(results, info), results.study.confidence);
  return `${words.mean}${words.interval === "" ? "" : ` (${words.interval})`}: ${words.verdict}`;
}

function captionOf(results: StudyResults): string {
  const { replications, confidence } = results.study;
  if (replications < 2) return "One day: single values, no interval.";
  const differences =
    results.variants.length > 1
      ? " Differences are to the base case, paired by seed; “shown” means that the interval leaves 0 out."
      : "";
  return `Mean over ${replications} replications, below it the ${confidenceWords(confidence)} interval.${differences}`;
}
