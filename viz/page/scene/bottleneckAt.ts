import type { DayCourse } from "../../../sim/course/index.ts";

export function bottleneckAt(_course: DayCourse, _seconds: number): number {
  return -1;
}
