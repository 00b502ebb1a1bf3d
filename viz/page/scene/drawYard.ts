import { stepAt } from "../../../sim/day/course/index.ts";
import { formatClock, formatDecimals } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { SIZE } from "./layout.ts";
import { drawPosition, LORRY, WHEELS } from "./looks.ts";
import type { Pen } from "./pen.ts";
import type { Scene } from "./scene.ts";

/** The live end of the line: lorries and crates, heads that come one by one, or a supply that never ends. */
export function drawYard(pen: Pen, scene: Scene): void {
  const { supply } = scene.course.sketch;
  if (supply === "loads") drawLoads(pen, scene);
  else drawArrivals(pen, scene);
}

function drawArrivals(pen: Pen, { course, layout, seconds }: Scene): void {
  const s = layout.scale;
  const y = SIZE.rail * s;
  pen.text(4, y + 4 * s, formatDecimals(stepAt(course.counts, 0, seconds), 0), { size: 15 * s, bold: true });
  pen.text(4, y + 19 * s, "arrived", { size: SIZE.text * s, fill: "muted" });
  if (course.sketch.supply !== "saturated") return;
  pen.text(4, y + 33 * s, "never runs", { size: SIZE.text * s, fill: "muted" });
  pen.text(4, y + 46 * s, "out", { size: SIZE.text * s, fill: "muted" });
}

function drawLoads(pen: Pen, scene: Scene): void {
  drawLorries(pen, scene);
  drawLairage(pen, scene);
  drawHangingPoint(pen, scene);
  drawWayBack(pen, scene);
  drawYardBottleneck(pen, scene);
}

/** Steps on crates stand close together here, so the one that holds the line back is named. */
function drawYardBottleneck(pen: Pen, { course, layout, bottleneck }: Scene): void {
  const stage = bottleneck.find((each) => each < course.sketch.hanging);
  if (stage === undefined) return;
  const s = layout.scale;
  const words = `bottleneck${bottleneck.length > 1 ? " moving" : ""}: ${isolated(course.sketch.stages[stage]!.name)}`;
  pen.text(4 * s, SIZE.yardWords * s, words, { size: SIZE.text * s, bold: true, fill: "line" });
}

/** Up to two lorries in the yard, each with what is still aboard; the next one that is due below them. */
function drawLorries(pen: Pen, { course, layout, seconds }: Scene): void {
  const s = layout.scale;
  const { loads } = course.record;
  const here = loads.filter(
    (load) =>
      load.arrivedSeconds !== null &&
      load.arrivedSeconds <= seconds &&
      !(load.leftSeconds !== null && load.leftSeconds <= seconds),
  );
  const aboard = stepAt(course.waiting, course.sketch.unloading, seconds);
  const full = here.filter((load) => load.unloadedSeconds === null || load.unloadedSeconds > seconds);
  const most = full.reduce((sum, load) => sum + load.crates, 0);
  for (const [index] of here.slice(0, 2).entries()) {
    const y = (30 + index * 27) * s;
    const share = index < full.length && most > 0 ? aboard / most : 0;
    pen.rect({ x: 4 * s, y: y - 22 * s, width: 33 * share * s, height: 17 * s }, { fill: "fill1" });
    pen.shape(LORRY, 4 * s, y, { stroke: "ink", width: 1.2 }, s);
    pen.shape(WHEELS, 4 * s, y, { fill: "ink" }, s);
  }
  const words = [
    here.length === 0 ? "no lorry here" : `${here.length} ${here.length === 1 ? "lorry" : "lorries"} here`,
    ...(aboard > 0 ? [`${formatDecimals(aboard, 0)} ${aboard === 1 ? "crate" : "crates"} aboard`] : []),
    ...nextDue(course.record, seconds),
  ];
  for (const [index, line] of words.entries()) {
    pen.text(4 * s, (70 + index * 13) * s, line, { size: SIZE.text * s, fill: "muted" });
  }
}

function nextDue({ loads, startClockSeconds }: Scene["course"]["record"], seconds: number): string[] {
  const coming = loads
    .map((load) => load.arrivedSeconds ?? Infinity)
    .filter((at) => at > seconds && Number.isFinite(at));
  return coming.length === 0 ? [] : [`next ${formatClock(Math.min(...coming) + startClockSeconds)}`];
}

const COLUMNS = 8;
const ROWS = 6;

/** Crates in lairage as squares, each standing for so many. */
function drawLairage(pen: Pen, { course, layout, seconds }: Scene): void {
  const s = layout.scale;
  const { lairage, stages } = course.sketch;
  const crates = stepAt(course.waiting, lairage, seconds);
  const { places } = stages[lairage]!;
  const room = Number.isFinite(places) ? places : Math.max(1, course.record.stages[lairage]!.queue.max);
  const each = Math.max(1, Math.ceil(room / (COLUMNS * ROWS)));
  const filled = Math.ceil(crates / each);
  const marks = Math.min(COLUMNS * ROWS, Math.ceil(room / each));
  const [left, top] = [112 * s, 8 * s];
  for (let mark = 0; mark < marks; mark++) {
    const x = left + (mark % COLUMNS) * 8 * s;
    const y = top + (ROWS - 1 - Math.floor(mark / COLUMNS)) * 8 * s;
    pen.rect(
      { x, y, width: 6.4 * s, height: 6.4 * s },
      mark < filled ? { fill: "fill1", stroke: "muted" } : { stroke: "grid" },
    );
  }
  const limit = Number.isFinite(places) ? ` of ${formatDecimals(places, 0)}` : "";
  pen.text(left, 70 * s, "lairage", { size: SIZE.text * s, bold: true });
  pen.text(left, 83 * s, `${formatDecimals(crates, 0)}${limit} ${crates === 1 && limit === "" ? "crate" : "crates"}`, {
    size: SIZE.text * s,
    fill: "muted",
  });
  if (each > 1) pen.text(left, 96 * s, `one square: ${each}`, { size: SIZE.text * s, fill: "muted" });
}

/** Who unloads and feeds, and the crates at the hanging point. */
function drawHangingPoint(pen: Pen, scene: Scene): void {
  const { course, layout, seconds } = scene;
  const s = layout.scale;
  const crates = stepAt(course.crates, 0, seconds);
  for (let crate = 0; crate < Math.min(crates, 3); crate++) {
    pen.rect(
      { x: (192 + crate * 9) * s, y: 44 * s, width: 7.5 * s, height: 7.5 * s },
      { fill: "fill1", stroke: "muted" },
    );
  }
  drawStepPositions(pen, scene, course.sketch.unloading, 84, 58);
  drawStepPositions(pen, scene, course.sketch.lairage, 192, 66);
}

function drawStepPositions(pen: Pen, { course, layout, seconds }: Scene, stage: number, x: number, y: number): void {
  const s = layout.scale;
  const { positionFrom, positions, crews } = course.sketch.stages[stage]!;
  for (let index = 0; index < Math.min(positions, 2); index++) {
    const state = stepAt(course.states, positionFrom + index, seconds, 2);
    drawPosition(
      pen,
      { x: (x + 7 + index * 15) * s, y: y * s, scale: 0.85 * s },
      { state, isManned: crews.length > 0 },
    );
  }
}

/** Empty crates on their way back through the washer to a lorry. */
function drawWayBack(pen: Pen, { course, layout, seconds }: Scene): void {
  if (course.sketch.firstBack < 0) return;
  const s = layout.scale;
  const [empty, clean] = [stepAt(course.crates, 1, seconds), stepAt(course.crates, 2, seconds)];
  const y = 112 * s;
  pen.shape("M206,0H8M14,-4L8,0L14,4", 0, y, { stroke: "rule", width: 1.2 }, s);
  const words = `crates back: ${formatDecimals(empty, 0)} on the way, ${formatDecimals(clean, 0)} clean`;
  pen.text(14 * s, y + 15 * s, words, { size: SIZE.text * s, fill: "muted" });
}
