import { formatDecimals } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  type DayFrame,
  type DayScene,
  dayFrame,
  drawDayPlot,
  drawText,
  emptyChart,
  finishDay,
  type Group,
  isolated,
  readable,
  textureFill,
  wrapText,
} from "../frame/index.ts";
import { drawKey } from "../marks/index.ts";
import { isSingleDay, observationNoun, observationsOf, shareEstimate } from "../words/index.ts";
import { type ChartTable, secondsColumn, textColumn } from "./chartTable.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { drawPanelHead, panelTops } from "./panelWords.ts";
import { scene, type TimeReadings } from "./timeReadings.ts";

/** A time in which a stage held the line back: by itself, or while the bottleneck went over to or from another one. */
export interface BottleneckSpan {
  stage: string;
  from: number;
  to: number;
  kind: "sole" | "shifting";
}

export interface BottleneckColumns extends ChartWords, DayScene {
  /** In line order, with the share of the day in words, one or two lines. */
  stages: readonly { name: string; note: string }[];
  spans: readonly BottleneckSpan[];
  footnote: string;
}

const ROW = 26;

const GAP = 6;

const GUTTER = 150;

const NOTE = 150;

const METHOD =
  "Method: the longest active period (Roser, Nakano and Tanaka 2002). At any time the bottleneck is the stage that has worked, or been under repair, longest without waiting.";

/** A stage that was the bottleneck for less of the day than this is named below the picture only. */
const MIN_SHARE = 0.005;

/** Which stage held the line back when, on a variant's traced day; null where that was not recorded. */
export function bottleneckView(results: StudyResults, variant: VariantResults): BottleneckColumns | null {
  const { binding } = variant.day;
  const spans = binding?.bottleneck.spans ?? null;
  if (binding === null || spans === null) return null;
  const { shares } = binding.bottleneck;
  const drawn = shares.filter(({ sole, shifting }) => sole + shifting >= MIN_SHARE);
  const brief = shares.filter((share) => !drawn.includes(share) && share.sole + share.shifting > 0);
  const names = new Set(drawn.map(({ stage }) => stage));
  return {
    ...dayScene(results, variant),
    title: "Where the bottleneck was",
    caption: "Solid: this stage alone held the line back. Hatched: the bottleneck was moving to or from it",
    subtitle: `Shares of the time up to the end of work, ${dayWords(results, variant)}`,
    description: describe(results, variant, drawn),
    stages: drawn.map(({ stage, sole, shifting }) => ({
      name: isolated(stage),
      note: `${percent(sole)} alone\n${percent(shifting)} moving`,
    })),
    spans: spans.flatMap(({ fromSeconds, toSeconds, stages }) =>
      stages
        .filter((stage) => names.has(stage))
        .map((stage) => ({
          stage: isolated(stage),
          from: fromSeconds,
          to: toSeconds,
          kind: stages.length === 1 ? ("sole" as const) : ("shifting" as const),
        })),
    ),
    footnote: [
      ...(brief.length === 0
        ? []
        : [
            `Bottleneck for less than ${MIN_SHARE * 100} % of the time: ${brief.map(({ stage }) => isolated(stage)).join(", ")}.`,
          ]),
      METHOD,
    ].join(" "),
  };
}

function percent(share: number): string {
  return `${formatDecimals(share * 100, 0)} %`;
}

function describe(
  results: StudyResults,
  variant: VariantResults,
  shares: readonly { stage: string; sole: number; shifting: number }[],
): string {
  const most = [...shares].sort((a, b) => b.sole - a.sole)[0];
  if (most === undefined) return "No stage was the bottleneck for long.";
  const all = shares.map(({ stage, sole, shifting }) => {
    return `${isolated(stage)} ${percent(sole)} alone and ${percent(shifting)} while it was moving`;
  });
  return `On this day ${isolated(most.stage)} was the bottleneck longest. ${all.join("; ")}.${overDays(results, variant)}`;
}

/** One day is one draw; the study knows how it is over all of them. */
function overDays(results: StudyResults, variant: VariantResults): string {
  if (isSingleDay(results) || variant.why === null) return "";
  const [most] = [...variant.why.bottleneck].sort((a, b) => b.sole.mean - a.sole.mean);
  if (most === undefined) return "";
  const over = `${observationsOf(results, variant)} ${observationNoun(results)}`;
  return ` Over all ${over} ${isolated(most.stage)} comes first: alone ${shareEstimate(most.sole)}, while it was moving ${shareEstimate(most.shifting)}.`;
}

/** Which stage held the line back when: stages in line order down the side, the clock across. */
export function bottleneckChart(columns: BottleneckColumns, context: ChartContext): SVGSVGElement {
  if (columns.spans.length === 0)
    return emptyChart(columns, columns.footnote || "No stage worked without a pause for long enough.", context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: NOTE });
  const ink = frame.colour("line");
  const fills = {
    sole: ink,
    shifting: textureFill(frame.defs, frame.id("shifting"), "rising", frame.colour("range"), ink),
  };
  const key = [
    { name: "the bottleneck alone", fill: fills.sole },
    { name: "the bottleneck, moving to or from another stage (shifting)", fill: fills.shifting },
  ];
  const top = drawKey(frame, key, frame.top + 4) + 26;
  const { tops, bottom } = panelTops(frame, columns.stages.map(headOf), { top, height: ROW, gap: GAP });
  drawDayPlot(frame, top, bottom, { above: 4, below: 4 });
  const spansOf = spansOfStages(columns);
  columns.stages.forEach((stage, index) => {
    drawStage(frame, stage, spansOf(stage.name), fills, tops[index]!);
  });
  return finishDay(frame, bottom + 6, columns.footnote);
}

function drawStage(
  frame: DayFrame,
  stage: BottleneckColumns["stages"][number],
  spans: readonly BottleneckSpan[],
  fills: Record<BottleneckSpan["kind"], string>,
  top: number,
): void {
  const group = readable(frame.body, `${stage.name}: ${stage.note}`);
  const { left, right } = frame.plot;
  if (frame.narrow) drawPanelHead(frame, headOf(stage), top);
  else drawStageWords(frame, group, stage, top);
  const floor = group.append("path").attr("d", `M${left},${top + ROW}H${right}`);
  floor.attr("stroke", frame.colour("rule")).attr("stroke-width", 0.7);
  // One path a kind keeps a strip of a thousand pieces small; a piece is never thinner than it can be seen.
  for (const kind of ["shifting", "sole"] as const) {
    const pieces = spans.filter((span) => span.kind === kind && span.to > span.from);
    if (pieces.length === 0) continue;
    const [from, to] = kind === "sole" ? [top + 2, top + ROW] : [top + 8, top + ROW];
    const path = pieces.map((span) => {
      const x = frame.time(span.from);
      return `M${x.toFixed(1)},${from}h${Math.max(0.4, frame.time(span.to) - x).toFixed(1)}V${to}H${x.toFixed(1)}Z`;
    });
    group.append("path").attr("d", path.join("")).attr("fill", fills[kind]);
  }
  if (!frame.narrow) drawNote(frame, group, stage.note, top);
}

function headOf({ name, note }: BottleneckColumns["stages"][number]): { name: string; notes: string[] } {
  return { name, notes: [note.replace("\n", ", ")] };
}

function drawStageWords(
  frame: DayFrame,
  group: Group,
  { name }: BottleneckColumns["stages"][number],
  top: number,
): void {
  const middle = top + ROW / 2 + 4;
  wrapText(name, GUTTER - 10, 11, 1, true).forEach((line) => {
    drawText(group, frame.left, middle, line, { bold: true });
  });
}

function drawNote(frame: DayFrame, group: Group, note: string, top: number): void {
  const lines = note.split("\n").flatMap((part) => wrapText(part, NOTE - 14, 11, 1));
  lines.forEach((line, i) => {
    drawText(group, frame.plot.right + 10, top + ROW / 2 + 4 + (i - (lines.length - 1) / 2) * 13, line);
  });
}

export function bottleneckReadings(columns: BottleneckColumns): TimeReadings {
  const spansOf = spansOfStages(columns);
  const spans = columns.stages.map(({ name }) => ({
    name,
    spans: spansOf(name).map(({ from, to, kind }) => ({
      from,
      to,
      text: kind === "sole" ? "the bottleneck alone" : "moving to or from another stage",
    })),
  }));
  return { ...scene(columns), series: [], spans };
}

/** Time as the bottleneck by stage; the strip itself is in the run's traces. */
export function bottleneckTable(columns: BottleneckColumns): ChartTable {
  const spansOf = spansOfStages(columns);
  const total = (name: string, wanted: "sole" | "shifting") =>
    spansOf(name)
      .filter(({ kind }) => kind === wanted)
      .reduce((sum, { from, to }) => sum + to - from, 0);
  return {
    columns: [textColumn("stage"), secondsColumn("alone"), secondsColumn("moving to or from another stage")],
    rows: columns.stages.map(({ name }) => [name, total(name, "sole"), total(name, "shifting")]),
  };
}

/**
 * The spans of a stage by its name, in their order; none for a name that has none. All are looked at once: a line of
 * 200 stages can have a million.
 */
function spansOfStages({ spans }: BottleneckColumns): (stage: string) => BottleneckSpan[] {
  const byStage = new Map<string, BottleneckSpan[]>();
  for (const span of spans) {
    const found = byStage.get(span.stage);
    if (found === undefined) byStage.set(span.stage, [span]);
    else found.push(span);
  }
  return (stage) => byStage.get(stage) ?? [];
}
