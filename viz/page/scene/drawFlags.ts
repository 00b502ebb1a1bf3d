import { type LimitDanger, lastAtOrBefore } from "../../../sim/day/course/index.ts";
import { formatDecimals, formatDuration } from "../../../sim/text/units/index.ts";
import { isolated, textWidth } from "../../frame/index.ts";
import { pointerStretches } from "./drawBottleneck.ts";
import type { HangingHead } from "./headsAt.ts";
import { SIZE, type Stretch } from "./layout.ts";
import { PENNANT } from "./looks.ts";
import type { Pen } from "./pen.ts";
import type { Scene } from "./scene.ts";

/** A flag at each place where a time limit is in danger or passed, with words that cover nothing else that is written. */
export function drawFlags(
  pen: Pen,
  scene: Scene,
  dangers: readonly LimitDanger[],
  drawn: ReadonlyMap<number, HangingHead>,
): void {
  const written: Written[] = pointerStretches(scene);
  for (const flag of flagsOf(scene, dangers, drawn)) drawFlag(pen, scene, flag, written);
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

/** What stands right above a rail. */
interface Written extends Stretch {
  /** The rail's. */
  y: number;
}

function drawFlag(pen: Pen, scene: Scene, flag: Flag, written: Written[]): void {
  const { x, y, beyond } = flag;
  const s = scene.layout.scale;
  pen.shape(PENNANT, x, y, { fill: beyond ? "limit" : "beyond", stroke: "limit", width: 1.4 }, s);
  const inRow = written.filter((other) => other.y === y);
  const spots = spotsOf(scene, flag, inRow);
  const free = (spot: Spot) =>
    spot.from >= 0 &&
    spot.to <= scene.layout.width &&
    !inRow.some((other) => other.from < spot.to && spot.from < other.to);
  const { words, from, to, anchor } = spots.find(free) ?? spots.at(-1)!;
  written.push({ from, to, y });
  const at = anchor === "start" ? from : to;
  pen.text(at, y - 8 * s, words, { size: SIZE.text * s, bold: true, fill: "limit", anchor });
}

interface Spot extends Stretch {
  words: string;
  /** The end that stands by the flag: letters may be wider than they are reckoned. */
  anchor: "start" | "end";
}

/**
 * Where the words can stand, best first: whole or without the limit's name, right or left of the flag; then beside what
 * else is written there; at last anywhere within the picture.
 */
function spotsOf({ course, layout }: Scene, { x, worst, heads, beyond }: Flag, others: readonly Stretch[]): Spot[] {
  const s = layout.scale;
  const { name, maxSeconds, minSeconds } = course.record.limits[worst.limit]!;
  const tooSoon = worst.fromSeconds === worst.beyondSeconds;
  const bound = tooSoon
    ? `under ${formatDuration(minSeconds ?? 0)}`
    : `${beyond ? "over" : "near"} ${formatDuration(maxSeconds ?? 0)}`;
  const short = `${formatDecimals(heads, 0)} ${bound}`;
  const length = (words: string) => textWidth(words, SIZE.text * s, true);
  const rightOf = (words: string, at: number): Spot => ({ words, from: at, to: at + length(words), anchor: "start" });
  const leftOf = (words: string, at: number): Spot => ({ words, from: at - length(words), to: at, anchor: "end" });
  const within = Math.max(0, Math.min(x + 12 * s, layout.width - length(short)));
  return [
    ...[`${isolated(name)}: ${short}`, short].flatMap((words) => [
      rightOf(words, x + 12 * s),
      leftOf(words, x - 4 * s),
    ]),
    ...others.flatMap(({ from, to }) => [rightOf(short, to + 4 * s), leftOf(short, from - 4 * s)]),
    rightOf(short, within),
  ];
}
