import { formatConfidence } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { isSingleDay, quoted, shareEstimate, WHY_NOTE, whyWords } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { withCode } from "./firstPages.ts";
import { html, type Markup, unbroken } from "./html.ts";
import { whyCharts, whyVariants } from "./studyCharts.ts";

/**
 * What to change first, where changes were simulated; then where the time went, in words and pictures. Nothing where the
 * days were not asked why they ended.
 */
export function whySection(results: StudyResults, figures: Figures): Markup {
  const base = results.variants[0]!;
  if (base.why === null) return html``;
  const title = results.advice === null ? html`<h2>Where the time went</h2>` : html`<h3>Where the time went</h3>`;
  return html`${advised(results)}
${title}
${timeWords(results, base)}
${stageTable(results)}
${whyFigures(results, figures)}`;
}

/** Whether `whySection` has anything to say. */
export function tellsWhy({ variants }: StudyResults): boolean {
  return variants[0]!.why !== null;
}

function advised({ advice }: StudyResults): Markup {
  if (advice === null) return html``;
  return html`<h2>What each change is worth</h2>
<ul>${advice.words.map((line) => html`<li>${unbroken(isolated(line))}</li>`)}</ul>`;
}

function timeWords(results: StudyResults, { name, why }: VariantResults): Markup {
  const whose = isSingleDay(results)
    ? "On this one day, the longest first. For every minute we traced which step the line was waiting for:"
    : `Today's plan, ${quoted(name)}, the longest first, with ${formatConfidence(results.study.confidence)} intervals. For every minute we traced which step the line was waiting for:`;
  return html`<p>${whose}</p>
<ul>${whyWords(why!).map((line) => html`<li>${unbroken(line)}</li>`)}</ul>
<p class="small">${withCode(noteFor(results))}</p>`;
}

/** Where changes were simulated nobody has to be told to do so. */
function noteFor({ advice }: StudyResults): string {
  return advice === null ? WHY_NOTE : "This shows where the time went; what a change is worth is told above.";
}

/** The base is shown; the others fold open, and are left out on paper as long as they are folded. */
function whyFigures(results: StudyResults, figures: Figures): Markup {
  const draw = (variant: VariantResults) => figures(whyCharts(results, variant));
  const [base, ...folded] = whyVariants(results);
  // Drawn in reading order, because drawing numbers the figures.
  const open = draw(base!);
  const others = folded.map(
    (variant) => html`<details><summary>The same for ${quoted(variant.name)}</summary>${draw(variant)}</details>`,
  );
  const note =
    folded.length === 0
      ? html``
      : html`<p class="small paper">The same pictures of the other variants open on the screen and are among the run's charts; what is closed is not printed.</p>`;
  return html`${open}${note}${others}`;
}

/** Which stages the line waited for most in each variant: how the bottleneck moves with what was changed. Not for a screening's many points. */
function stageTable(results: StudyResults): Markup {
  const told = results.variants.filter(({ why }) => why !== null);
  if (told.length < 2 || results.screening !== null) return html``;
  const rows = told.map(({ name, why }) => {
    const cells = [0, 1, 2].map((rank) => {
      const found = why!.stages[rank];
      if (found === undefined) return html`<td>\u2013</td>`;
      return html`<td><bdi>${isolated(found.stage)}</bdi><span class="range">${shareEstimate(found.share)}</span></td>`;
    });
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th>${cells}</tr>`;
  });
  const caption = `Steps that the line waited for longest, as shares of the time to the end of work, with ${formatConfidence(results.study.confidence)} intervals.`;
  return html`<div class="scroll"><table class="even"><caption>${caption}</caption><thead><tr><th scope="col">Variant</th><th scope="col">First</th><th scope="col">Second</th><th scope="col">Third</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}
