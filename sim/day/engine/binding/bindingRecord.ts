import type { BindingRecord, BottleneckRecord, BoundSeconds } from "../dayRecord.ts";
import type { DayState } from "../state/dayState.ts";
import { momentaryBottleneck } from "./momentaryBottleneck.ts";
import { CAUSES, type PathCell } from "./pathCells.ts";

/** What the day's time was owed to; null unless it was asked for and the day ended by itself. */
export function bindingRecord(day: DayState, status: string): BindingRecord | null {
  const { path } = day;
  if (path === null || status !== "finished") return null;
  const work = path.endOfWork();
  return {
    day: boundSeconds(path.cells.cells, path.end()),
    work: work === null ? null : boundSeconds(path.cells.cells, work),
    bottleneck: bottleneckRecord(day, work === null ? day.now : day.workFinish),
  };
}

function boundSeconds(cells: readonly PathCell[], seconds: Float64Array): BoundSeconds[] {
  const all = cells.map((cell, row) => ({ ...cell, seconds: seconds[row]! }));
  const rank = ({ cause }: PathCell) => CAUSES.indexOf(cause);
  // What was moved from one cell to another can leave a rounding error behind.
  return all.filter((cell) => Math.abs(cell.seconds) > LEAST).sort((a, b) => rank(a) - rank(b));
}

/** Seconds; far below what anybody measures, far above the rounding of a day's sums. */
const LEAST = 1e-6;

/** After the last work on a head (`until`) nothing is a bottleneck any more; a run whose supply never ends counts to its end. */
function bottleneckRecord(day: DayState, until: number): BottleneckRecord {
  const { stages, positions } = day.line;
  const sole = new Float64Array(stages.count);
  const shifting = new Float64Array(stages.count);
  const spans: Span[] | null = day.recorders === null ? null : [];
  const whole = until - day.watchedFrom;
  const involved: number[] = [];
  momentaryBottleneck(day.active!.close(day.now), (from, end, who) => {
    const to = Math.min(end, until);
    if (to <= from) return;
    involved.length = 0;
    for (const position of who) {
      if (!involved.includes(positions.stage[position]!)) involved.push(positions.stage[position]!);
    }
    const shares = involved.length === 1 ? sole : shifting;
    for (const stage of involved) shares[stage]! += (to - from) / whole;
    if (spans !== null)
      addSpan(
        spans,
        from,
        to,
        involved.map((stage) => stages.names[stage]!),
      );
  });
  const shares = stages.names.map((stage, row) => ({ stage, sole: sole[row]!, shifting: shifting[row]! }));
  return { shares, spans };
}

type Span = NonNullable<BottleneckRecord["spans"]>[number];

/** What follows at once with the same stages is one span. */
function addSpan(spans: Span[], fromSeconds: number, toSeconds: number, stages: string[]): void {
  const last = spans.at(-1);
  const goesOn = last && last.toSeconds === fromSeconds && last.stages.join("\n") === stages.join("\n");
  if (goesOn) last.toSeconds = toSeconds;
  else spans.push({ fromSeconds, toSeconds, stages });
}
