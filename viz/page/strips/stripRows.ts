import type { DayCourse } from "../../../sim/day/course/index.ts";
import { does } from "../../../sim/text/kinds/index.ts";
import { formatDecimals } from "../../../sim/text/units/index.ts";
import { isolated } from "../../frame/index.ts";
import { spansOf } from "../scene/bottleneckAt.ts";
import { binMeans, binShares } from "./binSteps.ts";

/** One row of the strips: how many waited (or were there) through the day, and what the positions did. */
export interface StripRow {
  key: string;
  name: string;
  /** What the curve counts. */
  what: string;
  /** Mean in each bin. */
  heads: Float64Array;
  most: number;
  /** Places there are; null where there is no end of them or none. */
  places: number | null;
  /** shares[state][bin]; null where there are no positions to speak of. */
  shares: Float64Array[] | null;
  /** When it was the bottleneck: by itself, or while the bottleneck shifted to or from it. */
  bottleneck: { from: number; to: number; sole: boolean }[];
}

export interface Binning {
  end: number;
  bins: number;
}

const STATES = 6;

/** A row for every stage in line order, crate steps first. */
export function stageRows(course: DayCourse, { end, bins }: Binning): StripRow[] {
  return course.sketch.stages.map((stage, index) => {
    const isStretch = !does(stage, "work");
    const { positionFrom, positions } = stage;
    const places = Number.isFinite(stage.places) && stage.places > 0 ? stage.places : null;
    return {
      key: `stage ${stage.name}`,
      name: isolated(stage.name),
      what: `${does(stage, "handle crates") ? "crates" : "heads"} ${isStretch ? "inside" : "waiting"}${places === null ? "" : `, ${formatDecimals(places, 0)} places`}`,
      heads: binMeans(course.waiting, index, end, bins),
      most: course.record.stages[index]!.queue.max,
      places,
      shares: isStretch ? null : binShares(course.states, positionFrom, positions, { end, bins, states: STATES }),
      bottleneck: bottleneckOf(course, index),
    };
  });
}

/** A row for every section: heads in it, work in process. */
export function sectionRows(course: DayCourse, { end, bins }: Binning): StripRow[] {
  return course.record.sections.map(({ name, wip }, index) => ({
    key: `section ${name}`,
    name: isolated(name),
    what: "heads in the section",
    heads: binMeans(course.sections, index, end, bins),
    most: wip.max,
    places: null,
    shares: null,
    bottleneck: [],
  }));
}

function bottleneckOf(course: DayCourse, stage: number): StripRow["bottleneck"] {
  const { from, to, stages } = spansOf(course);
  return stages.flatMap((each, row) =>
    each.includes(stage) ? [{ from: from[row]!, to: to[row]!, sole: each.length === 1 }] : [],
  );
}
