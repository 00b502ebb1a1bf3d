import { MOMENTS } from "../../asked/plan/index.ts";
import type { CompiledLine } from "../line/index.ts";
import type { LimitDanger } from "./dayCourse.ts";
import type { HeadWays } from "./passLog.ts";

/** From this share of a maximum on a head is in danger of passing it. */
const NEAR = 0.8;
/** How long a head that came before its least time stays flagged. */
const TOO_SOON_SECONDS = 60;

/**
 * Every time a head came near a limit's maximum, passed it, or fell short of its minimum; ascending by `fromSeconds`.
 * `end`: when the day ended, for heads that never reached the far point.
 */
export function findDangers(line: CompiledLine, ways: HeadWays, end: number): LimitDanger[] {
  const found: LimitDanger[] = [];
  const outside = line.stages.count * MOMENTS.length;
  for (let head = 0; head < ways.count; head++) {
    const watch = new HeadWatch(line, head, found);
    watch.pass(outside, ways.arrived[head]!);
    for (let row = ways.from[head]!; row < ways.from[head + 1]!; row++) watch.pass(ways.points[row]!, ways.times[row]!);
    // As in the engine: only carcasses pass the end of the line.
    if (ways.destination[head] === 0) watch.pass(outside + 1, ways.times[ways.from[head + 1]! - 1]!);
    if (ways.destination[head] === -1) watch.end(end);
  }
  return found.sort((a, b) => a.fromSeconds - b.fromSeconds || a.head - b.head || a.limit - b.limit);
}

/** One head on its way past the ends of the limits; as in the engine, a near end holds until it is passed again. */
class HeadWatch {
  private readonly line: CompiledLine;
  private readonly head: number;
  private readonly found: LimitDanger[];
  private readonly since = new Map<number, number>();
  private readonly judged = new Set<number>();

  constructor(line: CompiledLine, head: number, found: LimitDanger[]) {
    this.line = line;
    this.head = head;
    this.found = found;
  }

  pass(point: number, seconds: number): void {
    const { limitFrom, limit: rows } = this.line.points;
    for (let row = limitFrom[point]!; row < limitFrom[point + 1]!; row++) {
      const limit = rows[row]! >> 1;
      if ((rows[row]! & 1) === 0) {
        this.since.set(limit, seconds);
        this.judged.delete(limit);
      } else this.judge(limit, seconds, this.line.limits.minSeconds[limit]!);
    }
  }

  /** The day is over before the head reached some far points; a minimum cannot be judged then. */
  end(seconds: number): void {
    for (const limit of this.since.keys()) if (!this.judged.has(limit)) this.judge(limit, seconds, -Infinity);
  }

  private judge(limit: number, until: number, min: number): void {
    const from = this.since.get(limit);
    if (from === undefined) return;
    this.judged.add(limit);
    const max = this.line.limits.maxSeconds[limit]!;
    const { head } = this;
    if (until - from > NEAR * max) {
      const beyondSeconds = until - from > max ? from + max : Infinity;
      this.found.push({ limit, head, fromSeconds: from + NEAR * max, beyondSeconds, untilSeconds: until });
    }
    if (until - from < min) {
      this.found.push({
        limit,
        head,
        fromSeconds: until,
        beyondSeconds: until,
        untilSeconds: until + TOO_SOON_SECONDS,
      });
    }
  }
}
