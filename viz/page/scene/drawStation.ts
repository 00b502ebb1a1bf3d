import { type StageSketch, stepAt } from "../../../sim/day/course/index.ts";
import { byKind, does } from "../../../sim/text/kinds/index.ts";
import { formatDecimals } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { drawBottleneck, isNameCovered } from "./drawBottleneck.ts";
import { SIZE, type StagePlace } from "./layout.ts";
import { BIN, drawPosition } from "./looks.ts";
import type { Pen } from "./pen.ts";
import type { Scene } from "./scene.ts";

/** A station, dwell stretch or chain on its rail: places, positions with what they do, name, what waits. */
export function drawStation(pen: Pen, scene: Scene, place: StagePlace): void {
  const { layout, course } = scene;
  const s = layout.scale;
  const stage = course.sketch.stages[place.stage]!;
  const top = layout.rows[place.row]!.y + (place.look === "siding" ? SIZE.sidingDrop * s : 0);
  const rail = top + SIZE.rail * s;
  if (scene.picked === place.stage) {
    // Below the rail that a siding hangs from.
    const above = place.look === "siding" ? (SIZE.rail - 6) * s : 2;
    const height = (SIZE.row - 4) * s - above;
    pen.rect(
      { x: place.cell.from - 2, y: top + above, width: place.cell.to - place.cell.from + 4, height },
      { fill: "pause", stroke: "line" },
      6,
    );
    pen.rect(
      { x: place.cell.from, y: rail - 2 * s, width: place.cell.to - place.cell.from, height: 4 * s },
      { fill: "rule" },
    );
  }
  drawBottleneck(pen, scene, place, top);
  drawPlaces(pen, place, stage, rail, s);
  if (does(stage, "work")) drawPositions(pen, scene, place, top);
  drawWords(pen, scene, place, top);
  drawVessel(pen, scene, place, top);
}

/** Every place before a station is a tick on the rail; a dwell stage and a chain are a band. */
function drawPlaces(pen: Pen, place: StagePlace, stage: StageSketch, rail: number, s: number): void {
  const { from, to } = place.waiting;
  const ticks = () => {
    for (let at = 0; at < place.shown; at++) {
      const x = to - (at + 0.5) * place.pitch;
      pen.rect({ x: x - 2.5 * s, y: rail + 2 * s, width: 5 * s, height: 1.5 * s }, { fill: "muted" });
    }
  };
  const band = { x: from, y: rail + 2 * s, width: to - from };
  byKind<StageSketch, void>(stage, {
    crates: ticks,
    station: ticks,
    dwell: () => pen.rect({ ...band, height: 24 * s }, { fill: "pause" }, 4),
    chain: () => undefined,
    "chain station": () => pen.rect({ ...band, height: 25 * s }, { fill: "pause", stroke: "grid" }, 3),
  });
}

function drawPositions(pen: Pen, { layout, course, seconds }: Scene, place: StagePlace, top: number): void {
  const { positionFrom, crews } = course.sketch.stages[place.stage]!;
  for (const [index, x] of place.positions.entries()) {
    const state = stepAt(course.states, positionFrom + index, seconds, 2);
    drawPosition(
      pen,
      { x, y: top + SIZE.person * layout.scale, scale: layout.scale },
      { state, isManned: crews.length > 0 },
    );
  }
}

function drawWords(pen: Pen, scene: Scene, place: StagePlace, top: number): void {
  const { layout, course } = scene;
  const s = layout.scale;
  const stage = course.sketch.stages[place.stage]!;
  const x = place.labelX;
  if (does(stage, "carry stations") && course.sketch.chains[stage.chain]!.windows.length > 0) {
    if (isNameCovered(scene, place)) return;
    const anchor = x === place.waiting.from ? "start" : "end";
    pen.text(x, top + 22 * s, isolated(place.label.join(" ")), { size: SIZE.text * s, bold: true, anchor });
    return;
  }
  let y = top + SIZE.label * s;
  for (const line of place.label) {
    pen.text(x, y, isolated(line), { size: SIZE.text * s, bold: true, anchor: "middle" });
    y += SIZE.line * s;
  }
  pen.text(x, y, waitingWords(scene, place), { size: SIZE.text * s, fill: "muted", anchor: "middle" });
}

/** " of 6"; " (6 places)" where a head also waits at an idle position; "" without a limit. */
export function placesWords(waiting: number, places: number): string {
  if (!Number.isFinite(places)) return "";
  return waiting > places ? ` (${formatDecimals(places, 0)} places)` : ` of ${formatDecimals(places, 0)}`;
}

/** "3 of 5 wait", "12 of 36 inside"; what a number alone cannot tell is drawn. */
function waitingWords({ course, seconds }: Scene, place: StagePlace): string {
  const stage = course.sketch.stages[place.stage]!;
  const { places } = stage;
  const heads = stepAt(course.waiting, place.stage, seconds);
  const count = formatDecimals(heads, 0);
  const limit = placesWords(heads, places);
  if (!does(stage, "work")) return `${count}${limit} in it`;
  if (does(stage, "stand on a chain")) return `${count} before it`;
  if (place.stage === course.sketch.hanging && course.sketch.supply === "loads") return `${count} in crates`;
  if (places === 0) return heads === 0 ? "no places" : `${count} ${heads === 1 ? "waits" : "wait"}`;
  return heads === 0 ? `0${limit} wait` : `${count}${limit} ${heads === 1 ? "waits" : "wait"}`;
}

/** The first vessel that what is taken off here runs into, with its level. */
function drawVessel(pen: Pen, { layout, course, seconds }: Scene, place: StagePlace, top: number): void {
  const vessel = course.sketch.vessels.findIndex(({ feeders }) => feeders.includes(place.stage));
  if (vessel < 0 || place.look === "siding") return;
  const s = layout.scale;
  const x = place.cell.to - 5 * s;
  const y = top + SIZE.person * s;
  const share = Math.min(1, stepAt(course.vessels, vessel, seconds) / course.sketch.vessels[vessel]!.capacityKg);
  pen.rect(
    { x: x - 4 * s, y: y - 12 * share * s, width: 8 * s, height: 12 * share * s },
    { fill: share > 0.99 ? "limit" : "rule" },
  );
  pen.shape(BIN, x, y, { stroke: "muted", width: 1.2 }, s);
}
