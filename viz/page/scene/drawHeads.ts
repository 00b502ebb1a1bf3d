import { type LimitDanger, lastAtOrBefore } from "../../../sim/course/index.ts";
import { formatNumber, isolated, type Paint, textWidth } from "../../frame/index.ts";
import { spanWords } from "../../words/index.ts";
import { BODY, HOOK, PENNANT } from "./glyphs.ts";
import { type HangingHead, type HeadLook, headsAt } from "./headsAt.ts";
import { SIZE } from "./layout.ts";
import type { Pen } from "./pen.ts";
import { dangersAt, type Scene } from "./scene.ts";

const FILLS: Record<HeadLook, Paint> = {
  waiting: "rule",
  dwelling: "rule",
  moving: "rule",
  "in work": "working",
  finished: "blocked",
};

/** Everything that hangs, then a flag at each place where a time limit is in danger or passed. */
export function drawHeads(pen: Pen, scene: Scene): void {
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
  for (const flag of flagsOf(scene, dangers, drawn)) drawFlag(pen, scene, flag);
}

/** What is told at one place: the limit that is worst there and how many heads it concerns, drawn or not. */
interface Flag {
  x: number;
  y: number;
  worst: LimitDanger;
  heads: number;
  beyond: boolean;
}

function flagsOf(scene: Scene, dangers: readonly LimitDanger[], drawn: ReadonlyMap<number, HangingHead>): Flag[] {
  const byStage = new Map<number, LimitDanger[]>();
  for (const danger of dangers) {
    const stage = stageOfHead(scene, danger.head);
    byStage.set(stage, [...(byStage.get(stage) ?? []), danger]);
  }
  return [...byStage].map(([stage, all]) => {
    const beyond = all.filter(({ beyondSeconds }) => beyondSeconds <= scene.seconds);
    const told = beyond.length > 0 ? beyond : all;
    const worst = told[0]!;
    const same = told.filter(({ limit }) => limit === worst.limit);
    const spot = same.map(({ head }) => drawn.get(head)).find((each) => each !== undefined);
    return { ...(spot ?? spotOf(scene, stage)), worst, heads: same.length, beyond: beyond.length > 0 };
  });
}

/** Where a head is that is not drawn by itself: -1 in its crate, before it is hung. */
function stageOfHead({ course, seconds }: Scene, head: number): number {
  const { ways } = course;
  const row = lastAtOrBefore(ways.times, seconds, ways.from[head]!, ways.from[head + 1]!);
  return row < 0 ? -1 : ways.points[row]! >> 2;
}

function spotOf({ layout }: Scene, stage: number): { x: number; y: number } {
  const place = layout.stages[stage];
  if (!place) return { x: 112 * layout.scale, y: 66 * layout.scale };
  return { x: place.waiting.to, y: layout.rows[place.row]!.y + SIZE.rail * layout.scale };
}

function drawFlag(pen: Pen, { course, layout }: Scene, { x, y, worst, heads, beyond }: Flag): void {
  const s = layout.scale;
  pen.shape(PENNANT, x, y, { fill: beyond ? "limit" : "beyond", stroke: "limit", width: 1.4 }, s);
  const { name, maxSeconds, minSeconds } = course.record.limits[worst.limit]!;
  const tooSoon = worst.fromSeconds === worst.beyondSeconds;
  const bound = tooSoon
    ? `under ${spanWords(minSeconds ?? 0)}`
    : `${beyond ? "over" : "near"} ${spanWords(maxSeconds ?? 0)}`;
  const words = `${isolated(name)}: ${formatNumber(heads, 0)} ${bound}`;
  const size = SIZE.text * s;
  // Towards the side where it has room.
  const atEnd = x + 12 * s + textWidth(words, size, true) > layout.width;
  pen.text(x + (atEnd ? -4 : 12) * s, y - 8 * s, words, {
    size,
    bold: true,
    fill: "limit",
    anchor: atEnd ? "end" : "start",
  });
}
