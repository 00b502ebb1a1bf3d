import { batch } from "@preact/signals";
import { readClock } from "../../../sim/text/units/index.ts";
import type { Lesson } from "../lessons/lesson.ts";
import { lessonPlan } from "../lessons/lessons.ts";
import type { Linked } from "../plan/link.ts";
import type { PlanText } from "../worker/messages.ts";
import * as state from "./state.ts";

/** Puts another plan on the page; what was moved in the one before is forgotten. */
export function openPlan(plan: PlanText, { moves = {}, seed = "1", replication = 0 }: Partial<Linked> = {}): void {
  batch(() => {
    state.clock.pause();
    state.clock.moveTo(0);
    state.plan.value = plan;
    state.moves.value = moves;
    state.seed.value = seed;
    state.replication.value = replication;
    state.picked.value = null;
  });
}

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
