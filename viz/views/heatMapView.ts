import { formatConfidence } from "../../sim/text/units/index.ts";
import type { HeatMapCell, HeatMapColumns } from "../charts/index.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { estimateWords, observationsWords, type ResponseFormat, ranking, studyFormat } from "../words/index.ts";
import { describeVariants } from "./describeVariants.ts";

/** More levels than this do not fit across the picture. */
const MOST_LEVELS = 8;

/** One response over both factors of a study; null unless it has exactly two and variants on several levels of each. */
export function heatMapView(results: StudyResults, info: ResponseInfo): HeatMapColumns | null {
  const [across, down] = results.factors;
  if (results.factors.length !== 2 || !across || !down || results.screening !== null) return null;
  if (across.levels.length > MOST_LEVELS || across.levels.length < 2 || down.levels.length < 2) return null;
  const format = studyFormat(results, info);
  const cells = results.variants.flatMap((variant, index) => cellOf(results, info, format, variant, index));
  if (cells.length < 4) return null;
  const values = cells.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const unit = unitOfCells(info);
  return {
    title: `${isolated(info.label)}${unit === "" ? "" : `, ${unit},`} by ${isolated(across.name)} and ${isolated(down.name)}`,
    caption: "Look along a row and down a column: where the shade stops changing, more of that factor adds nothing",
    subtitle: `Mean over ${observationsWords(results)}, ± half the width of its ${formatConfidence(results.study.confidence)} interval. Dashed frame: today's plan${markWords(cells)}`,
    description: describeVariants(results, info),
    columnName: isolated(across.name),
    columnLevels: across.levels.map(isolated),
    rowName: isolated(down.name),
    rowLevels: down.levels.map(isolated),
    cells,
    quantity: format.quantity,
    ends: endWords(format, least, most),
  };
}

function cellOf(
  results: StudyResults,
  info: ResponseInfo,
  format: ResponseFormat,
  variant: VariantResults,
  index: number,
): HeatMapCell[] {
  const [column, row] = variant.levels;
  const estimate = variant.estimates[info.key];
  if (column === undefined || row === undefined || column < 0 || row < 0 || !estimate || estimate.n === 0) return [];
  const words = estimateWords(estimate, format, results.study.confidence);
  const unit = unitOfCells(info);
  const { halfWidth } = estimate;
  // The unit stands once in the title, so that cells hold nothing but figures.
  const bare = (text: string) => (unit !== "" && text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text);
  const names = `${isolated(results.factors[0]!.levels[column]!)} and ${isolated(results.factors[1]!.levels[row]!)}`;
  return [
    {
      column,
      row,
      value: estimate.mean,
      halfWidth,
      text: bare(words.mean),
      detail: halfWidth === null ? "" : `± ${bare(format.difference(halfWidth, halfWidth).replace(/^\+/, ""))}`,
      words: `${names}: ${words.phrase}`,
      mark: bestMark(results, info, index),
    },
  ];
}

/** Times of day, spans of time and shares are written with what they need in each cell. */
function unitOfCells({ format, unit }: ResponseInfo): string {
  return format === "number" ? isolated(unit) : "";
}

/** About three digits, or as many more as it takes to tell the two from each other. */
function endWords(format: ResponseFormat, least: number, most: number): [string, string] {
  const [low, high] = [format.value(least, null), format.value(most, null)];
  return low === high ? [format.value(least, most - least), format.value(most, most - least)] : [low, high];
}

/** The best by mean; others that may be the best are not told from it. None where the response cannot rank them. */
function bestMark(results: StudyResults, info: ResponseInfo, index: number): HeatMapCell["mark"] {
  const { variants } = results;
  const { key, better } = info;
  if (ranking(results, info).by !== info) return index === 0 ? "base" : "";
  const gaps = variants.map(({ againstBest }) => againstBest?.[key]);
  const sign = better === "less" ? -1 : 1;
  const most = Math.max(...gaps.map((each) => (each === undefined ? Number.NEGATIVE_INFINITY : sign * each.gap)));
  const own = gaps[index];
  const best = own !== undefined && sign * own.gap === most;
  if (index === 0) return best ? "base and best" : "base";
  if (best) return "best";
  return own?.mayBeBest ? "not told from the best" : "";
}

function markWords(cells: readonly HeatMapCell[]): string {
  const marks = new Set(cells.map(({ mark }) => mark));
  const best = marks.has("best") || marks.has("base and best") ? "; bold frame: the best" : "";
  return marks.has("not told from the best") ? `${best}; thin frame: may be as good` : best;
}
