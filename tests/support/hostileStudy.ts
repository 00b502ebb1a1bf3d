import type { StudyResults } from "../../sim/days/results/index.ts";
import { syntheticStudy } from "./syntheticStudy.ts";

/** Names that try to leave their place: markup, attributes, direction controls, forbidden characters, endless words. */
export const HOSTILE = [
  `</script><script>document.title="taken"</script>`,
  `"'><img src=x onerror="document.title='taken'">`,
  "]]></style><style>body{display:none}</style>",
  "left \u202Eright to left\u202C \u2067isolate",
  "שחיטה \u200F 12 \u0000 \uD800",
  `endless${"w".repeat(300)}`,
  `javascript:alert(1) $\{7*7} {{7*7}}`,
];

/** The synthetic study with a hostile text in every place that a plan or study can fill. */
export function hostileStudy(): StudyResults {
  let next = 0;
  const hostile = (text: string) => `${HOSTILE[next++ % HOSTILE.length]} ${text}`;
  const study = syntheticStudy();
  for (const key of ["name", "question", "reader", "seed", "command"] as const)
    study.study[key] = hostile(study.study[key]);
  study.plan.name = hostile(study.plan.name);
  study.plan.notes = hostile(study.plan.notes);
  study.gambrel = hostile(study.gambrel);
  for (const source of study.plan.sources) {
    source.path = hostile(source.path);
    source.kind = hostile(source.kind);
    source.note = hostile(source.note);
  }
  for (const pause of study.plan.breaks) pause.name = hostile(pause.name);
  for (const response of study.responses) {
    response.label = hostile(response.label);
    response.unit = response.unit === "" ? "" : hostile(response.unit);
  }
  study.factors = [{ name: hostile("factor"), path: hostile("path"), levels: HOSTILE }];
  for (const variant of study.variants) {
    variant.name = hostile(variant.name);
    variant.set = { [hostile("path")]: hostile("value") };
    renameDay(variant.day, hostile);
    for (const limit of variant.day.limits) study.plan.limitSources[limit.name] = hostile("source");
  }
  return study;
}

function renameDay(day: StudyResults["variants"][number]["day"], hostile: (text: string) => string): void {
  for (const part of [...day.stages, ...day.sections, ...day.limits]) part.name = hostile(part.name);
  for (const trace of day.traces!.wip) trace.name = hostile(trace.name);
}
