import { useComputed, useSignalEffect } from "@preact/signals";
import { useEffect, useRef } from "preact/hooks";
import type { DayCourse } from "../../../sim/day/course/index.ts";
import { bottleneckAt } from "../scene/bottleneckAt.ts";
import { CanvasPen } from "../scene/canvasPen.ts";
import { describeLine } from "../scene/describeLine.ts";
import { drawRail } from "../scene/drawRail.ts";
import { indexHeads } from "../scene/headsAt.ts";
import { layoutOf, type RailLayout, stageUnder } from "../scene/layout.ts";
import * as state from "./state.ts";
import { shownTheme } from "./theme.ts";

/** One line, drawn at the time of the clock; a click picks a station. */
export function RailView({ which }: { which: state.Which }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  /** Of the course it was made for: another day may have other stages. */
  const layout = useRef<{ of: DayCourse; layout: RailLayout } | null>(null);
  const course = state.courses[which];
  const index = useComputed(() => (course.value === null ? null : indexHeads(course.value)));

  const draw = () => {
    const element = canvas.current;
    const day = course.peek();
    if (element === null || day === null || layout.current?.of !== day) return;
    paintLine(element, day, layout.current.layout, index.peek()!);
  };

  const place = () => {
    const element = canvas.current;
    const day = course.peek();
    const width = element?.parentElement?.clientWidth ?? 0;
    if (element === null || day === null || width === 0) return;
    const placed = layoutOf(day.sketch, width);
    layout.current = { of: day, layout: placed };
    const ratio = window.devicePixelRatio || 1;
    element.width = Math.round(width * ratio);
    element.height = Math.round(placed.height * ratio);
    element.style.height = `${placed.height}px`;
    draw();
  };

  useSignalEffect(() => {
    index.value;
    place();
  });
  useSignalEffect(() => {
    shownTheme.value;
    state.picked.value;
    draw();
  });
  useEffect(() => {
    const observer = new ResizeObserver(place);
    observer.observe(canvas.current!.parentElement!);
    const stop = state.clock.watch(draw);
    return () => {
      observer.disconnect();
      stop();
    };
  }, []);
  useDescription(canvas, course);

  const pick = (event: MouseEvent) => {
    const day = course.peek();
    if (day === null || layout.current?.of !== day) return;
    const box = canvas.current!.getBoundingClientRect();
    const stage = stageUnder(layout.current.layout, event.clientX - box.left, event.clientY - box.top);
    if (stage >= 0) state.picked.value = day.sketch.stages[stage]!.name;
  };
  return (
    <div class="rail">
      <canvas ref={canvas} role="img" aria-label="The line" onClick={pick} />
    </div>
  );
}

function paintLine(
  element: HTMLCanvasElement,
  course: DayCourse,
  layout: RailLayout,
  index: ReturnType<typeof indexHeads>,
): void {
  const context = element.getContext("2d")!;
  const { seconds } = state.clock;
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.clearRect(0, 0, element.width, element.height);
  const pen = new CanvasPen(context, element.width / layout.width, shownTheme.peek());
  const picked = course.sketch.stages.findIndex(({ name }) => name === state.picked.peek());
  const at = Math.min(seconds, course.record.finishSeconds);
  drawRail(pen, { course, index, layout, seconds: at, bottleneck: bottleneckAt(course, at), picked });
}

/** What the picture shows, in words: renewed when the day stands still, so that it is not read out at every frame. */
function useDescription(canvas: { current: HTMLCanvasElement | null }, course: { value: DayCourse | null }): void {
  useSignalEffect(() => {
    const day = course.value;
    if (day === null || state.clock.playing.value) return;
    return state.clock.watch((seconds) => {
      canvas.current?.setAttribute("aria-label", describeLine(day, seconds));
    });
  });
}
