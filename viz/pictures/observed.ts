import { scaleLinear } from "d3";
import type { Calibration } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawClockAxis,
  drawClockGrid,
  drawLeftAxis,
  drawText,
  emptyChart,
  isolated,
  textWidth,
} from "../frame/index.ts";

/** Heads counted in one stretch of the day. */
export interface ObservedStretch {
  /** Seconds after the day's start. */
  fromSeconds: number;
  toSeconds: number;
  /** One for each observed day that noted it. */
  observed: readonly number[];
  /** Of the simulated days; null where there is nothing to compare. */
  simulated: { mean: number; low: number; high: number } | null;
  /** A difference is shown. */
  differs: boolean;
}

export interface ObservedColumns extends ChartWords {
  startClockSeconds: number;
  /** In order of time; they may overlap. */
  stretches: readonly ObservedStretch[];
}

const GUTTER = 52;

const HEIGHT = 250;

type Scale = (value: number) => number;

/** The counts of a calibration check by stretches of the day. */
export function observedView(calibration: Calibration): ObservedColumns {
  const { quantities, days, observedDays, startClockSeconds, countedAt } = calibration;
  const counts = quantities.filter(({ stretch }) => stretch !== null);
  const differ = counts.filter(({ comparison }) => comparison?.shown).length;
  return {
    title: `Heads counted at ${isolated(countedAt)}: observed and simulated`,
    caption: "Dots off the line all day: the pace differs. Dots off the line in one hour: something happened in it",
    subtitle: `Dots: ${observedDays} observed ${observedDays === 1 ? "day" : "days"}. Line and band: mean and middle 95 % of ${days} simulated days`,
    description: `A difference was found in ${differ} of ${counts.length} stretches.`,
    startClockSeconds,
    stretches: counts
      .map(({ stretch, values, comparison }) => ({
        ...stretch!,
        observed: values.filter((value) => value !== null),
        simulated:
          comparison === null
            ? null
            : { mean: comparison.simulated.mean, low: comparison.simulated.p025, high: comparison.simulated.p975 },
        differs: comparison?.shown ?? false,
      }))
      .sort((a, b) => a.fromSeconds - b.fromSeconds),
  };
}

/** Counted heads: simulated days as a band with their mean, observed days as dots, differences named. */
export function observedChart(columns: ObservedColumns, context: ChartContext): SVGSVGElement {
  const { stretches, startClockSeconds } = columns;
  if (stretches.length === 0) return emptyChart(columns, "No heads were counted by stretches of the day.", context);
  const frame = chartFrame(columns, context);
  const top = frame.top + 36;
  const floor = top + HEIGHT;
  const [left, right] = [frame.left + GUTTER, frame.right - 12];
  const x = scaleLinear()
    .domain([
      Math.min(...stretches.map((each) => each.fromSeconds)),
      Math.max(...stretches.map((each) => each.toSeconds)),
    ])
    .range([left, right]);
  const most = Math.max(1, ...stretches.flatMap(({ observed, simulated }) => [...observed, simulated?.high ?? 0]));
  const y = scaleLinear().domain([0, most]).nice().range([floor, top]);
  const heads = { kind: "number", label: "counted in each stretch", unit: "heads" } as const;
  drawClockGrid(frame, x, startClockSeconds, top, floor);
  drawLeftAxis(frame, y, heads, { left, right, labelY: frame.top + 8 });
  for (const stretch of stretches) drawStretch(frame, stretch, x, y, top);
  return frame.finish(drawClockAxis(frame, x, startClockSeconds, floor));
}

function drawStretch(frame: ChartFrame, stretch: ObservedStretch, x: Scale, y: Scale, top: number): void {
  const { observed, simulated, differs } = stretch;
  const [from, to] = [x(stretch.fromSeconds) + 2, x(stretch.toSeconds) - 2];
  if (simulated !== null) {
    const band = frame.body.append("rect").attr("x", from.toFixed(1)).attr("y", y(simulated.high).toFixed(1));
    band
      .attr("width", (to - from).toFixed(1))
      .attr("height", Math.max(1, y(simulated.low) - y(simulated.high)).toFixed(1));
    band.attr("fill", frame.colour("range"));
    const mean = frame.body
      .append("path")
      .attr("d", `M${from.toFixed(1)},${y(simulated.mean).toFixed(1)}H${to.toFixed(1)}`);
    mean.attr("stroke", frame.colour("line")).attr("stroke-width", 2);
  }
  observed.forEach((value, day) => {
    const at = from + ((to - from) * (day + 1)) / (observed.length + 1);
    const dot = frame.body.append("circle").attr("cx", at.toFixed(1)).attr("cy", y(value).toFixed(1)).attr("r", 3.2);
    dot.attr("fill", differs ? frame.colour("limit") : frame.colour("paper"));
    dot.attr("stroke", differs ? frame.colour("limit") : frame.colour("ink")).attr("stroke-width", 1.3);
  });
  if (!differs) return;
  const word = textWidth("differs", 11, true) < to - from + 4 ? "differs" : "≠";
  drawText(frame.body, (from + to) / 2, top - 6, word, {
    anchor: "middle",
    fill: frame.colour("limit"),
    bold: true,
  });
}
