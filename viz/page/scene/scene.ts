import type { DayCourse, LimitDanger } from "../../../sim/day/course/index.ts";
import type { HeadIndex } from "./headsAt.ts";
import type { RailLayout } from "./layout.ts";

/** One line at one moment, ready to be drawn. */
export interface Scene {
  course: DayCourse;
  index: HeadIndex;
  layout: RailLayout;
  seconds: number;
  /** Stages that are the momentary bottleneck; more than one while it shifts between them. */
  bottleneck: readonly number[];
  /** Stage that is picked out, -1 for none. */
  picked: number;
}

/** Dangers in force at `seconds`. `course.dangers` ascends by start, but ends differ. */
export function dangersAt({ dangers }: DayCourse, seconds: number): LimitDanger[] {
  return dangers.filter(({ fromSeconds, untilSeconds }) => fromSeconds <= seconds && seconds < untilSeconds);
}
