import { formatConfidence, formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { Decision, LimitRecord, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { type InputRow, inputRows } from "../pictures/index.ts";
import {
  answer,
  dayTold,
  differenceIn,
  differenceWords,
  headline,
  isSingleDay,
  limitShareWords,
  MANY_PLANS,
  observationNoun,
  observationsWords,
  otherResponseWords,
  periodNoun,
  plansShown,
  quoted,
  shareWords,
  shownWords,
  stepWords,
  studyFormat,
  welfareLead,
  whichDay,
} from "../words/index.ts";
import { effectTable } from "./effectTable.ts";
import type { Figures } from "./figures.ts";
import { cautionBox, decisionPages, firstPages } from "./firstPages.ts";
import { html, type Markup, trusted, unbroken } from "./html.ts";
import { listsDifferences, responseTable, screeningTables } from "./responseTable.ts";
import {
  dayCharts,
  drawnVariants,
  firstChart,
  headlineChart,
  limitCharts,
  MAX_FIRST_ROWS,
  type PlannedChart,
  responseCharts,
  weekCharts,
} from "./studyCharts.ts";
import { isOneWeek, weekSection } from "./weekSections.ts";

export function objectives(results: StudyResults): Markup {
  const { study, plan } = results;
  return html`<h1><bdi>${isolated(study.name)}</bdi></h1>
<p class="lead">Plan: <bdi>${isolated(plan.name)}</bdi>. Written for: <bdi>${isolated(study.reader)}</bdi></p>
<p class="question"><b>Question:</b> <bdi>${isolated(study.question)}</bdi></p>`;
}

/** The question's answer in words and, where there is one, in a picture: what a reader sees before anything else. */
export function answerSection(results: StudyResults, figures: Figures): Markup {
  const { decision } = results;
  if (isOneWeek(results)) return weekSection(results, figures);
  if (decision != null) return decidedSection(results, decision, figures);
  if (isSingleDay(results)) return happenedSection(results, figures);
  return toldAnswer(withWelfare(results, answer(results)), headlineChart(results, responseCharts(results)), figures);
}

function decidedSection(results: StudyResults, decision: Decision, figures: Figures): Markup {
  const { study, variants, factors } = results;
  const pages = decisionPages(decision, variants[0]!.day.startClockSeconds, {
    reader: study.reader,
    hasFactors: factors.length > 0,
  });
  const words = [
    ...pages.words.slice(0, MAX_WORDS),
    ...otherResponseWords(results, decision),
    ...factorWords(results).slice(0, MAX_FACTORS),
  ];
  const screened = results.screening !== null;
  return firstPages(
    {
      ...pages,
      words: withWelfare(results, words),
      table: screened ? effectTable(results) : pages.table,
      note: screened
        ? `How far each factor moves the result over its whole range, with the half-width at ${formatConfidence(study.confidence)}; the factor that matters most first.`
        : `Means over ${observationsWords(results)} of each plan, on the same ${periodNoun(results)}s, with ${formatConfidence(study.confidence)} ranges. Grey: no difference to today's plan shown.`,
      picture: firstChart(results, responseCharts(results), plansShown(decision, factors.length > 0)),
    },
    figures,
  );
}

/** Sentences of the decision, and of the factors, that leave room for picture and table on two sheets. */
const MAX_WORDS = 4;
const MAX_FACTORS = 3;

function factorWords(results: StudyResults): string[] {
  const info = headline(results);
  if (info === undefined || results.variants.length < MANY_PLANS) return [];
  return stepWords(results, info, studyFormat(results, info)) ?? [];
}

/** One day cannot answer for other days: it is told as it was, without intervals. */
function happenedSection(results: StudyResults, figures: Figures): Markup {
  const told = dayTold(results);
  return firstPages(
    {
      ...told,
      heading: "What happened",
      words: withWelfare(results, [
        ...told.words,
        "This is one simulated day; another day of the same plan would differ.",
      ]),
      note: `One simulated day, ${whichDay(results, results.variants[0]!.day)}.`,
      picture: dayCharts(results, results.variants[0]!, "day")[0],
      more: limitTable(results),
      ofDay: dayId(0),
    },
    figures,
  );
}

/** How stunned heads fare stands before whatever else is answered, where there is anything to say of it. */
export function withWelfare(results: StudyResults, sentences: readonly string[]): readonly string[] {
  const lead = welfareLead(results);
  return lead === null ? sentences : [lead, ...sentences];
}

/** Sentences with their picture beside them on a wide screen. */
export function toldAnswer(sentences: readonly string[], picture: PlannedChart | undefined, figures: Figures): Markup {
  return html`<h2>Answer</h2>
<div class="${picture === undefined ? "told" : "told beside"}">
<div class="answer">${sentences.map((sentence) => html`<p>${unbroken(sentence)}</p>`)}</div>
${picture === undefined ? "" : figures([picture])}
</div>
<div class="then">${cautionBox()}</div>`;
}

/** `answered`: the answer above is another one than the study's, and showed none of its pictures. */
export function resultsSection(results: StudyResults, figures: Figures, answered = false): Markup {
  const charts = responseCharts(results);
  // A picture of which the first pages have some rows only stands here whole.
  const isWhole = results.variants.length <= MAX_FIRST_ROWS;
  const told = answered || !isWhole ? undefined : headlineChart(results, charts);
  const others = charts.filter((chart) => chart !== told);
  const more = responseFigures(results, others, figures);
  return html`<h2>Results</h2>
<p class="small hint" hidden>To read values, point at a picture, or move to it with the Tab key and press the arrow keys.</p>
${screeningTables(results)}
${results.screening === null ? "" : more}
${results.screening === null ? responseTable(results) : html`<details><summary>Every result of all ${results.variants.length} variants</summary>${responseTable(results)}</details>`}
${results.screening === null ? more : ""}`;
}

/** Pictures of differences that a table lists one by one stay on the screen. */
function responseFigures(results: StudyResults, charts: readonly PlannedChart[], figures: Figures): Markup {
  const listed = listsDifferences(results);
  const isListed = ({ name }: PlannedChart) => listed && name.startsWith("difference-");
  const drawn = charts.map((chart) =>
    isListed(chart) ? html`<div class="screen">${figures([chart])}</div>` : figures([chart]),
  );
  const note = html`<p class="small paper">Pictures of the differences are on the screen and among the run's charts; the tables have their figures.</p>`;
  return html`${charts.some(isListed) ? note : ""}${drawn}`;
}

export function daySection(results: StudyResults, figures: Figures): Markup {
  const days = drawnVariants(results).map((variant, index) => {
    const heading = isSingleDay(results) ? "" : html`<h3>${dayHeading(results, variant, index)}</h3>`;
    const { startClockSeconds, finishSeconds } = variant.day;
    // A single day's first picture stands on the first pages.
    const charts = figures(dayCharts(results, variant, `day-${index}`).slice(isSingleDay(results) ? 1 : 0));
    const boards = weekCharts(results, variant, `day-${index}`).slice(isOneWeek(results) ? 1 : 0);
    const pictures = html`${figures(boards)}${timeCursor(index, finishSeconds)}${charts}`;
    return index === 0
      ? html`<div class="day" id="${dayId(index)}" data-start="${startClockSeconds}">${heading}${pictures}</div>`
      : html`<details class="day" id="${dayId(index)}" data-start="${startClockSeconds}"><summary>${heading}</summary>${pictures}</details>
<p class="small paper">This day opens on the screen and is among the run's charts; what is closed is not printed.</p>`;
  });
  return html`<h2>A day in pictures</h2>
<p class="small">${whichDayIsDrawn(results)}: it shows how the line behaves and proves nothing about other days.</p>
${days}`;
}

/** Of a week whole records are kept of the first one; its board shows all days, the other pictures the first that counts. */
function whichDayIsDrawn(results: StudyResults): string {
  const { plan, variants } = results;
  return plan.week === undefined ? "One simulated day" : `One simulated day, ${whichDay(results, variants[0]!.day)}`;
}

/** Id of the element that holds the slider of a drawn day; a picture of that day elsewhere names it in `data-of-day`. */
export function dayId(index: number): string {
  return `day-${index}`;
}

/** A slider that moves the time on all pictures of a day; shown by the script that gives it something to do. */
function timeCursor(index: number, endSeconds: number): Markup {
  const end = Math.floor(endSeconds / 60) * 60;
  const middle = Math.floor(end / 120) * 60;
  return html`<div class="cursor" hidden><label for="time-${index}">Time on all pictures of this day</label><input id="time-${index}" type="range" min="0" max="${end}" step="60" value="${middle}"><output for="time-${index}"></output></div>`;
}

function dayHeading(results: StudyResults, variant: VariantResults, index: number): string {
  if (index === 0) return `Today's plan, ${quoted(variant.name)}`;
  const info = headline(results)!;
  const words = differenceWords(differenceIn(variant, info.key), studyFormat(results, info), results.study.confidence);
  const best = results.decision?.best ?? null;
  const isBest = best !== null && results.variants[best] === variant;
  const which = isBest ? "The best variant" : "The variant that differs most";
  return `${which}, ${quoted(variant.name)}: ${words.sentence}`;
}

export function limitSection(results: StudyResults, figures: Figures): Markup {
  const base = results.variants[0]!;
  if (base.day.limits.length === 0) return html`<h2>Time limits</h2><p>The plan watches no time limit.</p>`;
  return html`<h2>Time limits</h2>
<p class="small">The plan sets these limits. The simulation counts heads outside them and does not enforce them; the law at the site decides.</p>
${isSingleDay(results) ? "" : limitTable(results)}
${figures(limitCharts(results, base, "base"))}`;
}

/** The limits of today's plan, those with the largest share of heads outside them on the first day first. */
function limitTable(results: StudyResults): Markup {
  const base = results.variants[0]!;
  if (base.day.limits.length === 0) return html``;
  const single = isSingleDay(results);
  const day = whichDay(results, base.day);
  const heads = [
    "Limit",
    "Allowed",
    ...(single ? [] : [`Outside it, all ${periodNoun(results)}s`]),
    `Outside it, ${day}`,
    `Longest, ${day}`,
    "Source",
  ];
  const share = ({ beyond, tally }: LimitRecord) => beyond / Math.max(1, tally.count);
  const rows = [...base.day.limits]
    .sort((a, b) => share(b) - share(a))
    .map((limit) => {
      const ends = [
        limit.minSeconds === null ? "" : `at least ${formatDuration(limit.minSeconds)}`,
        limit.maxSeconds === null ? "" : `at most ${formatDuration(limit.maxSeconds)}`,
      ];
      const source = results.plan.limitSources[limit.name] || "no source named in the plan";
      const words = [
        ends.filter((end) => end !== "").join(", "),
        ...(single ? [] : [isolated(limitShareWords(results, base, limit.name))]),
        shareWords(limit.beyond, limit.tally.count, "heads"),
        limit.tally.count === 0 ? "no value" : formatDuration(limit.tally.max),
        isolated(source),
      ];
      return html`<tr><th scope="row"><bdi>${isolated(limit.name)}</bdi></th>${words.map((each, index) => html`<td data-label="${heads[index + 1]!}"><span><bdi>${each}</bdi></span></td>`)}</tr>`;
    });
  const caption = single
    ? "Time limits on this one simulated day, the worst first."
    : `Time limits in today's plan. Go by the share over all simulated ${periodNoun(results)}s; ${day} is one example.`;
  return html`<div class="scroll"><table class="cards"><caption>${caption}</caption><thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${rows}</tbody></table></div>`;
}

/** `planFile`: the plan as it was read, before any checking; undefined where it is not at hand. */
export function dataSection(results: StudyResults, planFile: unknown): Markup {
  const { plan } = results;
  const rows = plan.sources.map(
    (source) =>
      html`<tr><th scope="row">${source.path === "" ? "the whole plan, where nothing else is said" : html`<code>${isolated(source.path)}</code>`}</th><td>${isolated(source.kind)}</td><td><bdi>${isolated(source.note)}</bdi></td></tr>`,
  );
  const table =
    rows.length === 0
      ? html`<p>The plan names no source for its figures. Treat every one of them as assumed.</p>`
      : html`<div class="scroll"><table><caption>Where the plan's figures come from, in the plan's own words.</caption><thead><tr><th scope="col">Figure</th><th scope="col">Kind</th><th scope="col">Source</th></tr></thead><tbody>${rows}</tbody></table></div>`;
  return html`<h2>Data</h2>
<p><bdi>${isolated(plan.notes)}</bdi></p>
${table}
${planFile === undefined ? "" : inputTable(inputRows(planFile, plan.sources))}
<p class="small">A figure without a source of its own has the source of the part it belongs to; without any it is an assumption. The plan file beside this report has all inputs.</p>`;
}

/** Every figure that went in: folded away, for it is long; printed when it is open. */
function inputTable(rows: readonly InputRow[]): Markup {
  const body = rows.map(
    ({ path, value, kind, note }) =>
      html`<tr><th scope="row"><code>${breakable(path)}</code></th><td><bdi>${value}</bdi></td><td>${kind}</td><td><bdi>${note}</bdi></td></tr>`,
  );
  return html`<p class="small paper">A table of all ${rows.length} inputs of today's plan, each with its source, opens on the screen, and so do the figures of every picture. What is open is printed. <code>gambrel report RUN --xlsx</code> writes them all to a workbook.</p>
<details class="inputs"><summary>All ${rows.length} inputs of today's plan, each with its source</summary><div class="scroll" tabindex="0" role="group" aria-label="All inputs"><table><thead><tr><th scope="col">Input</th><th scope="col">Value</th><th scope="col">Kind of source</th><th scope="col">Source</th></tr></thead><tbody>${body}</tbody></table></div></details>`;
}

/** A path that may go to the next line before each of its steps, and nowhere else. */
function breakable(path: string): Markup {
  return html`${path.split(/(?=[.[])/).map((step, index) => html`${index === 0 ? "" : trusted("<wbr>")}${step}`)}`;
}

export function experimentation(results: StudyResults): Markup {
  const { study, variants, factors } = results;
  const fewer = variants.some((variant) => variant.days < study.replications);
  const period = periodNoun(results);
  const days =
    study.replications === 1
      ? `one simulated ${period}`
      : `${fewer ? "up to " : ""}${study.replications} simulated ${period}s`;
  const design = factors.map(
    (factor) =>
      html`<li><bdi>${isolated(factor.name)}</bdi> (<code>${isolated(factor.path)}</code>): ${factor.levels.map(isolated).join(", ")}</li>`,
  );
  const changes = variants.slice(1).filter((variant) => Object.keys(variant.set).length > 0);
  const list = changes.map(
    (variant) =>
      html`<li><bdi>${isolated(variant.name)}</bdi>: ${settings(variant).map(([path, value]) => html`<code>${isolated(path)}</code> = <code>${isolated(JSON.stringify(value))}</code> `)}</li>`,
  );
  const estimation =
    study.replications < 2
      ? html`<p>One ${period} proves nothing about other ${period}s. Run a study of several ${period}s before you compare or decide.</p>`
      : html`<p>Each simulated ${period} (replication) has its own random numbers. Intervals are at ${formatConfidence(study.confidence)} over ${observationNoun(results)}: Student's t, cut off at 0 where nothing below 0 is possible; for shares, Student's t of the logit, or, where none was seen, the exact interval of the share of ${period}s. Differences are paired: ${period} by ${period}, every variant has the same random numbers. ${shownWords(results)}</p>${procedureParagraphs(results)}`;
  return html`<h2>Experimentation</h2>
<p>${formatDecimals(variants.length, 0)} ${variants.length === 1 ? "variant" : "variants"}, ${days} each. ${START[period]} A day ends when the line is clear, or at the longest day that the plan allows.</p>
${estimation}
${design.length > 0 ? html`<p>Factors and their levels:</p><ul>${design}</ul>` : ""}
${changeList(list)}`;
}

const START = {
  day: "The line starts each day empty.",
  week: "The plant starts each week empty, and each further day with what the day before left in lairage, on lorries and in chillers.",
};

/** In the order that results.json has them in, so that a report drawn anew from it is the same. */
function settings({ set }: VariantResults): [string, unknown][] {
  return Object.entries(set).sort(([a], [b]) => (a < b ? -1 : 1));
}

/** A list this long is read by few: it folds open. */
const MAX_CHANGES = 20;

function changeList(list: readonly Markup[]): Markup {
  if (list.length === 0) return html``;
  return list.length <= MAX_CHANGES
    ? html`<p>What each variant changes in the plan:</p><ul>${list}</ul>`
    : html`<details><summary>What each of the ${list.length} variants changes in the plan</summary><ul>${list}</ul></details>`;
}

/** How many days were run and why, and what was done to make the intervals narrower. */
function procedureParagraphs({ procedure, variants, responses }: StudyResults): Markup {
  const { stopping, selection, observation, controls } = procedure;
  const words = [stopping?.words, selection?.words].filter((each) => each !== undefined);
  if (selection !== null)
    words.push(
      "Procedure of Kim and Nelson (2001): variants that fall behind are dropped, so means and intervals rest on different numbers of days.",
    );
  if (observation === "antithetic pair")
    words.push(
      "Days come in antithetic pairs: the second has the mirrored random numbers of the first, and a pair counts as one observation.",
    );
  if (controls.length > 0)
    words.push(
      "Means are corrected by control variates, that is by how far results with a known mean missed it. Differences are not: the same random numbers in every variant (common random numbers) have already taken the shared luck out.",
    );
  const reductions = variants.slice(0, 1).flatMap(({ estimates }) =>
    responses.flatMap(({ key, label }) => {
      const reduction = estimates[key]?.reduction;
      return reduction === undefined
        ? []
        : [html`<li><bdi>${isolated(label)}</bdi>: ${isolated(reduction.words)}</li>`];
    }),
  );
  return html`${words.map((each) => html`<p>${isolated(each)}</p>`)}${reductions.length > 0 ? html`<p>Effect on the intervals of today's plan:</p><ul>${reductions}</ul>` : ""}`;
}

export function implementation(results: StudyResults): Markup {
  const { study } = results;
  return html`<h2>Implementation and code access</h2>
<dl><dt>How to repeat it</dt><dd><code>${isolated(study.command)}</code></dd>
<dt>Seed</dt><dd><code>${isolated(study.seed)}</code></dd>
<dt>Program</dt><dd>gambrel ${isolated(results.gambrel)}, MIT licence. The same version, plan, study and seed give the same figures to the last digit.</dd></dl>`;
}
