import { formatPath } from "../../asked/plan/index.ts";
import type { ColumnFit } from "./columnFit.ts";
import { subjectPath } from "./times/subject.ts";
import type { UncertainEntry } from "./uncertainEntries.ts";

/** Parts of a plan to be merged into it: stages by name with what was measured, and where that comes from. */
export interface PlanFragment {
  line: Record<string, unknown>[];
  sources: { path: string; kind: "measured"; note: string }[];
  /** How well each figure is known; only where it is asked for. */
  uncertain?: UncertainEntry[];
}

/**
 * What the advice of every column comes to, in the plan's own syntax. `file` names the table in the notes. Columns
 * without advice are left out.
 */
export function planFragment(fits: readonly ColumnFit[], file: string): PlanFragment {
  const stages = new Map<string, Record<string, unknown>>();
  const advised = fits.filter(({ advice }) => advice.kind !== "nothing");
  for (const { subject, advice } of advised) {
    const stage = stages.get(subject.stage) ?? { name: subject.stage };
    stages.set(subject.stage, stage);
    if (subject.breakdown === null) stage[subject.figure] = advice.inPlan;
    else breakdownOf(stage, subject.breakdown)[subject.figure] = advice.inPlan;
  }
  return { line: [...stages.values()], sources: advised.map((fit) => sourceOf(fit, file)) };
}

function breakdownOf(stage: Record<string, unknown>, name: string): Record<string, unknown> {
  const list = (stage.breakdowns ?? []) as Record<string, unknown>[];
  stage.breakdowns = list;
  const known = list.find((each) => each.name === name);
  if (known !== undefined) return known;
  const added = { name };
  list.push(added);
  return added;
}

function sourceOf({ subject, ended, open, zeros, advice }: ColumnFit, file: string): PlanFragment["sources"][number] {
  const stillOpen = open.length === 0 ? "" : `, ${open.length} of them still open`;
  const how = advice.family === null ? advice.kind : `${advice.family} by maximum likelihood`;
  return {
    path: formatPath(subjectPath(subject)),
    kind: "measured",
    note: `${ended.length + open.length + zeros} times of ${file}${stillOpen}; ${how}`,
  };
}
