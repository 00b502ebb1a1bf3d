import type { Paint } from "../../frame/index.ts";
import { drawFlags } from "./drawFlags.ts";
import { BODY, HOOK } from "./glyphs.ts";
import { type HangingHead, type HeadLook, headsAt } from "./headsAt.ts";
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
  drawFlags(pen, scene, dangers, drawn);
}
