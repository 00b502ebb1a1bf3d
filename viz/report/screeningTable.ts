import { formatConfidence } from "../../sim/text/units/index.ts";
import type { ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { rankedEffects, studyFormat } from "../words/index.ts";
import { html, type Markup } from "./html.ts";

/** The effects of a screening's factors on every response, the factor that matters most first; nothing for other designs. */
export function screeningTables(results: StudyResults): Markup {
  if (results.screening === null) return html``;
  return html`${results.responses.map((info) => oneTable(results, info))}`;
}

function oneTable(results: StudyResults, info: ResponseInfo): Markup {
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
