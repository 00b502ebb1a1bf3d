import type { StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { confidenceWords, isSingleDay, quoted, shareEstimate, whyWords } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { html, type Markup, unbroken } from "./html.ts";
import { whyCharts, whyVariants } from "./studyCharts.ts";

/** What to change first: in ranked words, then as pictures; nothing where the days were not asked why they ended. */
export function whySection(results: StudyResults, figures: Figures): Markup {
  const base = results.variants[0]!;
  if (base.why === null) return html``;
  return html`<h2>What to change first</h2>
${rankedWords(results, base)}
${stageTable(results)}
${whyFigures(results, figures)}`;
}

/** Whether `whySection` has anything to say. */
export function tellsWhy({ variants }: StudyResults): boolean {
  return variants[0]!.why !== null;
}

function rankedWords(results: StudyResults, { name, why }: VariantResults): Markup {
  const { advice } = results;
  const list = (lines: readonly string[]) => html`<ol>${lines.map((line) => html`<li>${unbroken(line)}</li>`)}</ol>`;
  if (advice !== null) {
    return html`${list(advice.words.map(isolated))}
<p class="small">Each change was tried by itself against the plan as it is, in ${advice.days} days on the same random numbers.</p>`;
  }
  const whose = isSingleDay(results)
    ? "on this one day"
    : `in the base case, ${quoted(name)}, at ${confidenceWords(results.study.confidence)}`;
  return html`<p>Look first at what the end of work was owed to ${whose}, the longest first:</p>
${list(whyWords(why!))}
<p class="small">Every second up to the end of work is owed to what released it; a stage that binds a large share is where a change can help, and once it is quicker another one binds. What a change is worth has to be tried: <code>gambrel why</code> with the plan tries the changes that suggest themselves. Breaks, and the time that bleeding and chilling take, are there for people, animals and hygiene: they are no reserve.</p>`;
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
      : html`<p class="small paper">The same pictures of the other variants fold open on the screen and are in the run's charts; what is folded is not printed.</p>`;
  return html`${open}${note}${others}`;
}

/** Which stages bind most in each variant: how the bottleneck moves with what was changed. Not for a screening's many points. */
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
  const caption = `Stages that bind the end of work, the largest share first, with ${confidenceWords(results.study.confidence)} intervals.`;
  return html`<div class="scroll"><table class="even"><caption>${caption}</caption><thead><tr><th scope="col">Variant</th><th scope="col">First</th><th scope="col">Second</th><th scope="col">Third</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}
