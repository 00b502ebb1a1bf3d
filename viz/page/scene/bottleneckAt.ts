import { type DayCourse, lastAtOrBefore } from "../../../sim/day/course/index.ts";

/** Spans of the momentary bottleneck in the order of time, with their stages by index: searched every frame. */
export interface BottleneckSpans {
  from: Float64Array;
  to: Float64Array;
  stages: number[][];
}

const NONE: readonly number[] = [];
const known = new WeakMap<DayCourse, BottleneckSpans>();

/**
 * The stages between which the bottleneck is at `seconds`: one, or two and more while it shifts from one to the other;
 * none before the first head is worked on, after the last one, and on a day that did not end by itself. By the longest
 * active period (Roser, Nakano and Tanaka 2002), as the day's record has it.
 */
export function bottleneckAt(course: DayCourse, seconds: number): readonly number[] {
  const { from, to, stages } = spansOf(course);
  const row = lastAtOrBefore(from, seconds);
  return row < 0 || to[row]! <= seconds ? NONE : stages[row]!;
}

export function spansOf(course: DayCourse): BottleneckSpans {
  const found = known.get(course);
  if (found !== undefined) return found;
  const spans = course.record.binding?.bottleneck.spans ?? [];
  const indices = new Map(course.sketch.stages.map(({ name }, index) => [name, index]));
  const made = {
    from: Float64Array.from(spans, ({ fromSeconds }) => fromSeconds),
    to: Float64Array.from(spans, ({ toSeconds }) => toSeconds),
    stages: spans.map(({ stages }) => stages.flatMap((name) => indices.get(name) ?? [])),
  };
  known.set(course, made);
  return made;
}
