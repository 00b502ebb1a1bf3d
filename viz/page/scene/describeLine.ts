import { type DayCourse, stepAt } from "../../../sim/day/course/index.ts";
import { does } from "../../../sim/text/kinds/index.ts";
import { formatClock, formatDecimals } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { placesWords } from "./drawStation.ts";
import { STATE_LABELS } from "./looks.ts";
import { dangersAt } from "./scene.ts";

export interface StageWords {
  name: string;
  waiting: string;
  /** "working 3, waits for heads 1"; "" where there are no positions. */
  positions: string;
}

/** What every stage holds and does at `seconds`, one entry a stage in line order. */
export function stageWordsAt(course: DayCourse, seconds: number): StageWords[] {
  return course.sketch.stages.map((stage, index) => {
    const waiting = stepAt(course.waiting, index, seconds);
    const heads = formatDecimals(waiting, 0);
    const limit = stage.places > 0 ? placesWords(waiting, stage.places) : "";
    const hasPositions = does(stage, "work");
    return {
      name: isolated(stage.name),
      waiting: `${heads}${limit}`,
      positions: hasPositions ? positionWords(course, stage.positionFrom, stage.positions, seconds) : "",
    };
  });
}

function positionWords({ states }: DayCourse, from: number, count: number, seconds: number): string {
  const counts = STATE_LABELS.map(() => 0);
  for (let position = from; position < from + count; position++) counts[stepAt(states, position, seconds, 2)]!++;
  return STATE_LABELS.flatMap((label, state) => (counts[state] === 0 ? [] : [`${label} ${counts[state]}`])).join(", ");
}

/** The whole line in a few sentences, for those who cannot see it. */
export function describeLine(course: DayCourse, seconds: number): string {
  const clock = formatClock(course.record.startClockSeconds + seconds, true);
  const stages = stageWordsAt(course, seconds)
    .map(
      ({ name, waiting, positions }) => `${name}: ${waiting}${positions === "" ? " in it" : ` waiting, ${positions}`}`,
    )
    .join("; ");
  const flagged = dangersAt(course, seconds).length;
  const danger =
    flagged === 0 ? "" : ` ${flagged} ${flagged === 1 ? "head is" : "heads are"} near or over a time limit.`;
  const out = stepAt(course.counts, 3, seconds);
  const carcasses = `${formatDecimals(out, 0)} ${out === 1 ? "carcass" : "carcasses"} out`;
  return `The line at ${clock}. ${carcasses}. ${stages}.${danger}`;
}
