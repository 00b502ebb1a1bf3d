import { type DayCourse, lastAtOrBefore, stepAt } from "../../../sim/day/course/index.ts";
import { does } from "../../../sim/text/kinds/index.ts";
import { formatClock } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { STATE_LABELS } from "../scene/looks.ts";
import * as state from "./state.ts";

/** Moves the clock to the next (1) or the last (-1) instant at which anything happens on either line, and says what. */
export function stepToEvent(direction: 1 | -1): void {
  const { clock } = state;
  clock.pause();
  const days = (["base", "variant"] as const).flatMap((which) => state.courses[which].value ?? []);
  const times = [...new Set(days)].map(({ moments }) => neighbour(moments, clock.seconds, direction));
  const known = times.filter((time) => time !== null);
  if (known.length === 0) return;
  clock.moveTo(direction === 1 ? Math.min(...known) : Math.max(...known));
  state.notice.value = happenings(days, clock.seconds);
}

function neighbour(moments: Float64Array, seconds: number, direction: 1 | -1): number | null {
  const at = lastAtOrBefore(moments, seconds);
  const index = direction === 1 ? at + 1 : moments[at] === seconds ? at - 1 : at;
  return moments[index] ?? null;
}

/** "07:12:03: skinning 1 broken down; evisceration 2 waits for heads" */
function happenings(days: readonly DayCourse[], seconds: number): string {
  const names = days.length > 1 && days[0] !== days[1] ? ["today's plan: ", "variant: "] : [""];
  const parts = names.flatMap((name, index) => changesAt(days[index]!, seconds).map((words) => name + words));
  const clock = formatClock((days[0]?.record.startClockSeconds ?? 0) + seconds, true);
  return parts.length === 0 ? `${clock}: a head moves on.` : `${clock}: ${parts.slice(0, 4).join("; ")}.`;
}

function changesAt(course: DayCourse, seconds: number): string[] {
  const { states, sketch } = course;
  const found: string[] = [];
  for (let position = 0; position < sketch.stageOfPosition.length; position++) {
    const row = lastAtOrBefore(states.times, seconds, states.from[position]!, states.from[position + 1]!);
    if (row < 0 || states.times[row] !== seconds) continue;
    const stage = sketch.stages[sketch.stageOfPosition[position]!]!;
    if (!does(stage, "work")) continue;
    const which = stage.positions > 1 ? ` ${position - stage.positionFrom + 1}` : "";
    found.push(`${isolated(stage.name)}${which} ${STATE_LABELS[stepAt(states, position, seconds)]!}`);
  }
  return found;
}
