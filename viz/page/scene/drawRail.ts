import { stepAt } from "../../../sim/day/course/index.ts";
import { formatDecimals } from "../../../sim/text/units/index.ts";
import { isolated, type Paint } from "../../frame/index.ts";
import { drawFlags } from "./drawFlags.ts";
import { drawStation } from "./drawStation.ts";
import { drawStore } from "./drawStore.ts";
import { drawYard } from "./drawYard.ts";
import { type HangingHead, type HeadLook, headsAt, movedAt } from "./headsAt.ts";
import { type RailLayout, SIZE, type StagePlace } from "./layout.ts";
import { BODY, HOOK } from "./looks.ts";
import type { Pen } from "./pen.ts";
import { dangersAt, type Scene } from "./scene.ts";

const FILLS: Record<HeadLook, Paint> = {
  waiting: "rule",
  dwelling: "rule",
  moving: "rule",
  "in work": "working",
  finished: "blocked",
};

/** Draws the line at a moment: rails, stations, what hangs, what waits in the yard and in the chiller. */
export function drawRail(pen: Pen, scene: Scene): void {
  const { layout, course } = scene;
  for (const [index] of layout.rows.entries()) drawRow(pen, layout, index);
  for (const place of layout.stages) {
    if (place === null) continue;
    if (place.look === "siding") drawSiding(pen, layout, place);
    if (place.look === "store") drawStore(pen, scene, place);
    else drawStation(pen, scene, place);
  }
  for (let chain = 0; chain < course.sketch.chains.length; chain++) drawShackles(pen, scene, chain);
  drawYard(pen, scene);
  drawOut(pen, scene);
  drawHeads(pen, scene);
}

/** The rail of a row, with an arrow head in its reading direction and a mark where it goes on in the next row. */
function drawRow(pen: Pen, layout: RailLayout, index: number): void {
  const row = layout.rows[index]!;
  const y = row.y + SIZE.rail * layout.scale;
  const { from, to } = row.rail;
  pen.rect({ x: from, y: y - 2 * layout.scale, width: to - from, height: 4 * layout.scale }, { fill: "rule" }, 2);
  if (index < layout.rows.length - 1) {
    pen.shape("M0,-5L6,0L0,5", to - 8, y, { stroke: "rule", width: 2 }, layout.scale);
  }
}

/** An off-line stage hangs from the rail by a thin line at the side that its heads come from. */
function drawSiding(pen: Pen, layout: RailLayout, place: StagePlace): void {
  const s = layout.scale;
  const row = layout.rows[place.row]!;
  const y = row.y + (SIZE.rail + SIZE.sidingDrop) * s;
  pen.rect(
    { x: place.cell.from, y: y - 1.5 * s, width: place.cell.to - place.cell.from, height: 3 * s },
    { fill: "rule" },
    1.5,
  );
  pen.rect(
    { x: place.cell.from + 4, y: row.y + (SIZE.rail + 2) * s, width: 1, height: SIZE.sidingDrop * s },
    { fill: "rule", opacity: 0.5 },
  );
}

/** The shackles of a chain move with it, so that a standing chain and its gaps are seen. */
function drawShackles(pen: Pen, { layout, course, seconds }: Scene, chain: number): void {
  const { stage, shackles } = course.sketch.chains[chain]!;
  const place = layout.stages[stage];
  if (!place) return;
  const y = layout.rows[place.row]!.y + SIZE.rail * layout.scale;
  const step = (place.waiting.to - place.waiting.from) / shackles;
  const within = movedAt(course, chain, seconds) % 1;
  for (let shackle = 0; shackle < shackles; shackle++) {
    const x = place.waiting.from + (shackle + within + 0.5) * step;
    if (x > place.waiting.to) continue;
    pen.rect({ x: x - 0.6, y, width: 1.2, height: 6 * layout.scale }, { fill: "rule" });
  }
}

function drawOut(pen: Pen, { layout, course, seconds }: Scene): void {
  const row = layout.rows.at(-1)!;
  const s = layout.scale;
  const y = row.y + SIZE.rail * s;
  const x = layout.end + 12 * s;
  pen.shape("M-8,-6L0,0L-8,6", x, y, { stroke: "rule", width: 3 }, s);
  pen.text(x + 8 * s, y + 4 * s, formatDecimals(stepAt(course.counts, 3, seconds), 0), { size: 15 * s, bold: true });
  pen.text(x + 8 * s, y + 19 * s, "out", { size: SIZE.text * s, fill: "muted" });
  const takenOff = stepAt(course.counts, 4, seconds);
  if (takenOff > 0) {
    pen.text(x + 8 * s, y + 38 * s, formatDecimals(takenOff, 0), { size: SIZE.text * s });
    pen.text(x + 8 * s, y + 51 * s, isolated("taken off"), { size: SIZE.text * s, fill: "muted" });
  }
}

/** Everything that hangs, then a flag at each place where a time limit is in danger or passed. */
function drawHeads(pen: Pen, scene: Scene): void {
  const s = scene.layout.scale;
  const dangers = dangersAt(scene.course, scene.seconds);
  const byHead = new Map(dangers.map((danger) => [danger.head, danger]));
  const drawn = new Map<number, HangingHead>();
  for (const hanging of headsAt(scene.course, scene.index, scene.layout, scene.seconds)) {
    const danger = byHead.get(hanging.head);
    const beyond = danger !== undefined && danger.beyondSeconds <= scene.seconds;
    pen.shape(HOOK, hanging.x, hanging.y, { stroke: "muted", width: 1 }, s);
    const outline =
      danger === undefined ? { stroke: "ink" as const, width: 0.8 } : { stroke: "limit" as const, width: 2 };
    pen.shape(BODY, hanging.x, hanging.y, { fill: beyond ? "limit" : FILLS[hanging.look], ...outline }, s);
    if (danger !== undefined) drawn.set(hanging.head, hanging);
  }
  drawFlags(pen, scene, dangers, drawn);
}
