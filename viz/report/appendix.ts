import { html, type Markup, trusted } from "./html.ts";

interface Part {
  title: Markup;
  id: string;
  body: Markup;
}

const STRESS =
  " Titles follow the STRESS guidelines: Monks, Currie, Onggo, Robinson, Kunc and Taylor (2019), Strengthening the reporting of empirical simulation studies, Journal of Simulation 13(1), 55\u201367.";

/**
 * Parts that each begin with a heading of the second rank, folded up below a list of contents. A link opens the part that it
 * leads to: browsers unfold what a link points into, and the page's script does it where they do not. `source` says whom the
 * order of a simulation study's parts is from.
 */
export function appendix(sections: readonly Markup[], source = STRESS): Markup[] {
  const parts = sections.map(partOf);
  const contents = parts.map(({ title, id }) => html`<li><a href="#${id}">${title}</a></li>`);
  return [
    html`<div class="screen appendix"><h2 id="appendix">Appendix</h2>
<p class="small">Each part opens on demand; only what is open is printed.${source}</p>
<nav aria-label="Parts of the appendix"><ul class="contents">${contents}</ul></nav></div>`,
    ...parts.map(
      ({ title, id, body }) =>
        html`<details class="part"><summary><h2>${title}</h2></summary><div class="body" id="${id}">${body}</div></details>`,
    ),
  ];
}

const HEADING = /^\s*<h2[^>]*>(.*?)<\/h2>/s;

/** Throws RangeError for a section without a heading: it could not be found again. */
function partOf({ markup }: Markup, index: number): Part {
  const found = HEADING.exec(markup);
  if (found === null) throw new RangeError(`appendix: section ${index + 1} does not begin with a heading`);
  return { title: trusted(found[1]!), id: `part-${index + 1}`, body: trusted(markup.slice(found[0].length)) };
}
