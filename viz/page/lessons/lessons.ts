import type { PlanText } from "../worker/messages.ts";
import { type Lesson, readLesson } from "./lesson.ts";

const FOLDER = "../../../experiments/lessons/";
const files = import.meta.glob<string>("../../../experiments/lessons/*.json", {
  query: "?raw",
  import: "default",
  eager: true,
});
const plans = import.meta.glob<string>("../../../experiments/lessons/plans/*.json", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** The lessons in the order of their file names. */
export const LESSONS: readonly Lesson[] = Object.keys(files)
  .sort()
  .map((path) => readLesson(path.slice(FOLDER.length).replace(/\.json$/u, ""), files[path]!));

/** The plan of a lesson, as its file says it. */
export function lessonPlan({ plan }: Lesson): PlanText {
  return { name: plan.replace("plans/", ""), text: plans[FOLDER + plan]!, files: {} };
}
