import { batch } from "@preact/signals";
import { readClock } from "../../../sim/text/units/index.ts";
import type { Lesson } from "../lessons/lesson.ts";
import { lessonPlan } from "../lessons/lessons.ts";
import { openPlan } from "./openPlan.ts";
import * as state from "./state.ts";

/** Puts a lesson on the page, with its plan and nothing moved, at the time where it begins. */
export function openLesson(lesson: Lesson): void {
  batch(() => {
    openPlan(lessonPlan(lesson));
    state.lesson.value = lesson;
    state.hands.value = lesson.options.map(() => 0);
    state.answerShown.value = false;
    state.clock.speed.value = lesson.speed;
    state.startAt.value = readClock(lesson.startAt).value;
  });
  history.replaceState(null, "", `#lesson=${lesson.id}`);
}

/** Leaves the lesson; its plan stays on the page. */
export function closeLesson(): void {
  state.lesson.value = null;
  history.replaceState(null, "", location.pathname + location.search);
}
