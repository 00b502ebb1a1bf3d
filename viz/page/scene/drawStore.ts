import { stepAt } from "../../../sim/day/course/index.ts";
import { formatDecimals } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { drawBottleneck } from "./drawBottleneck.ts";
import { SIZE, type StagePlace } from "./layout.ts";
import type { Pen } from "./pen.ts";
import type { Scene } from "./scene.ts";

const ROWS = 5;
const STEP = 7.5;

/** A large chiller: hooks in rows, each mark standing for so many heads, filled as the day fills it. */
export function drawStore(pen: Pen, scene: Scene, place: StagePlace): void {
  const { layout, course, seconds, picked } = scene;
  const s = layout.scale;
  const top = layout.rows[place.row]!.y;
  const rail = top + SIZE.rail * s;
  const stage = course.sketch.stages[place.stage]!;
  const heads = stepAt(course.waiting, place.stage, seconds);
  const room = Number.isFinite(stage.places) ? stage.places : Math.max(1, course.record.stages[place.stage]!.queue.max);
  const columns = Math.floor((place.waiting.to - place.waiting.from) / (STEP * s));
  const each = Math.max(1, Math.ceil(room / (columns * ROWS)));
  const marks = Math.ceil(room / each);
  const filled = Math.ceil(heads / each);
  if (picked === place.stage) {
    pen.rect(
      { x: place.cell.from - 2, y: top + 2, width: place.cell.to - place.cell.from + 4, height: (SIZE.row - 6) * s },
      { stroke: "line" },
      6,
    );
  }
  drawBottleneck(pen, scene, place, top);
  for (let mark = 0; mark < marks; mark++) {
    const x = place.waiting.from + (Math.floor(mark / ROWS) + 0.5) * STEP * s;
    const y = rail + (7 + (mark % ROWS) * 8.5) * s;
    if (mark < filled) pen.rect({ x: x - 2.2 * s, y, width: 4.4 * s, height: 6.5 * s }, { fill: "muted" }, 2 * s);
    else pen.rect({ x: x - 1.8 * s, y, width: 3.6 * s, height: 1.4 * s }, { fill: "rule" });
  }
  let y = top + SIZE.label * s;
  for (const line of place.label) {
    pen.text(place.labelX, y, isolated(line), { size: SIZE.text * s, bold: true, anchor: "middle" });
    y += SIZE.line * s;
  }
  const limit = Number.isFinite(stage.places) ? ` of ${formatDecimals(stage.places, 0)}` : "";
  const size = SIZE.text * s;
  pen.text(place.labelX, y, `${formatDecimals(heads, 0)}${limit} in it`, { size, fill: "muted", anchor: "middle" });
  if (each > 1) {
    const words = `one mark: ${formatDecimals(each, 0)} heads`;
    pen.text(place.labelX, y + SIZE.line * s, words, { size: SIZE.text * s, fill: "muted", anchor: "middle" });
  }
}
