import type { LimitDanger } from "../../../sim/course/index.ts";
import { formatNumber, isolated, type Paint } from "../../frame/index.ts";
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
  const dangers = new Map(dangersAt(scene.course, scene.seconds).map((danger) => [danger.head, danger]));
  const flagged: { at: HangingHead; danger: LimitDanger }[] = [];
  for (const hanging of headsAt(scene.course, scene.index, scene.layout, scene.seconds)) {
    const danger = dangers.get(hanging.head);
    const beyond = danger !== undefined && danger.beyondSeconds <= scene.seconds;
    pen.shape(HOOK, hanging.x, hanging.y, { stroke: "muted", width: 1 }, s);
    const outline =
      danger === undefined ? { stroke: "ink" as const, width: 0.8 } : { stroke: "limit" as const, width: 2 };
    pen.shape(BODY, hanging.x, hanging.y, { fill: beyond ? "limit" : FILLS[hanging.look], ...outline }, s);
    if (danger !== undefined) flagged.push({ at: hanging, danger });
  }
  drawFlags(pen, scene, flagged);
}

/** One flag a stage, with the limit that is worst there and how many heads it concerns. */
function drawFlags(pen: Pen, scene: Scene, flagged: readonly { at: HangingHead; danger: LimitDanger }[]): void {
  const byStage = new Map<number, { at: HangingHead; danger: LimitDanger }[]>();
  for (const flag of flagged) byStage.set(flag.at.stage, [...(byStage.get(flag.at.stage) ?? []), flag]);
  for (const flags of byStage.values()) {
    const beyond = flags.filter(({ danger }) => danger.beyondSeconds <= scene.seconds);
    const worst = (beyond[0] ?? flags[0])!;
    drawFlag(pen, scene, worst, beyond.length, flags.length);
  }
}

function drawFlag(
  pen: Pen,
  { course, layout }: Scene,
  { at, danger }: { at: HangingHead; danger: LimitDanger },
  beyond: number,
  all: number,
): void {
  const s = layout.scale;
  pen.shape(PENNANT, at.x, at.y, { fill: beyond > 0 ? "limit" : "beyond", stroke: "limit", width: 1.4 }, s);
  const { name, maxSeconds, minSeconds } = course.record.limits[danger.limit]!;
  const tooSoon = danger.fromSeconds === danger.beyondSeconds;
  const bound = tooSoon
    ? `under ${spanWords(minSeconds ?? 0)}`
    : `${beyond > 0 ? "over" : "near"} ${spanWords(maxSeconds ?? 0)}`;
  const words = `${isolated(name)}: ${formatNumber(beyond > 0 ? beyond : all, 0)} ${bound}`;
  const anchor = at.x > layout.width - 150 * s ? "end" : "start";
  const x = at.x + (anchor === "end" ? -4 : 12) * s;
  pen.text(x, at.y - (SIZE.rail - 28) * s, words, { size: (SIZE.text - 0.5) * s, bold: true, fill: "limit", anchor });
}
