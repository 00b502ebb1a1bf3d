import { least } from "d3";
import type { LineSketch, StageSketch } from "../../../sim/day/course/index.ts";
import { byKind, does } from "../../../sim/text/kinds/index.ts";
import { spreadLabels, textWidth, wrapText } from "../../frame/index.ts";

/** A stretch of rail in the picture; x is along the rail, from the left edge. Pixels. */
export interface Stretch {
  from: number;
  to: number;
}

/** Where a stage is drawn. */
export interface StagePlace {
  stage: number;
  row: number;
  /** Its part of the row, label included. */
  cell: Stretch;
  /** Rail with what waits (station), or all that is in it (dwell, chain). */
  waiting: Stretch;
  /** Pixels from one waiting head to the next; the first one stands at the right end of `waiting`. */
  pitch: number;
  /** Heads that are drawn there at most; more are told as a number. */
  shown: number;
  /** One x per position; empty for dwell stages and chains. */
  positions: number[];
  look: "station" | "dwell" | "store" | "chain" | "siding";
  label: string[];
  /** Middle of the label; for a chain with stations the end of the chain that it stands at. */
  labelX: number;
}

export interface RowPlace {
  y: number;
  height: number;
  /** Rail of the row. */
  rail: Stretch;
  hasSidings: boolean;
}

export interface RailLayout {
  width: number;
  height: number;
  scale: number;
  rows: RowPlace[];
  /** By stage: its first position. */
  positionFrom: number[];
  /** By stage; null for crate steps, which are drawn in the yard. */
  stages: (StagePlace | null)[];
  /** Where loads, crates or arriving heads are drawn: left of the first row. */
  yard: Stretch;
  /** Right end of the last row: heads that are out. */
  end: number;
}

/** Sizes at scale 1. */
export const SIZE = {
  rail: 33,
  person: 77,
  label: 92,
  line: 14,
  row: 132,
  /** Below the crates the station on crates that holds the line back is named; the first row reaches as far. */
  yardWords: 142,
  yardRow: 150,
  /** A siding's rail lies so much below the row's own, clear of the heads that pass on it; the row is as much higher. */
  sidingDrop: 30,
  text: 12,
  place: 8.5,
  position: 19,
  travel: 24,
  end: 80,
} as const;

/** No letters under 11 pixels. */
const MIN_SCALE = 11 / SIZE.text;
/** What waits is seen even beside very many positions. */
const MIN_WAITING = 60;
const MAX_PLACES = 12;
const MAX_SIDING_PLACES = 5;
/** A dwell stage with more places is drawn as a store, by marks that stand for several heads. */
const LARGEST_STRETCH = 90;

interface Piece {
  stage: number;
  look: StagePlace["look"];
  waiting: number;
  positions: number;
  width: number;
  shown: number;
  /** From one position to the next. */
  step: number;
  label: string[];
}

/**
 * Places the line in a picture of the given width: from left to right, broken into rows like a text when it is longer
 * than the width, rows filled evenly. The scale grows with the width, so that it can be read across a room.
 */
export function layoutOf(sketch: LineSketch, width: number): RailLayout {
  const natural = inReadingOrder(sketch).map((stage) => pieceOf(sketch, stage, width));
  const yard = yardWidth(sketch);
  const all = yard + SIZE.end + natural.reduce((sum, piece) => sum + piece.width + SIZE.travel, 0);
  const wanted = Math.min(1.3, Math.max(0.95, 1 + (width - 960) / 1400));
  const rows = rowsFor(natural, yard, all, width, wanted);
  const widest = Math.max(...rows.map((row, index) => rowWidth(row, index, rows.length, yard)));
  const scale = Math.min(rows.length > 1 ? wanted * 1.12 : 1.6, Math.max(MIN_SCALE, width / widest));
  return place(sketch, rows, yard, width, scale);
}

/** The stages on the rail, each followed by the off-line stages that get their heads from it. */
function inReadingOrder(sketch: LineSketch): number[] {
  const drawn = sketch.stages.flatMap((each, stage) =>
    does(each, "send heads on") && !(each.offLine && does(each, "carry stations")) ? [stage] : [],
  );
  const offLine = drawn.filter((stage) => sketch.stages[stage]!.offLine);
  return drawn
    .filter((stage) => !sketch.stages[stage]!.offLine)
    .flatMap((stage) => [stage, ...offLine.filter((siding) => homeOf(sketch, siding) === stage)]);
}

function yardWidth({ supply }: LineSketch): number {
  return supply === "loads" ? 226 : 84;
}

function rowWidth(row: readonly Piece[], index: number, rows: number, yard: number): number {
  const sides = (index === 0 ? yard : 16) + (index === rows - 1 ? SIZE.end : 16);
  return sides + row.reduce((sum, piece) => sum + piece.width + SIZE.travel, 0);
}

/** As few rows as hold everything at about the wanted scale, each about as long as the others. */
function rowsFor(pieces: readonly Piece[], yard: number, all: number, width: number, wanted: number): Piece[][] {
  for (let count = Math.max(1, Math.ceil((0.8 * all) / width)); ; count++) {
    // Off-line stages stay in the row of the stage that sends to them, unless that costs a row.
    const ways = [withSidings(pieces, all / count), pieces.map((piece) => [piece])];
    const fitting = ways
      .map((groups) => broken(groups, yard, all / count))
      .filter((rows) => {
        const widest = Math.max(...rows.map((row, index) => rowWidth(row, index, rows.length, yard)));
        return widest * Math.max(MIN_SCALE, wanted * 0.92) <= width || rows.length >= pieces.length;
      });
    const rows = least(fitting, ({ length }) => length);
    if (rows !== undefined) return rows;
  }
}

function broken(groups: readonly Piece[][], yard: number, wanted: number): Piece[][] {
  const rows: Piece[][] = [[]];
  let used = yard;
  for (const group of groups) {
    const width = group.reduce((sum, piece) => sum + piece.width + SIZE.travel, 0);
    const next = used + width;
    const row = rows.at(-1)!;
    // What reaches further beyond the wanted length than its row falls short of it begins the next row.
    if (row.length > 0 && next - wanted > wanted - used) {
      rows.push([...group]);
      used = 16 + width;
    } else {
      row.push(...group);
      used = next;
    }
  }
  return rows;
}

/** Each stage with the off-line stages that follow it, as far as they go into `most` together. */
function withSidings(pieces: readonly Piece[], most: number): Piece[][] {
  const groups: Piece[][] = [];
  let length = 0;
  for (const piece of pieces) {
    length += piece.width + SIZE.travel;
    if (piece.look === "siding" && length <= most) groups.at(-1)?.push(piece);
    else {
      groups.push([piece]);
      length = piece.width + SIZE.travel;
    }
  }
  return groups;
}

/** As wide as it wants to be, but never wider than the picture. */
function pieceOf(sketch: LineSketch, stage: number, width: number): Piece {
  const of = sketch.stages[stage]!;
  const look = lookOf(of);
  const shown = shownOf(of, look);
  const room = (width - 40) / MIN_SCALE - 8;
  const count = look === "station" || look === "siding" ? of.positions : 0;
  const positions = Math.min(count * SIZE.position, room - (shown > 0 ? MIN_WAITING : 0));
  const waiting = Math.min(waitingWidth(sketch, of, look, shown), room - positions);
  const label = labelOf(of.name);
  const words = Math.max(...label.map((line) => textWidth(line, SIZE.text, true)));
  const step = count === 0 ? SIZE.position : positions / count;
  const natural = Math.max(waiting + positions + 8, words + 10, 66);
  return { stage, look, shown, waiting, positions, step, label, width: natural };
}

function labelOf(name: string): string[] {
  return wrapText(name, 92, SIZE.text, 2, true);
}

function lookOf(stage: StageSketch): StagePlace["look"] {
  if (stage.offLine) return "siding";
  return byKind<StageSketch, StagePlace["look"]>(stage, {
    crates: () => "station",
    station: () => "station",
    dwell: ({ places }) => (places <= LARGEST_STRETCH ? "dwell" : "store"),
    chain: () => "chain",
    "chain station": () => "station",
  });
}

function shownOf(stage: StageSketch, look: StagePlace["look"]): number {
  if (look === "siding") return Math.min(stage.places, MAX_SIDING_PLACES);
  return look === "station" ? Math.min(stage.places, MAX_PLACES) : stage.places;
}

function waitingWidth(sketch: LineSketch, stage: StageSketch, look: StagePlace["look"], shown: number): number {
  if (look === "store") return 150;
  if (look === "dwell") return Math.min(170, Math.max(70, stage.places * 5));
  if (look === "chain") {
    const { windows } = sketch.chains[stage.chain]!;
    return Math.max(90, Math.min(420, stage.places * 9), windows.length * 92);
  }
  return shown * SIZE.place + (shown > 0 ? 4 : 0);
}

function place(sketch: LineSketch, rows: Piece[][], yard: number, width: number, scale: number): RailLayout {
  const stages: (StagePlace | null)[] = sketch.stages.map(() => null);
  const places: RowPlace[] = [];
  let y = 0;
  for (const [index, row] of rows.entries()) {
    const first = index === 0 ? yard * scale : 16;
    const last = index === rows.length - 1 ? SIZE.end * scale : 16;
    const used = row.reduce((sum, piece) => sum + piece.width * scale, 0);
    // What is left over goes into the stretches between the stages, but a short last row is not pulled apart.
    const stretch = (width - first - last - used) / row.length;
    const travel = Math.min(stretch, SIZE.travel * scale * 2.4);
    let x = first;
    for (const piece of row) {
      stages[piece.stage] = stagePlace(piece, index, x + travel / 2, scale);
      x += piece.width * scale + travel;
    }
    const hasSidings = row.some(({ look }) => look === "siding");
    const own = SIZE.row + (hasSidings ? SIZE.sidingDrop : 0);
    const height = (index === 0 && sketch.supply === "loads" ? Math.max(own, SIZE.yardRow) : own) * scale;
    const rail = { from: index === 0 ? first - 14 * scale : 4, to: index === rows.length - 1 ? x : width - 4 };
    places.push({ y, height, rail, hasSidings });
    y += height;
  }
  placeChainStations(sketch, stages, scale);
  const end = places.at(-1)!.rail.to;
  return {
    width,
    height: y,
    scale,
    rows: places,
    stages,
    positionFrom: sketch.stages.map((stage) => stage.positionFrom),
    yard: { from: 0, to: yard * scale },
    end,
  };
}

function stagePlace(piece: Piece, row: number, x: number, scale: number): StagePlace {
  const cell = { from: x, to: x + piece.width * scale };
  const inner = (piece.waiting + piece.positions) * scale;
  const from = (cell.from + cell.to - inner) / 2;
  const waiting = { from, to: from + piece.waiting * scale };
  const step = piece.step * scale;
  const count = Math.round(piece.positions / piece.step);
  return {
    stage: piece.stage,
    row,
    cell,
    waiting,
    pitch: Math.min(SIZE.place, piece.waiting / Math.max(1, piece.shown)) * scale,
    shown: piece.shown,
    positions: Array.from({ length: count }, (_, index) => waiting.to + (index + 0.5) * step),
    look: piece.look,
    label: piece.label,
    labelX: (cell.from + cell.to) / 2,
  };
}

/** The stage on the rail beside which an off-line stage is drawn. */
function homeOf({ stages, chains, hanging }: LineSketch, stage: number): number {
  let home = stages[stage]!.sentFrom;
  for (let steps = 0; steps < stages.length && home >= 0 && stages[home]!.offLine; steps++)
    home = stages[home]!.sentFrom;
  if (home < 0 || stages[home]!.offLine) return hanging;
  return does(stages[home]!, "stand on a chain") ? chains[stages[home]!.chain]!.stage : home;
}

/** The end of a chain that is further from the middles of its stations, so that what is told above them has room. */
function freerEnd({ waiting: { from, to } }: StagePlace, middles: readonly number[]): number {
  return Math.min(...middles) - from >= to - Math.max(...middles) ? from : to;
}

/** Stations on a chain: their window is a part of the chain's stretch, their positions stand below it. */
function placeChainStations(sketch: LineSketch, stages: (StagePlace | null)[], scale: number): void {
  for (const chain of sketch.chains) {
    const on = stages[chain.stage];
    if (!on) continue;
    const step = (on.waiting.to - on.waiting.from) / chain.shackles;
    const wishes = chain.windows.map(({ from, to }) => on.waiting.from + ((from + to) / 2) * step);
    const labels = spreadLabels(wishes, 88 * scale, on.waiting.from + 30 * scale, on.waiting.to - 30 * scale);
    for (const [index, { stage, from, to }] of chain.windows.entries()) {
      const of = sketch.stages[stage]!;
      const window = { from: on.waiting.from + from * step, to: on.waiting.from + to * step };
      const middle = (window.from + window.to) / 2;
      const gap = Math.min(16, Math.max(8, (window.to - window.from) / of.positions));
      const positions = Array.from(
        { length: of.positions },
        (_, position) => middle + (position - (of.positions - 1) / 2) * gap,
      );
      stages[stage] = {
        stage,
        row: on.row,
        cell: window,
        waiting: window,
        pitch: step,
        shown: to - from,
        positions,
        look: "chain",
        label: labelOf(of.name),
        labelX: labels[index]!,
      };
    }
    if (chain.windows.length > 0) on.labelX = freerEnd(on, wishes);
  }
}

/** Stage drawn at a point of the picture, -1 for none; a station on a chain before its chain. */
export function stageUnder(layout: RailLayout, x: number, y: number): number {
  let found = -1;
  for (const place of layout.stages) {
    if (place === null) continue;
    const row = layout.rows[place.row]!;
    const top = row.y + (place.look === "siding" ? SIZE.sidingDrop * layout.scale : 0);
    const height = SIZE.row * layout.scale;
    const inside = x >= place.cell.from && x <= place.cell.to && y >= top && y <= top + height;
    if (inside) found = place.stage;
  }
  return found;
}
