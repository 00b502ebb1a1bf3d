import { formatConfidence, formatDecimals, formatShare } from "../../sim/text/units/index.ts";
import type { Found, Improvement, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { estimateWords, goalFormat, improvementTable, responseFormat, usesWords } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { firstPages } from "./firstPages.ts";
import { html, type Markup, unbroken } from "./html.ts";
import { withWelfare } from "./reportSections.ts";
import { tradeOffChart } from "./studyCharts.ts";

/** Sentences below the verdict; the others stand with the choice. */
const MAX_TOLD = 3;

/** What a search found, before the days that compare the recommended arrangement with today's plan: answer, choice, curve, arrangements tried. */
export function improvementSections(found: Improvement, results: StudyResults, figures: Figures): Markup[] {
  return [
    firstPages(
      {
        verdict: isolated(found.verdict),
        words: withWelfare(results, found.words.slice(0, MAX_TOLD).map(isolated)),
        table: improvementTable(found),
        note: `Means over ${found.recommended?.goal?.n ?? 0} new ${period(found)}, the same for both, with ${formatConfidence(found.confidence)} ranges. Grey: no difference to today's arrangement shown.`,
        picture: tradeOffChart(found) ?? undefined,
        next: found.next.map(isolated),
      },
      figures,
    ),
    choiceSection(found),
    ...(found.curve.length === 0 ? [] : [curveSection(found)]),
    triedSection(found),
  ];
}

function choiceSection(found: Improvement): Markup {
  const { recommended } = found;
  return html`<h2>What is recommended, and how sure that is</h2>
${found.words.slice(MAX_TOLD).map((words) => html`<p>${unbroken(isolated(words))}</p>`)}
${recommended === null ? "" : sharesTable(found, recommended)}
${finalistsTable(found)}
${recommended === null || recommended.limits.length === 0 ? "" : limitsTable(found, recommended)}`;
}

function sharesTable(found: Improvement, { counts, uses }: Found): Markup {
  const { kind, elements, unit, most } = found.allocated;
  const shown = (count: number | null, { time }: Partial<(typeof elements)[number]> = {}) => {
    if (count === null) return "\u2013";
    if (time !== undefined) return time.moments[count]!;
    return kind === "budget" ? (count === 1 ? "bought" : "not bought") : formatDecimals(count, 0);
  };
  const rows = elements.map(
    (element, index) =>
      html`<tr><th scope="row"><bdi>${isolated(element.name)}</bdi></th><td>${shown(element.base, element)}</td><td>${shown(counts === null ? element.base : counts[index]!, element)}</td></tr>`,
  );
  const total = html`<tr><th scope="row">of ${formatDecimals(most, 0)} ${isolated(unit)}</th><td>${kind === "budget" ? "" : shown(sumOf(elements.map(({ base }) => base)))}</td><td>${uses === null ? "\u2013" : formatDecimals(uses, 0)}</td></tr>`;
  return html`<div class="scroll"><table class="even"><caption>${isMoved(found) ? "What is moved." : "What is shared out."}</caption><thead><tr><th scope="col"></th><th scope="col">Today</th><th scope="col">Recommended</th></tr></thead><tbody>${isMoved(found) ? rows : [...rows, total]}</tbody></table></div>`;
}

/** Hours, days and numbers of people that are moved have no total. */
function isMoved({ allocated }: Improvement): boolean {
  return allocated.kind === "times" || allocated.kind === "week";
}

function sumOf(counts: readonly (number | null)[]): number | null {
  return counts.reduce<number | null>((sum, count) => (sum === null || count === null ? null : sum + count), 0);
}

function finalistsTable(found: Improvement): Markup {
  const { finalists, choice, confidence } = found;
  const days = period(found);
  const limited = finalists.some(({ limits }) => limits !== "kept") || (found.recommended?.limits.length ?? 0) > 0;
  const picked = found.recommended?.name;
  const rows = finalists.map((finalist) => {
    const fate =
      finalist.name === picked
        ? html`<b>recommended</b>`
        : finalist.droppedAfter === null
          ? ""
          : `dropped after ${finalist.droppedAfter} ${days}`;
    return html`<tr><th scope="row"><bdi>${isolated(finalist.name)}</bdi></th><td>${usesWords(finalist, found)}</td><td>${goalCell(finalist, found)}</td><td>${finalist.goal?.n ?? 0}</td>${limited ? html`<td>${finalist.limits}</td>` : ""}<td>${fate}</td></tr>`;
  });
  const promise =
    choice.kind === "selected"
      ? `The recommended one is the best of them with a probability of ${formatConfidence(choice.probability)} or more, unless others are as close to it as the answer says.`
      : "No probability is stated; the answer says why.";
  return html`<div class="scroll"><table><caption>Finalists, simulated on new ${days}. ${promise} Each was simulated until it was dropped or recommended, so their means rest on different numbers of ${days}; differences on the same ${days} decided. The recommended arrangement was simulated again on new ${days} for the answer, because a winner is often partly lucky. Each ${formatConfidence(confidence)} interval stands by itself.</caption><thead><tr><th scope="col">Arrangement</th><th scope="col">Takes</th><th scope="col">${isolated(found.goal.label)}</th><th scope="col">${period(found) === "weeks" ? "Weeks" : "Days"}</th>${limited ? html`<th scope="col">Time limits</th>` : ""}<th scope="col">Result</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function limitsTable({ confidence }: Improvement, { limits }: NonNullable<Improvement["recommended"]>): Markup {
  const rows = limits.map(({ name, share, found }) => {
    const [mean, interval] = shareCells(found);
    return html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th><td>below ${formatShare(share)}</td><td>${mean}${interval === "" ? "" : html`<span class="range">${interval}</span>`}</td><td>${verdictWords(share, found)}</td></tr>`;
  });
  return html`<div class="scroll"><table class="even"><caption>Time limits of the recommended arrangement: share of heads outside each, with its ${formatConfidence(confidence)} interval. The question sets what is allowed; the law at the site decides.</caption><thead><tr><th scope="col">Limit</th><th scope="col">Allowed outside it</th><th scope="col">Found outside it</th><th scope="col">Verdict</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

type Share = NonNullable<Improvement["recommended"]>["limits"][number]["found"];

function shareCells(found: Share): [string, string] {
  if (found === null) return ["no head was timed", ""];
  const { value, range } = responseFormat({ key: "", label: "", unit: "", format: "share", better: "less" }, 0);
  const { n, mean, low, high, halfWidth } = found;
  if (mean === 0 && high !== null && high > 0) return ["0 %", `none on ${n} days, at most ${value(high, high)}`];
  return [value(mean, halfWidth), low === null || high === null ? "" : range(low, high, halfWidth)];
}

/** What the new days say of it; the choice was made on others. */
function verdictWords(share: number, found: Share): string {
  if (found === null) return "no head was timed";
  if (found.mean === 0) return `none seen on ${found.n} days`;
  if (found.high !== null && found.high < share) return "kept";
  return "kept on the days of the choice; these days alone do not show it";
}

function curveSection(found: Improvement): Markup {
  const rows = found.curve.map((point) => {
    const notes = [
      point.undominated ? "" : "another choice gives as much for less",
      point.keepsLimits ? "" : "breaks a time limit",
    ].filter((note) => note !== "");
    return html`<tr><th scope="row">${usesWords(point, found)}</th><td><bdi>${isolated(point.name)}</bdi></td><td>${goalCell(point, found)}</td><td>${notes.join(", ")}</td></tr>`;
  });
  return html`<h2>What a larger total brings</h2>
<div class="scroll"><table><caption>The best arrangement tried for each total or less, on new days. Each ${formatConfidence(found.confidence)} interval stands by itself.</caption><thead><tr><th scope="col">Takes</th><th scope="col">Arrangement</th><th scope="col">${isolated(found.goal.label)}</th><th scope="col">To note</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function triedSection(found: Improvement): Markup {
  const { tried, effort, confidence } = found;
  const days = period(found);
  const first =
    found.allocated.kind === "week"
      ? "each move by itself, then what gained together"
      : "what an estimate of today's plan suggests";
  const limited = tried.some(({ keepsLimits }) => !keepsLimits);
  const rows = tried.map((design) => {
    const notes = [
      design.finalist ? "finalist" : "",
      design.allowed ? "" : "outside the allowed totals, tried for the curve",
      limited && !design.keepsLimits ? "breaks a time limit" : "",
    ].filter((note) => note !== "");
    return html`<tr><th scope="row"><bdi>${isolated(design.name)}</bdi></th><td>${usesWords(design, found)}</td><td>${goalCell(design, found)}</td><td>${notes.join(", ")}</td></tr>`;
  });
  return html`<h2>Arrangements tried</h2>
<p>The search tried ${formatDecimals(effort.designsTried, 0)} of ${formatDecimals(effort.designsAllowed, 0)} allowed arrangements, on the same ${tried[0]?.goal?.n ?? 0} ${days}; those that fell behind on the first ${days} had no more. It began with ${first}. Round after round it then tried the most promising neighbours of the best so far. Arrangements that it never tried may be better. Seeds: search <code>${isolated(`${found.seed}, search`)}</code>; choice and curve <code>${isolated(found.seed)}</code>; comparison of the recommended arrangement with today's plan, in the answer and the rest of this report, <code>${isolated(`${found.seed}, comparison`)}</code>.</p>
<div class="scroll"><table><caption>The best first. Do not read results from so few ${days}: what leads here may only be lucky, so the choice was made on other ${days}. Each ${formatConfidence(confidence)} interval stands by itself.</caption><thead><tr><th scope="col">Arrangement</th><th scope="col">Takes</th><th scope="col">${isolated(found.goal.label)}</th><th scope="col">To note</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}

function goalCell({ goal }: Found, found: Improvement): Markup {
  const words = estimateWords(goal ?? undefined, goalFormat(found), found.confidence);
  return html`${words.mean}${words.interval === "" ? "" : html`<span class="range">${words.interval}</span>`}`;
}

function period(found: Improvement): string {
  return `${found.period ?? "day"}s`;
}
