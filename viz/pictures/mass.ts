import { linkHorizontal } from "d3";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { MassRecord, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawText,
  emptyChart,
  FILLS,
  isolated,
  readable,
  type Texture,
  textureFill,
  wrapText,
} from "../frame/index.ts";
import { type ChartTable, textColumn } from "./chartTable.ts";
import { dayWords } from "./dayScene.ts";

/** One way in which mass leaves. */
export interface MassFlow {
  name: string;
  kilograms: number;
  /** Kilograms and share of the live weight in words. */
  text: string;
  kind: "carcass" | "by-product" | "lost" | "left on the line";
}

export interface MassColumns extends ChartWords {
  liveKilograms: number;
  liveText: string;
  /** In the order in which they are drawn from above; they add up to the live weight. */
  flows: readonly MassFlow[];
}

const BAR = 16;

const LEFT_GUTTER = 120;

const RIGHT_GUTTER = 250;

const ROW = 32;

/** Name and figures each on two lines. */
const NARROW_ROW = 62;

const LOOKS: Record<MassFlow["kind"], { fill: number; texture: Texture }> = {
  carcass: { fill: 0, texture: "plain" },
  "by-product": { fill: 1, texture: "rising" },
  lost: { fill: 2, texture: "dots" },
  "left on the line": { fill: 4, texture: "level" },
};

type Point = [number, number];

/** From the live weight to where a flow ends, pixels. */
interface Band {
  source: Point;
  target: Point;
  width: number;
}

const CARCASS = "carcass";

/** What became of a variant's first day's live weight; null when the plan gives no weights, or has all go one way. */
export function massView(results: StudyResults, variant: VariantResults): MassColumns | null {
  const { masses } = variant.day;
  if (!(masses.liveKg > 0)) return null;
  const flows = flowsOf(masses);
  if (flows.length < 2) return null;
  const dressing = masses.carcassLiveKg > 0 ? (masses.outKg[CARCASS] ?? 0) / masses.carcassLiveKg : 0;
  return {
    title: "Where the live weight goes",
    caption: "The wider the band, the heavier. What is not carcass has to be sold, or taken away and paid for",
    subtitle: `Kilograms and share of the live weight, ${dayWords(results, variant)}. All bands together are the live weight, to rounding`,
    description: `Of ${kilograms(masses.liveKg)} live weight: ${flows.map(({ name, text }) => `${name} ${text}`).join("; ")}. A carcass weighs ${formatDecimals(dressing * 100, 1)} % of the live weight it came from.`,
    liveKilograms: masses.liveKg,
    liveText: kilograms(masses.liveKg),
    flows,
  };
}

/** Carcasses first, then by-products and other ways out, the heavier ones first. */
function flowsOf(masses: MassRecord): MassFlow[] {
  const flow = (kind: MassFlow["kind"]) => (entry: readonly [string, number]) => ({
    name: isolated(entry[0]),
    kilograms: entry[1],
    text: `${kilograms(entry[1])}, ${percentWords(entry[1] / masses.liveKg)}`,
    kind,
  });
  const heavier = (a: MassFlow, b: MassFlow) => b.kilograms - a.kilograms;
  const others = Object.entries(masses.outKg).filter(([name]) => name !== CARCASS);
  return [
    ...[[CARCASS, masses.outKg[CARCASS] ?? 0] as const].map(flow("carcass")),
    ...Object.entries(masses.byProductsKg).map(flow("by-product")).sort(heavier),
    ...others.map(flow("lost")).sort(heavier),
    ...[["left on the line", masses.onLineKg] as const].map(flow("left on the line")),
  ].filter((each) => each.kilograms > 0);
}

function percentWords(share: number): string {
  return share < 0.0005 ? "under 0.1 %" : `${formatDecimals(100 * share, 1)} %`;
}

function kilograms(value: number): string {
  return `${formatDecimals(value, value < 100 ? 1 : 0)} kg`;
}

/** The day's live weight at the left, what becomes of it at the right, in bands as wide as their mass. */
export function massChart(columns: MassColumns, context: ChartContext): SVGSVGElement {
  const flows = columns.flows.filter(({ kilograms }) => kilograms > 0);
  if (flows.length === 0 || !(columns.liveKilograms > 0))
    return emptyChart(columns, "No live weight came onto the line on this day.", context);
  const frame = chartFrame(columns, context);
  const top = frame.top + (frame.narrow ? 30 : 10);
  const row = frame.narrow ? NARROW_ROW : ROW;
  const height = Math.max(200, Math.min(340, flows.length * row));
  const scale = height / columns.liveKilograms;
  const left = frame.left + (frame.narrow ? 0 : LEFT_GUTTER);
  const right = frame.right - rightGutter(frame);
  const ends = spreadFlows(flows, { scale, top, row });
  const bottom = Math.max(top + height, ends.at(-1)!.bottom);
  const start = top + (bottom - top - height) / 2;
  drawLive(frame, columns, left, start, height);
  let from = start;
  flows.forEach((flow, index) => {
    const width = flow.kilograms * scale;
    const [source, target]: Point[] = [
      [left + BAR, from + width / 2],
      [right - BAR, ends[index]!.middle],
    ];
    drawFlow(frame, flow, frame.id(`flow-${index}`), { source: source!, target: target!, width });
    from += width;
  });
  return frame.finish(bottom + 4);
}

/** Bands at the right, far enough apart for their names: middle and lower edge of each. */
function spreadFlows(
  flows: readonly MassFlow[],
  { scale, top, row }: { scale: number; top: number; row: number },
): { middle: number; bottom: number }[] {
  let next = top;
  return flows.map(({ kilograms }) => {
    const room = Math.max(kilograms * scale + 6, row);
    const middle = next + room / 2;
    next += room;
    return { middle, bottom: next };
  });
}

function drawLive(frame: ChartFrame, columns: MassColumns, left: number, top: number, height: number): void {
  const group = readable(frame.body, `live weight: ${columns.liveText}`);
  const bar = group.append("rect").attr("x", left).attr("y", top.toFixed(1)).attr("width", BAR);
  bar.attr("height", height.toFixed(1)).attr("fill", frame.colour("line"));
  if (frame.narrow) {
    drawText(group, frame.left, frame.top + 12, `live weight ${columns.liveText}`, { bold: true });
    return;
  }
  drawText(group, frame.left, top + height / 2 - 2, "live weight", { bold: true });
  wrapText(columns.liveText, LEFT_GUTTER - 8, 11, 2).forEach((line, i) => {
    drawText(group, frame.left, top + height / 2 + 12 + i * 14, line);
  });
}

function drawFlow(frame: ChartFrame, flow: MassFlow, id: string, { source, target: to, width }: Band): void {
  const group = readable(frame.body, `${flow.name}: ${flow.text}`);
  const { fill, texture } = LOOKS[flow.kind];
  const colour = frame.colour(FILLS[fill]!);
  const link = linkHorizontal()({ source, target: to })!.replace(/\d+\.\d+/g, (number) =>
    String(Math.round(Number(number) * 10) / 10),
  );
  const band = group.append("path").attr("d", link).attr("fill", "none").attr("stroke", colour);
  band.attr("stroke-width", Math.max(0.6, width).toFixed(1)).attr("stroke-opacity", 0.85);
  const box = group.append("rect").attr("x", to[0]).attr("width", BAR);
  box.attr("y", (to[1] - width / 2).toFixed(1)).attr("height", Math.max(0.8, width).toFixed(1));
  box.attr("fill", textureFill(frame.defs, id, texture, colour, frame.colour("ink")));
  box.attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
  const x = to[0] + BAR + 10;
  const room = rightGutter(frame) - 12;
  const most = frame.narrow ? 2 : 1;
  const names = wrapText(flow.name, room, 11, most, true);
  const texts = wrapText(flow.text, room, 11, most);
  const first = to[1] - 2 - (names.length + texts.length - 2) * 7;
  names.forEach((line, i) => {
    drawText(group, x, first + i * 14, line, { bold: true });
  });
  texts.forEach((line, i) => {
    drawText(group, x, first + (names.length + i) * 14, line, { fill: frame.colour("muted") });
  });
}

function rightGutter({ narrow }: ChartFrame): number {
  return narrow ? 176 : RIGHT_GUTTER;
}

export function massTable(columns: MassColumns): ChartTable {
  const share = (kilograms: number) => (100 * kilograms) / columns.liveKilograms;
  return {
    columns: [
      textColumn("what"),
      textColumn("kind"),
      { name: "mass", unit: "kg" },
      { name: "share of live weight", unit: "%" },
    ],
    rows: [
      ["live weight", "in", columns.liveKilograms, 100],
      ...columns.flows.map(({ name, kind, kilograms }) => [name, kind, kilograms, share(kilograms)]),
    ],
  };
}
