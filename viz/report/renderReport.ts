import type { StudyResults } from "../contract.ts";
import { CHART_CLASS, safeText } from "../frame/index.ts";
import { html, type Markup, trusted } from "./html.ts";
import {
  answerSection,
  cautionSection,
  dataSection,
  daySection,
  experimentation,
  figuresFor,
  implementation,
  limitSection,
  limitsOfModel,
  logicSection,
  objectives,
  resultsSection,
} from "./reportSections.ts";
import { reportStyle } from "./reportStyle.ts";
import { serverDocument } from "./serverDocument.ts";

const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/**
 * A study as one self-contained HTML page: no script, no outside resource, every text from the study escaped; light and
 * dark screens, A4 paper. Answer first, then evidence, then everything needed to judge and repeat it. A study of one
 * variant and one replication is told as a single day, without intervals. Throws RangeError for a study without variants.
 */
export function renderReport(results: StudyResults, document: Document = serverDocument()): string {
  if (results.variants.length === 0)
    throw new RangeError("renderReport: the study holds no variant; at least the base case is needed");
  const figures = figuresFor(document);
  const body = [
    objectives(results),
    answerSection(results),
    resultsSection(results, figures),
    daySection(results, figures),
    limitSection(results, figures),
    dataSection(results),
    experimentation(results),
    implementation(results),
    logicSection(),
    limitsOfModel(),
    cautionSection(),
  ];
  return page(results.study.name, body).markup;
}

/**
 * `renderReport` for one day: refuses (RangeError) results with more than one variant or replication, which have
 * intervals that a day's report would leave out.
 */
export function renderDayReport(results: StudyResults, document: Document = serverDocument()): string {
  const { length } = results.variants;
  if (length !== 1 || results.study.replications !== 1) {
    throw new RangeError(
      `renderDayReport: ${length} variants and ${results.study.replications} replications; a day is 1 and 1`,
    );
  }
  return renderReport(results, document);
}

function page(title: string, body: readonly Markup[]): Markup {
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${trusted(POLICY)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${safeText(title)}</title>
<style>
${trusted(reportStyle())}
</style>
</head>
<body class="${CHART_CLASS}">
<main>
${body.map((section) => html`<section>${section}</section>\n`)}</main>
</body>
</html>
`;
}
