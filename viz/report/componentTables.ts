import { does } from "../../sim/text/kinds/index.ts";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { StageRecord, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { html, type Markup } from "./html.ts";

const KINDS: Record<StageRecord["kind"], string> = {
  crates: "step on crates",
  station: "station",
  dwell: "dwell stage",
  chain: "overhead chain",
  "chain station": "station on a chain",
};

/** What the base plan's model is made of: the stages in line order, and the crews. */
export function componentTables(results: StudyResults): Markup {
  const { stages, crews } = results.variants[0]!.day;
  const rows = stages.map(
    (stage) =>
      html`<tr><th scope="row"><bdi>${isolated(stage.name)}</bdi></th><td>${KINDS[stage.kind]}</td><td><bdi>${isolated(stage.section)}</bdi></td><td>${countWords(stage.places)}</td><td>${does(stage, "work") ? countWords(stage.positions) : "\u2013"}</td></tr>`,
  );
  const line = html`<p>The line of today's plan: heads (before hanging: crates) pass these stages in order.</p>
<div class="scroll" tabindex="0" role="group" aria-label="Stages of the line"><table><thead><tr><th scope="col">Stage</th><th scope="col">What it is</th><th scope="col">Section</th><th scope="col">Places</th><th scope="col">Positions</th></tr></thead><tbody>${rows}</tbody></table></div>`;
  if (crews.length === 0) return line;
  const people = crews.map(({ name, peopleMax }) => `${isolated(name)} ${formatDecimals(peopleMax, 0)}`).join(", ");
  return html`${line}<p>Crews, most people at once: <bdi>${people}</bdi>.</p>`;
}

/** JSON has no word for "no limit" and writes null. */
function countWords(count: number | null): string {
  return count === null || !Number.isFinite(count) ? "no limit" : formatDecimals(count, 0);
}
