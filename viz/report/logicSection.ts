import { does } from "../../sim/text/kinds/index.ts";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { StageRecord, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { html, type Markup } from "./html.ts";

/** How the model works, for a reader who will not read the code. */
export const MODEL_LOGIC: readonly string[] = [
  "Discrete-event simulation of one day: the clock jumps from one event to the next (a head is taken up, a head is finished, a stop, a break). Events at the same moment have a fixed order, so a day depends only on the plan, the seed and its number.",
  "A station has places to wait in and one or more positions to work at; first in, first out. A finished head keeps its position until the next stage has a place (blocking after service). When a place becomes free, the stage before it goes on at once.",
  "A machine works by itself. Work by hand needs its people for the whole cycle; a person finishes the head in hand before a break.",
  "In bleeding and chilling many heads stay side by side, each for at least the time the plan gives; first in, first out.",
  "A breakdown stops a position or a whole station. It comes after so much running time or so much time by the clock, as the plan says. Work that it interrupts goes on with the time left.",
  "Every stage has its own random numbers for each purpose and day, so a change at one station leaves the luck of all others as it was (common random numbers).",
];

/** What the model leaves out, whatever the plan. */
export const MODEL_LIMITS: readonly string[] = [
  "Only what the plan states is in the model. People tire, learn, step in and change places, and machines wear, only where the plan says so.",
  "Times are independent from head to head unless the plan says otherwise; real lines have good and bad hours.",
  "Intervals cover chance alone. They do not cover errors in the plan's figures or in the model, which are often larger.",
  "A day in pictures is one of many possible days; another day of the same plan looks different.",
  "An animal is a head with times here. Its condition, fear and pain, and whether stunning works, are not modelled.",
];

export function logicSection(results: StudyResults): Markup {
  return html`<h2>Logic</h2>${componentTables(results)}<p>How the model works:</p><ul>${logicOf(results).map((line) => html`<li>${line}</li>`)}</ul>`;
}

/** A week has more to explain. */
function logicOf({ plan }: StudyResults): readonly string[] {
  return plan.week === undefined ? MODEL_LOGIC : [...MODEL_LOGIC, WEEK_LOGIC];
}

const WEEK_LOGIC =
  "A week is a chain of such days: each begins with what the one before left. Where the plan lets them, live animals wait in lairage and carcasses hang in a chiller over the night; a head in bleeding never does. Machines go on in the morning with the running time that they had.";

export function limitsOfModel(): Markup {
  return html`<h2>Limits of the model</h2><ul>${MODEL_LIMITS.map((line) => html`<li>${line}</li>`)}</ul>`;
}

const KINDS: Record<StageRecord["kind"], string> = {
  crates: "step on crates",
  station: "station",
  dwell: "place where heads stay",
  chain: "overhead chain",
  "chain station": "station on a chain",
};

/** What the model of today's plan is made of: the stages in line order, and the crews. */
export function componentTables(results: StudyResults): Markup {
  const { stages, crews } = results.variants[0]!.day;
  const rows = stages.map(
    (stage) =>
      html`<tr><th scope="row"><bdi>${isolated(stage.name)}</bdi></th><td>${KINDS[stage.kind]}</td><td><bdi>${isolated(stage.section)}</bdi></td><td>${countWords(stage.places)}</td><td>${does(stage, "work") ? countWords(stage.positions) : "\u2013"}</td></tr>`,
  );
  const line = html`<p>Stages of today's plan, in the order in which heads pass them; before hanging, crates do.</p>
<div class="scroll" tabindex="0" role="group" aria-label="Stages of the line"><table><thead><tr><th scope="col">Stage</th><th scope="col">What it is</th><th scope="col">Section</th><th scope="col">Places</th><th scope="col">Positions</th></tr></thead><tbody>${rows}</tbody></table></div>`;
  if (crews.length === 0) return line;
  const people = crews.map(({ name, peopleMax }) => `${isolated(name)} ${formatDecimals(peopleMax, 0)}`).join(", ");
  return html`${line}<p>People in each crew, the most at once: <bdi>${people}</bdi>.</p>`;
}

/** JSON has no word for "no limit" and writes null. */
function countWords(count: number | null): string {
  return count === null || !Number.isFinite(count) ? "no limit" : formatDecimals(count, 0);
}
