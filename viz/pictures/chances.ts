import { formatSpan } from "../../sim/text/units/index.ts";
import type { Doubt } from "../contract.ts";
import { type ChartContext, type ChartWords, chartFrame, emptyChart, isolated, type Quantity } from "../frame/index.ts";
import { drawLevelInterval } from "../marks/index.ts";
import { isRate, planName, quoted, shortLabel, variantsShown, worldsText } from "../words/index.ts";
import { type BarWords, barRows } from "./barRows.ts";
import { type ChartTable, textColumn } from "./chartTable.ts";
import { MAX_TOLD } from "./response.ts";

/** In how many of 100 worlds a plan is the best. */
export interface ChanceRow extends BarWords {
  worlds: number;
  low: number;
  high: number;
  /** How much worse than the best of each world on average, as text with its unit. */
  regret: string;
}

export interface ChancesColumns extends ChartWords {
  /** The one that is most often the best first. */
  rows: readonly ChanceRow[];
  /** Said below the picture. */
  footnotes: readonly string[];
}

const QUANTITY: Quantity = { kind: "number", label: "best in so many worlds", unit: "of 100" };
const BAR = 20;
const HEIGHT = 14;

/** How surely each plan is the best by the first result, for all that is not known; null where there is nothing to choose among. */
export function chancesView(doubt: Doubt): ChancesColumns | null {
  const { decision, variants, harms, counts, calendar } = doubt;
  if (decision === null) return null;
  const info = doubt.responses[0]!;
  const rows = variantsShown(doubt)
    .flatMap((variant) => {
      const found = decision.variants[variant] ?? null;
      if (found === null) return [];
      const [worlds, low, high] = [found.chanceBest, found.bestWithin.low, found.bestWithin.high].map(
        (part) => 100 * part,
      ) as [number, number, number];
      const regret = formatSpan(found.regret, info, "plain");
      const lost = found.regret > 0 ? `\ngives away ${regret}${isRate(info) ? "" : ` a ${calendar.period}`}` : "";
      return [
        {
          name: planName(doubt, variant),
          worlds,
          low,
          high,
          regret,
          text: `${worldsText(found.chanceBest)}${lost}`,
        },
      ];
    })
    .sort((a, b) => b.worlds - a.worlds);
  const left = harms.flatMap((harm, variant) =>
    harm === null ? [] : [`${quoted(variants[variant]!)}: ${isolated(harm)}`],
  );
  return {
    title: `Which plan is best, for all that we do not know: ${shortLabel(info)}`,
    caption: "The longest bar is the surest choice. Bars of like length: the choice is open",
    subtitle: `Share of ${counts.worlds} worlds in which no other plan is better. Gives away: how much worse than the best plan of each world, on average`,
    description: rows
      .slice(0, MAX_TOLD)
      .map(({ name, text }) => `${quoted(name)}: best in ${text.replace("\n", ", ")}.`)
      .join(" "),
    rows,
    footnotes: left.length === 0 ? [] : [`Left out of the choice: ${left.join("; ")}.`],
  };
}

export function chancesChart(columns: ChancesColumns, context: ChartContext): SVGSVGElement {
  const { rows } = columns;
  if (rows.length === 0) return emptyChart(columns, "There is nothing to choose among.", context);
  const frame = chartFrame(columns, context);
  const style = { stroke: frame.colour("ink"), paper: frame.colour("paper"), filled: true };
  const plot = { domain: [0, 100] as const, quantity: QUANTITY, top: frame.top + 6, bar: BAR };
  const end = barRows(frame, rows, plot, (group, row, value, y) => {
    const rect = group
      .append("rect")
      .attr("x", value(0).toFixed(1))
      .attr("y", y - HEIGHT / 2)
      .attr("height", HEIGHT);
    rect.attr("width", (value(row.worlds) - value(0)).toFixed(1)).attr("fill", frame.colour("working"));
    drawLevelInterval(group, value, { mean: row.worlds, low: row.low, high: row.high }, y, style);
  });
  return frame.finish(end, ...columns.footnotes);
}

export function chancesTable({ rows }: ChancesColumns): ChartTable {
  const worlds = (name: string) => ({ name, unit: "of 100 worlds" });
  return {
    columns: [textColumn("plan"), worlds("best in"), worlds("low"), worlds("high"), textColumn("gives away")],
    rows: rows.map(({ name, worlds, low, high, regret }) => [name, worlds, low, high, regret]),
  };
}
