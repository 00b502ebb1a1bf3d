import type { Improvement, OptionsResult, ResponseInfo, Season, StudyResults, VariantResults } from "../contract.ts";
import type { ChartContext, ChartWords } from "../frame/index.ts";
import {
  bindingChart,
  bindingTable,
  bindingView,
  bottleneckChart,
  bottleneckReadings,
  bottleneckTable,
  bottleneckView,
  type ChartTable,
  chillerChart,
  chillerReadings,
  chillersOf,
  chillerView,
  costChart,
  costTable,
  costView,
  crewChart,
  crewReadings,
  crewView,
  curveChart,
  curveTable,
  curveView,
  differenceChart,
  differenceTable,
  differenceView,
  headsOutChart,
  headsOutReadings,
  headsOutView,
  heatMapChart,
  heatMapTable,
  heatMapView,
  killStopChart,
  killStopReadings,
  killStopTable,
  killStopView,
  limitChart,
  limitTable,
  limitView,
  loadChart,
  loadReadings,
  loadTable,
  loadView,
  massChart,
  massTable,
  massView,
  queueChart,
  queueReadings,
  queueView,
  responseChart,
  responseTable,
  responseView,
  screeningChart,
  screeningTable,
  screeningView,
  seasonChart,
  seasonChartTable,
  seasonView,
  slopeChart,
  slopeTable,
  slopeView,
  stateChart,
  stateReadings,
  stateTable,
  stateView,
  type TimeReadings,
  timeTable,
  tradeOffView,
  weekBoardChart,
  weekBoardTable,
  weekBoardViews,
  wipChart,
  wipReadings,
  wipView,
  worthView,
} from "../pictures/index.ts";
import { furthestVariant, isSingleDay } from "../words/index.ts";

/** A picture that waits to be drawn; `description` is its finding in words. */
export interface PlannedChart {
  /** File name without ending: lower-case letters, digits and hyphens, unique within a study. */
  name: string;
  description: string;
  title: string;
  draw: (context: ChartContext) => SVGSVGElement;
  /** Its figures as a table. */
  table: () => ChartTable;
  /** What it shows at an instant; null where it is not over the clock. */
  readings: (() => TimeReadings) | null;
  /** Of its own file, in pixels; left out: the usual. */
  width?: number;
}

type Chart<Columns> = (columns: Columns, context: ChartContext) => SVGSVGElement;

/** A picture from its columns, to be drawn later. */
export function planned<Columns extends ChartWords>(
  name: string,
  columns: Columns,
  chart: Chart<Columns>,
  table: (columns: Columns) => ChartTable,
  readings: ((columns: Columns) => TimeReadings) | null = null,
): PlannedChart {
  const { title, description } = columns;
  return {
    ...{ name, title, description, draw: (context) => chart(columns, context), table: () => table(columns) },
    readings: readings === null ? null : () => readings(columns),
  };
}

/** A picture over the clock: traces, which are read off at instants and tabled by steps of time. */
function traced<Columns extends ChartWords>(
  name: string,
  columns: Columns,
  chart: Chart<Columns>,
  readings: (columns: Columns) => TimeReadings,
): PlannedChart {
  return planned(name, columns, chart, (found) => timeTable(readings(found)), readings);
}

/** Responses that are drawn; the table shows all. */
const DRAWN_RESPONSES = 3;

/**
 * Pictures of the first responses: a curve where factors are numbers, rows of intervals else, a heat map where there are
 * two factors, differences to the base; cost against throughput where the study asks for both.
 */
export function responseCharts(results: StudyResults): PlannedChart[] {
  if (isSingleDay(results)) return [];
  const cost = costView(results);
  return [
    ...results.responses.slice(0, DRAWN_RESPONSES).flatMap((info, index) => chartsOf(results, info, index)),
    ...(cost === null ? [] : [planned("cost-against-throughput", cost, costChart, costTable)]),
  ];
}

/** The picture of the first response that answers at a glance; undefined where there is none. */
export function headlineChart(results: StudyResults, charts: readonly PlannedChart[]): PlannedChart | undefined {
  const kinds = results.factors.length > 0 ? ["heat-map", "screening", "response"] : ["difference", "response"];
  const found = kinds.map((kind) => charts.find(({ name }) => name.startsWith(`${kind}-1-`)));
  return found.find((chart) => chart !== undefined);
}

/** Rows of a picture that leaves room for a table and the cautions on two sheets. */
export const MAX_FIRST_ROWS = 12;

/**
 * The same for the first pages: of more plans than there is room for, its rows are those of the `shown` variants (places
 * among the study's). All of them are in the picture of the appendix.
 */
export function firstChart(
  results: StudyResults,
  charts: readonly PlannedChart[],
  shown: readonly number[],
): PlannedChart | undefined {
  const chart = headlineChart(results, charts);
  const info = results.responses[0];
  if (chart === undefined || info === undefined || results.variants.length <= MAX_FIRST_ROWS) return chart;
  const note = [
    `${shown.length} of ${results.variants.length} plans: those of the table. All are in the appendix, under Results.`,
  ];
  if (chart.name.startsWith("difference-")) {
    const view = differenceView(results, info);
    const rows = view.rows.filter((_, index) => shown.includes(index + 1));
    return planned(chart.name, { ...view, rows, footnotes: note }, differenceChart, differenceTable);
  }
  if (!chart.name.startsWith("response-") || curveView(results, info) !== null) return chart;
  const view = responseView(results, info);
  const rows = view.rows.filter((_, index) => shown.includes(index));
  return planned(chart.name, { ...view, rows, footnotes: note }, responseChart, responseTable);
}

function chartsOf(results: StudyResults, info: ResponseInfo, index: number): PlannedChart[] {
  // The variants of a screening are points of random walks: nobody asks about one of them.
  if (results.screening !== null) return screeningCharts(results, info, index);
  const end = `${index + 1}-${slug(info.key)}`;
  const curve = curveView(results, info);
  const map = heatMapView(results, info);
  return [
    curve
      ? planned(`response-${end}`, curve, curveChart, curveTable)
      : planned(`response-${end}`, responseView(results, info), responseChart, responseTable),
    ...(map === null ? [] : [planned(`heat-map-${end}`, map, heatMapChart, heatMapTable)]),
    ...(results.variants.length < 2
      ? []
      : [planned(`difference-${end}`, differenceView(results, info), differenceChart, differenceTable)]),
  ];
}

function screeningCharts(results: StudyResults, info: ResponseInfo, index: number): PlannedChart[] {
  const view = screeningView(results, info);
  if (view === null) return [];
  return [planned(`screening-${index + 1}-${slug(info.key)}`, view, screeningChart, screeningTable)];
}

/** The variants whose day is drawn: the base, and the one to take; without one, the furthest in the headline response. */
export function drawnVariants(results: StudyResults): VariantResults[] {
  if (results.drawn !== undefined) return results.drawn.map((index) => results.variants[index]!);
  const furthest = furthestVariant(results);
  return [...results.variants.slice(0, 1), ...(furthest ? [furthest] : [])];
}

/** More variants than this are told apart by the table of stages; only those whose day is drawn have pictures. */
const MAX_WHY = 12;

/** The variants whose days show in pictures where the time went; in a screening nobody asks about one of them. */
export function whyVariants(results: StudyResults): VariantResults[] {
  const few = results.variants.length <= MAX_WHY && results.screening === null;
  const wanted = few ? results.variants : drawnVariants(results);
  return wanted.filter(({ why }) => why !== null);
}

/** Where the time of a variant's days went, and what a small change of each mean time does. */
export function whyCharts(results: StudyResults, variant: VariantResults): PlannedChart[] {
  const { why } = variant;
  if (why === null) return [];
  const end = `${results.variants.indexOf(variant) + 1}-${slug(variant.name)}`;
  return [
    planned(`binding-${end}`, bindingView(results, variant, why), bindingChart, bindingTable),
    planned(`slopes-${end}`, slopeView(results, variant, why), slopeChart, slopeTable),
  ];
}

/** As many fit on a sheet of A4 with letters of full size. */
const MAX_STATE_ROWS = 20;
const MAX_QUEUE_PANELS = 17;

/** A picture of many rows as several of about as many each, none taller than a sheet of paper; the first has the finding. */
function sheetsOf<
  Key extends string,
  Columns extends ChartWords & { footnote: string } & Record<Key, readonly { name: string }[]>,
>(columns: Columns, key: Key, most: number): Columns[] {
  const rows = columns[key];
  const count = Math.max(1, Math.ceil(rows.length / most));
  if (count === 1) return [columns];
  return Array.from({ length: count }, (_, sheet) => {
    const from = Math.ceil((sheet * rows.length) / count);
    const to = Math.ceil(((sheet + 1) * rows.length) / count);
    const title = `${columns.title}, part ${sheet + 1} of ${count}`;
    const description = sheet === 0 ? columns.description : `Continued: the stages after ${rows[from - 1]!.name}.`;
    const footnote = sheet === count - 1 ? columns.footnote : "";
    return { ...columns, title, description, footnote, [key]: rows.slice(from, to) };
  });
}

function numbered(name: string, index: number): string {
  return index === 0 ? name : `${name}-${index + 1}`;
}

/** A sheet of A4 on its side less its margins, pixels: the board of a week is to hang on a wall. */
const BOARD_WIDTH = 1040;

/** The boards of a variant's first week, of seven days each; none of a plan of one day. */
export function weekCharts(results: StudyResults, variant: VariantResults, prefix: string): PlannedChart[] {
  return weekBoardViews(results, variant).map((view, index) => ({
    ...planned(numbered(`${prefix}-week`, index), view, weekBoardChart, weekBoardTable),
    width: BOARD_WIDTH,
  }));
}

/** The day in pictures, without its limits. `prefix` keeps the names of two days apart. */
export function dayCharts(results: StudyResults, variant: VariantResults, prefix: string): PlannedChart[] {
  const loads = loadView(results, variant);
  const crews = crewView(results, variant);
  const mass = massView(results, variant);
  const bottleneck = bottleneckView(results, variant);
  return [
    traced(`${prefix}-heads-out`, headsOutView(results, variant), headsOutChart, headsOutReadings),
    ...sheetsOf(stateView(results, variant), "rows", MAX_STATE_ROWS).map((sheet, index) =>
      planned(numbered(`${prefix}-states`, index), sheet, stateChart, stateTable, stateReadings),
    ),
    ...(bottleneck === null
      ? []
      : [planned(`${prefix}-bottleneck`, bottleneck, bottleneckChart, bottleneckTable, bottleneckReadings)]),
    traced(`${prefix}-wip`, wipView(results, variant), wipChart, wipReadings),
    ...sheetsOf(queueView(results, variant), "panels", MAX_QUEUE_PANELS).map((sheet, index) =>
      traced(numbered(`${prefix}-queues`, index), sheet, queueChart, queueReadings),
    ),
    ...(loads === null ? [] : [planned(`${prefix}-loads`, loads, loadChart, loadTable, loadReadings)]),
    ...(crews === null ? [] : [traced(`${prefix}-crews`, crews, crewChart, crewReadings)]),
    ...chillersOf(variant).map((stage, index) =>
      traced(
        `${prefix}-chiller-${index + 1}-${slug(stage.name)}`,
        chillerView(results, variant, stage),
        chillerChart,
        chillerReadings,
      ),
    ),
    ...(mass === null ? [] : [planned(`${prefix}-mass`, mass, massChart, massTable)]),
  ];
}

/** One picture per watched limit of a variant's day. */
export function limitCharts(results: StudyResults, variant: VariantResults, prefix: string): PlannedChart[] {
  return variant.day.limits.map((limit, index) => {
    return planned(
      `${prefix}-limit-${index + 1}-${slug(limit.name)}`,
      limitView(results, variant, limit),
      limitChart,
      limitTable,
    );
  });
}

/** The stops of the kill line on a variant's day; none where they were not written down. */
export function killStopCharts(results: StudyResults, variant: VariantResults, prefix: string): PlannedChart[] {
  const view = killStopView(results, variant);
  if (view === null) return [];
  // Without a stop there is no plot over the clock to read off.
  const readings = view.rows.length === 0 ? null : killStopReadings;
  return [planned(`${prefix}-kill-stops`, view, killStopChart, killStopTable, readings)];
}

/** What more of a total brings; null where no curve was asked for. */
export function tradeOffChart(improvement: Improvement): PlannedChart | null {
  const view = tradeOffView(improvement);
  return view === null ? null : planned("trade-off", view, costChart, costTable);
}

/** What each option of a line-up is worth. */
export function worthChart(found: OptionsResult): PlannedChart {
  return planned("worth", worthView(found), differenceChart, differenceTable);
}

/** The weeks of a year. */
export function seasonPicture(season: Season): PlannedChart {
  return planned("season", seasonView(season), seasonChart, seasonChartTable);
}

/** Every picture of a study, each under its own name: responses first, then why days ended, then the drawn days with their limits. */
export function studyCharts(results: StudyResults): PlannedChart[] {
  const prefixes = ["base", "furthest"];
  const days = drawnVariants(results).flatMap((variant, index) => [
    ...weekCharts(results, variant, prefixes[index]!),
    ...dayCharts(results, variant, prefixes[index]!),
    ...killStopCharts(results, variant, prefixes[index]!),
    ...limitCharts(results, variant, prefixes[index]!),
  ]);
  const why = whyVariants(results).flatMap((variant) => whyCharts(results, variant));
  return [...responseCharts(results), ...why, ...days];
}

/** A text as part of a file name: at most 40 of a-z, 0-9 and hyphen. */
export function slug(text: string): string {
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
