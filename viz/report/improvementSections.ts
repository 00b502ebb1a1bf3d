import { formatConfidence, formatDecimals, formatShare } from "../../sim/text/units/index.ts";
import type { Found, Improvement, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { estimateWords, goalFormat, responseFormat, usesWords } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { html, type Markup } from "./html.ts";
import { toldAnswer, withWelfare } from "./reportSections.ts";
import { tradeOffChart } from "./studyCharts.ts";

/** What a search found, before the days that compare the pick with the plan as it is: answer, choice, curve, designs tried. */
export function improvementSections(found: Improvement, results: StudyResults, figures: Figures): Markup[] {
  return [
    toldAnswer(withWelfare(results, found.words.map(isolated)), tradeOffChart(found) ?? undefined, figures),
    choiceSection(found),
    ...(found.curve.length === 0 ? [] : [curveSection(found)]),
    triedSection(found),
  ];
}

function choiceSection(found: Improvement): Markup {
  const { recommended } = found;
  return html`<h2>What was chosen, and how surely</h2>
${recommended === null ? "" : sharesTable(found, recommended)}
${finalistsTable(found)}
${recommended === null || recommended.limits.length === 0 ? "" : limitsTable(found, recommended)}`;
}

function sharesTable({ allocated }: Improvement, { counts, uses }: Found): Markup {
  const { kind, elements, unit, most } = allocated;
  const shown = (count: number | null) => {
    if (count === null) return "\u2013";
    return kind === "budget" ? (count === 1 ? "bought" : "not bought") : formatDecimals(count, 0);
  };
  const rows = elements.map(
    ({ name, base }, index) =>
      html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th><td>${shown(base)}</td><td>${shown(counts === null ? base : counts[index]!)}</td></tr>`,
  );
  const total = html`<tr><th scope="row">of ${formatDecimals(most, 0)} ${isolated(unit)}</th><td>${kind === "budget" ? "" : shown(sumOf(elements.map(({ base }) => base)))}</td><td>${uses === null ? "\u2013" : formatDecimals(uses, 0)}</td></tr>`;
  return html`<div class="scroll"><table class="even"><caption>What is shared out.</caption><thead><tr><th scope="col"></th><th scope="col">As it is</th><th scope="col">Recommended</th></tr></thead><tbody>${[...rows, total]}</tbody></table></div>`;
}

function sumOf(counts: readonly (number | null)[]): number | null {
  return counts.reduce<number | null>((sum, count) => (sum === null || count === null ? null : sum + count), 0);
}

function finalistsTable(found: Improvement): Markup {
  const { finalists, choice, confidence } = found;
  const limited = finalists.some(({ limits }) => limits !== "kept") || (found.recommended?.limits.length ?? 0) > 0;
  const picked = found.recommended?.name;
  const rows = finalists.map((finalist) => {
    const fate =
      finalist.name === picked
        ? html`<b>recommended</b>`
        : finalist.droppedAfter === null
          ? ""
          : `dropped after ${finalist.droppedAfter} days`;
    return html`<tr><th scope="row"><bdi>${isolated(finalist.name)}</bdi></th><td>${usesWords(finalist, found)}</td><td>${goalCell(finalist, found)}</td><td>${finalist.goal?.n ?? 0}</td>${limited ? html`<td>${finalist.limits}</td>` : ""}<td>${fate}</td></tr>`;
  });
  const promise =
    choice.kind === "selected"
      ? `Picked with a probability of ${formatConfidence(choice.probability)} or more of being the best of them, if that is better than the others by what the answer names.`
      : "No probability is stated for the pick; the answer says why.";
  return html`<div class="scroll"><table><caption>The finalists, on days that the search did not see. ${promise} Each was simulated until it was dropped or picked: means rest on different numbers of days, and what decides is the difference on the same days. The answer tells the pick on days of its own, since one that wins is more often lucky than not. Every ${formatConfidence(confidence)} interval by itself.</caption><thead><tr><th scope="col">Design</th><th scope="col">Takes</th><th scope="col">${isolated(found.goal.label)}</th><th scope="col">Days</th>${limited ? html`<th scope="col">Time limits</th>` : ""}<th scope="col">In the choice</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function limitsTable({ confidence }: Improvement, { limits }: NonNullable<Improvement["recommended"]>): Markup {
  const rows = limits.map(({ name, share, found }) => {
    const [mean, interval] = shareCells(found);
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th><td>below ${formatShare(share)}</td><td>${mean}${interval === "" ? "" : html`<span class="range">${interval}</span>`}</td><td>${verdictWords(share, found)}</td></tr>`;
  });
  return html`<div class="scroll"><table class="even"><caption>Time limits of the recommended design: share of heads outside each, with the ${formatConfidence(confidence)} interval. The figures are the question's own; the law at the site decides.</caption><thead><tr><th scope="col">Limit</th><th scope="col">Allowed outside it</th><th scope="col">Found outside it</th><th scope="col">Verdict</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

type Share = NonNullable<Improvement["recommended"]>["limits"][number]["found"];

function shareCells(found: Share): [string, string] {
  if (found === null) return ["no head passed it", ""];
  const { value, range } = responseFormat({ key: "", label: "", unit: "", format: "share", better: "less" }, 0);
  const { mean, low, high, halfWidth } = found;
  return [value(mean, halfWidth), low === null || high === null ? "" : range(low, high, halfWidth)];
}

/** What the new days say of it; the choice was made on others. */
function verdictWords(share: number, found: Share): string {
  if (found === null) return "no head passed it";
  if (found.mean === 0) return `none seen on ${found.n} days`;
  if (found.high !== null && found.high < share) return "kept";
  return "kept on the days of the choice; not shown by these days alone";
}

function curveSection(found: Improvement): Markup {
  const rows = found.curve.map((point) => {
    const notes = [
      point.undominated ? "" : "another gives as much for less",
      point.keepsLimits ? "" : "beyond a time limit",
    ].filter((note) => note !== "");
    return html`<tr><th scope="row">${usesWords(point, found)}</th><td><bdi>${isolated(point.name)}</bdi></td><td>${goalCell(point, found)}</td><td>${notes.join(", ")}</td></tr>`;
  });
  return html`<h2>What more of the total brings</h2>
<div class="scroll"><table><caption>The best design tried for no more than each total, on days that the search did not see; every ${formatConfidence(found.confidence)} interval by itself.</caption><thead><tr><th scope="col">Takes</th><th scope="col">Design</th><th scope="col">${isolated(found.goal.label)}</th><th scope="col">To note</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function triedSection(found: Improvement): Markup {
  const { tried, effort, confidence } = found;
  const limited = tried.some(({ keepsLimits }) => !keepsLimits);
  const rows = tried.map((design) => {
    const notes = [
      design.finalist ? "finalist" : "",
      design.allowed ? "" : "outside the totals that are allowed, tried for the curve",
      limited && !design.keepsLimits ? "beyond a time limit" : "",
    ].filter((note) => note !== "");
    return html`<tr><th scope="row"><bdi>${isolated(design.name)}</bdi></th><td>${usesWords(design, found)}</td><td>${goalCell(design, found)}</td><td>${notes.join(", ")}</td></tr>`;
  });
  return html`<h2>Designs tried</h2>
<p>${formatDecimals(effort.designsTried, 0)} of ${formatDecimals(effort.designsAllowed, 0)} designs that are allowed were tried in the search, each on ${tried[0]?.goal?.n ?? 0} days, all on the same random numbers: first what the analytic estimate and the slopes of the plan as it is suggest, then, round after round, the neighbours of the best so far that promise most. The search promises nothing about designs that it passed over. Its seed is <code>${isolated(`${found.seed}, search`)}</code>; choice and curve have <code>${isolated(found.seed)}</code>, and the comparison of the pick with the plan as it is, which the answer and the rest of this report tell of, has <code>${isolated(`${found.seed}, comparison`)}</code>.</p>
<div class="scroll"><table><caption>The best first. So few days are a sieve, not a result: what leads here may owe that to luck, so the choice was made on other days. Every ${formatConfidence(confidence)} interval by itself.</caption><thead><tr><th scope="col">Design</th><th scope="col">Takes</th><th scope="col">${isolated(found.goal.label)}</th><th scope="col">To note</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function goalCell({ goal }: Found, found: Improvement): Markup {
  const words = estimateWords(goal ?? undefined, goalFormat(found), found.confidence);
  return html`${words.mean}${words.interval === "" ? "" : html`<span class="range">${words.interval}</span>`}`;
}
