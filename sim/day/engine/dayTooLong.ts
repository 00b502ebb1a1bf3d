import {
  type CompiledLine,
  SLOT_BREAKDOWN,
  SLOT_CHAIN,
  SLOT_DWELL,
  SLOT_POSITION,
  SLOT_TRAVEL,
} from "../line/index.ts";

/** A day took more events than it was allowed. */
export class DayTooLong extends Error {
  override name = "DayTooLong";

  /** `where` is the stage with most of the latest events, null when they are of no stage (arrivals, calendar). */
  constructor(events: number, hours: number, where: string | null) {
    const busiest = where === null ? "arriving" : `at '${where}'`;
    super(
      `the day has more than ${events} events, the latest of them ${hours.toFixed(2)} h after its start, most of those ${busiest}; ` +
        `is a time there too short, or are there too many heads? If they are meant, raise the ceiling of events`,
    );
  }
}

/** More stands in the plant at once than any plant holds. */
export class PlantTooFull extends Error {
  override name = "PlantTooFull";

  /** `where` is the stage with most of it. */
  constructor(items: number, hours: number, where: string) {
    super(
      `more than ${items} heads and crates are in the plant at once ${hours.toFixed(2)} h after the day's start, most of them at '${where}'; ` +
        `is the line too slow for what comes, or a time in it too long?`,
    );
  }
}

/** The stage that most of these slots belong to; null when most are of none. */
export function busiestStage(line: CompiledLine, slots: readonly number[]): string | null {
  const counts = new Map<string | null, number>();
  for (const slot of slots) {
    const stage = stageOfSlot(line, slot);
    counts.set(stage, (counts.get(stage) ?? 0) + 1);
  }
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a);
  return most?.[0] ?? null;
}

function stageOfSlot({ slots, stages, positions, breakdowns, chains }: CompiledLine, slot: number): string | null {
  const owner = slots.owner[slot]!;
  switch (slots.kind[slot]) {
    case SLOT_POSITION:
    case SLOT_DWELL:
      return stages.names[positions.stage[owner]!]!;
    case SLOT_TRAVEL:
      return stages.names[owner]!;
    case SLOT_BREAKDOWN:
      return stages.names[breakdowns.stage[owner]!] ?? breakdowns.names[owner]!;
    case SLOT_CHAIN:
      return stages.names[chains.stage[owner]!]!;
    default:
      return null;
  }
}
