import type { DayRecord } from "../../day/engine/index.ts";

/**
 * Of a day that is not drawn, how it ended and how many heads it worked; what fills most of a record (stages, crews,
 * limits, loads, traces and the like) is taken out, and its lists are empty.
 */
export function endedDay(day: DayRecord): DayRecord {
  const none = { stages: [], crews: [], sections: [], limits: [], loads: [], chains: [], gates: [], vessels: [] };
  const { replication, status, stuckAt, left, startClockSeconds, watchedFromSeconds, finishSeconds } = day;
  const { workFinishSeconds, shiftEndSeconds, events, heads, stunned, masses, lairage } = day;
  return {
    ...{ replication, status, stuckAt, left, startClockSeconds, watchedFromSeconds, finishSeconds },
    ...{ workFinishSeconds, shiftEndSeconds, events, heads, ...none },
    timeInSystem: { ...day.timeInSystem, bins: [] },
    ...{ stunned, sharedBreakdowns: [], masses, lairage, traces: null, binding: null, perHead: null, killStops: null },
  };
}
