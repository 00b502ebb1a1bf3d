import { createHash } from "node:crypto";
import type { Improvement, OptionsResult, Season, StudyResults, VariantResults } from "../contract.ts";
import { CHART_CLASS, safeText } from "../frame/index.ts";
import { isSingleDay, periodNoun, quoted, whichDay } from "../words/index.ts";
import { appendix } from "./appendix.ts";
import { costTable } from "./costTable.ts";
import { type Figures, figuresFor } from "./figures.ts";
import { html, type Markup, trusted } from "./html.ts";
import { improvementSections } from "./improvementSections.ts";
import { killStopSection, recordsKillStops } from "./killStopSection.ts";
import { limitsOfModel, logicSection } from "./logicSection.ts";
import { massTable } from "./massTable.ts";
import { optionsSections } from "./optionsSections.ts";
import { READER_SCRIPT } from "./readerScript.ts";
import {
  answerSection,
  dataSection,
  daySection,
  experimentation,
  implementation,
  limitSection,
  objectives,
  resultsSection,
} from "./reportSections.ts";
import { reportStyle } from "./reportStyle.ts";
import { seasonSections } from "./seasonSections.ts";
import { serverDocument } from "./serverDocument.ts";
import { utilityTable } from "./utilityTable.ts";
import { lotSection } from "./weekSections.ts";
import { tellsWhy, whySection } from "./whySection.ts";

export interface ReportOptions {
  /** The plan file as it was read: the report then lists every figure in it with its source. */
  planFile?: unknown;
  /** To draw into; default: a document for where there is no browser. */
  document?: Document;
  /** Of a search, a line-up of offers or a season, whose answer then comes first: the study is what it rests on. */
  improvement?: Improvement | undefined;
  offers?: OptionsResult | undefined;
  season?: Season | undefined;
}

/**
 * A study as one self-contained HTML page: no outside resource, every text from the study escaped, no script but the one
 * that reads values off the pictures (without it everything is still there); light and dark screens, A4 paper. The first two
 * sheets have the answer; evidence and everything needed to judge and repeat it are parts of an appendix that open on
 * demand and are printed only when open. A study of one variant and one day is told as a single day,
 * without intervals. Throws RangeError for a study without variants.
 */
export function renderReport(results: StudyResults, options: ReportOptions = {}): string {
  if (results.variants.length === 0)
    throw new RangeError("renderReport: the study has no variant; at least today's plan is needed");
  const figures = figuresFor(options.document ?? serverDocument());
  const answered = otherAnswer(results, figures, options);
  const plant = plantSection(results);
  const lots = lotSection(results);
  const [first, ...found] = answered ?? [answerSection(results, figures)];
  const parts = [
    ...found,
    ...(tellsWhy(results) ? [whySection(results, figures)] : []),
    resultsSection(results, figures, answered !== null),
    ...(lots === null ? [] : [lots]),
    daySection(results, figures),
    ...(recordsKillStops(results) ? [killStopSection(results, figures)] : []),
    limitSection(results, figures),
    ...(plant === null ? [] : [plant]),
    dataSection(results, options.planFile),
    experimentation(results),
    implementation(results),
    logicSection(results),
    limitsOfModel(),
  ];
  return page(results.study.name, [html`${objectives(results)}${first!}`, ...appendix(parts)]).markup;
}

/** Null where the study itself was what was asked. */
function otherAnswer(
  results: StudyResults,
  figures: Figures,
  { improvement, offers, season }: ReportOptions,
): Markup[] | null {
  if (improvement !== undefined) return improvementSections(improvement, results, figures);
  if (season !== undefined) return seasonSections(season, results, figures);
  return offers === undefined ? null : optionsSections(offers, results, figures);
}

/**
 * `renderReport` for one day: refuses (RangeError) results with more than one variant or replication, which have
 * intervals that a day's report would leave out.
 */
export function renderDayReport(results: StudyResults, options: ReportOptions = {}): string {
  const { length } = results.variants;
  if (length !== 1 || results.study.replications !== 1) {
    throw new RangeError(
      `renderDayReport: ${length} variants and ${results.study.replications} replications; a day is 1 and 1`,
    );
  }
  return renderReport(results, options);
}

/** A whole page: its style, its script and a policy that lets it ask for nothing. `more`: rules of its own behind the usual ones. */
export function page(title: string, body: readonly Markup[], more = ""): Markup {
  const [style, script] = [`${reportStyle()}${more}`, READER_SCRIPT];
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${trusted(contentPolicy(style, script))}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${safeText(title)}</title>
<style>${trusted(style)}</style>
</head>
<body class="${CHART_CLASS}">
<main>
${body.map((section, index) => html`<section${index === 0 ? trusted(' class="first"') : ""}>${section}</section>\n`)}</main>
<script>${trusted(script)}</script>
</body>
</html>
`;
}

/**
 * The content security policy of a page that asks for nothing from outside: no resource, no form, no base; of styles and
 * scripts only those whose text is given here, by their SHA-256 (Content Security Policy Level 3, W3C). Data in script
 * elements is no script and needs no leave.
 */
export function contentPolicy(style: string, script: string): string {
  return [
    "default-src 'none'",
    `style-src '${digest(style)}'`,
    `script-src '${digest(script)}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

function digest(text: string): string {
  return `sha256-${createHash("sha256").update(text, "utf8").digest("base64")}`;
}

/** What went through the plant on the first day of today's plan: kilograms, water, energy, money. Null where the plan tells nothing of it. */
export function plantSection(results: StudyResults): Markup | null {
  const base = results.variants[0]!;
  const tables = [massTable(base), utilityTable(base), costTable(base)].filter((table) => table !== null);
  if (tables.length === 0) return null;
  return html`<h2>What goes through the plant</h2>
<p class="small">Figures of one simulated day, ${whichDay(results, base.day)}${dayOf(results, base)}.${isSingleDay(results) ? "" : ` Means over all ${periodNoun(results)}s are under Results, where the study asks for them.`}</p>
${tables}`;
}

function dayOf({ variants }: StudyResults, { name }: VariantResults): string {
  return variants.length > 1 ? ` of ${quoted(name)}` : "";
}
