import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { recordCourse } from "../../../../sim/day/course/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { textWidth } from "../../../../viz/frame/index.ts";
import { bottleneckAt } from "../../../../viz/page/scene/bottleneckAt.ts";
import { drawRail } from "../../../../viz/page/scene/drawRail.ts";
import { indexHeads } from "../../../../viz/page/scene/headsAt.ts";
import { layoutOf } from "../../../../viz/page/scene/layout.ts";
import { POINTER } from "../../../../viz/page/scene/looks.ts";
import type { LetterStyle, Pen } from "../../../../viz/page/scene/pen.ts";

const PLAN = resolve(import.meta.dirname, "../../../../experiments/lessons/plans/queue.json");

/** Keeps where words and pointers are drawn. */
class KeepingPen implements Pen {
  readonly words: { content: string; from: number; to: number; y: number }[] = [];
  readonly pointers: { x: number; y: number }[] = [];

  shape(path: string, x: number, y: number): void {
    if (path === POINTER) this.pointers.push({ x, y });
  }

  rect(): void {}

  text(x: number, y: number, content: string, { size = 12, bold = false, anchor = "start" }: LetterStyle = {}): void {
    const length = textWidth(content, size, bold);
    const from = anchor === "start" ? x : anchor === "end" ? x - length : x - length / 2;
    this.words.push({ content, from, to: from + length, y });
  }
}

/** A day of the lesson's plan, and one whose skinning is slow, so that heads wait too long elsewhere. */
const COURSES = [null, "7.2 s"].map((mean) => {
  const json = JSON.parse(readFileSync(PLAN, "utf8"));
  const skinning = json.line.find(({ name }: { name: string }) => name === "skinning");
  if (mean !== null) skinning.cycle.lognormal.mean = mean;
  return recordCourse(compileLine(readPlan(json, { readText: () => "" }).plan!), { seed: "1", replication: 0 });
});

describe("the words at a flag", () => {
  it.each([366, 964, 1369])("stay within a picture of %d pixels and cover no pointer to the bottleneck", (width) => {
    let flags = 0;
    for (const course of COURSES) {
      for (let minutes = 90; minutes < 150; minutes += 5) {
        const seconds = minutes * 60;
        const layout = layoutOf(course.sketch, width);
        const pen = new KeepingPen();
        const bottleneck = bottleneckAt(course, seconds);
        drawRail(pen, { course, index: indexHeads(course), layout, seconds, bottleneck, picked: -1 });
        for (const { from, to, y } of pen.words.filter(({ content }) => / (over|near) 15 min/u.test(content))) {
          flags++;
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(width);
          const covered = pen.pointers.filter(
            (pointer) => Math.abs(pointer.y - y) < 12 && pointer.x > from && pointer.x < to,
          );
          expect(covered).toEqual([]);
        }
      }
    }
    expect(flags).toBeGreaterThan(12);
  });
});
