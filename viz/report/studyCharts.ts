import {
  curveChart,
  differenceChart,
  headsOutChart,
  limitChart,
  queueChart,
  responseChart,
  screeningChart,
  stateChart,
  wipChart,
} from "../charts/index.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import type { ChartContext } from "../frame/index.ts";
import {
  curveView,
  differenceView,
  headsOutView,
  limitView,
  queueView,
  responseView,
  screeningView,
  stateView,
  wipView,
} from "../views/index.ts";
import { furthestVariant, isSingleDay } from "../words/index.ts";

/** A picture that waits to be drawn; `description` is its finding in words. */
export interface PlannedChart {
  /** File name without ending: lower-case letters, digits and hyphens, unique within a study. */
  name: string;
  description: string;
  draw: (context: ChartContext) => SVGSVGElement;
}

/** Responses that are drawn; the table shows all. */
const DRAWN_RESPONSES = 3;

/** Pictures of the first responses: a curve where factors are numbers, rows of intervals else, and differences to the base. */
export function responseCharts(results: StudyResults): PlannedChart[] {
  if (isSingleDay(results)) return [];
  return results.responses.slice(0, DRAWN_RESPONSES).flatMap((info, index) => chartsOf(results, info, index));
}

function chartsOf(results: StudyResults, info: ResponseInfo, index: number): PlannedChart[] {
  // The variants of a screening are points of random walks: nobody asks about one of them.
  if (results.screening !== null) return screeningCharts(results, info, index);
  const stem = `response-${index + 1}-${slug(info.key)}`;
  const curve = curveView(results, info);
  const rows = responseView(results, info);
  const first: PlannedChart = curve
    ? { name: stem, description: curve.description, draw: (context) => curveChart(curve, context) }
    : { name: stem, description: rows.description, draw: (context) => responseChart(rows, context) };
  if (results.variants.length < 2) return [first];
  const difference = differenceView(results, info);
  const name = `difference-${index + 1}-${slug(info.key)}`;
  return [
    first,
    { name, description: difference.description, draw: (context) => differenceChart(difference, context) },
  ];
}

function screeningCharts(results: StudyResults, info: ResponseInfo, index: number): PlannedChart[] {
  const view = screeningView(results, info);
  if (view === null) return [];
  const name = `screening-${index + 1}-${slug(info.key)}`;
  return [{ name, description: view.description, draw: (context) => screeningChart(view, context) }];
}

/** The variants whose day is drawn: the base, and the one furthest from it in the headline response. */
export function drawnVariants(results: StudyResults): VariantResults[] {
  const furthest = furthestVariant(results);
  return [...results.variants.slice(0, 1), ...(furthest ? [furthest] : [])];
}

/** The day in pictures, without its limits. `prefix` keeps the names of two days apart. */
export function dayCharts(results: StudyResults, variant: VariantResults, prefix: string): PlannedChart[] {
  const heads = headsOutView(results, variant);
  const states = stateView(results, variant);
  const wip = wipView(results, variant);
  const queues = queueView(results, variant);
  return [
    { name: `${prefix}-heads-out`, description: heads.description, draw: (context) => headsOutChart(heads, context) },
    { name: `${prefix}-states`, description: states.description, draw: (context) => stateChart(states, context) },
    { name: `${prefix}-wip`, description: wip.description, draw: (context) => wipChart(wip, context) },
    { name: `${prefix}-queues`, description: queues.description, draw: (context) => queueChart(queues, context) },
  ];
}

/** One picture per watched limit of a variant's day. */
export function limitCharts(results: StudyResults, variant: VariantResults, prefix: string): PlannedChart[] {
  return variant.day.limits.map((limit, index) => {
    const view = limitView(results, variant, limit);
    const name = `${prefix}-limit-${index + 1}-${slug(limit.name)}`;
    return { name, description: view.description, draw: (context: ChartContext) => limitChart(view, context) };
  });
}

/** A text as part of a file name: at most 40 of a-z, 0-9 and hyphen. */
function slug(text: string): string {
  const plain = text
    .normalize("NFKD")
    .replace(/([a-z])([A-Z])/g, "$1-$2")
    .toLowerCase();
  return (
    plain
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-+|-+$/g, "")
      .slice(0, 40) || "unnamed"
  );
}
