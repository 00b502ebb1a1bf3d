import type { Pace } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FilePace = (PlanFile["line"][number] & { kind: "chain" })["pace"];

type FileAllowance = NonNullable<(PlanFile["line"][number] & { kind: "station" })["allowance"]>;

/** The day's clock: its start, seconds after midnight, and its shifts' starts, seconds after that. */
export interface Hours {
  start: number;
  shifts: readonly number[];
}

export function toPace(file: FilePace, start: number): Pace[] {
  return file.map(({ from, speed, atMost }) => ({ fromSeconds: from - start, speed, mostPerSecond: atMost }));
}

/**
 * Rest allowances as speeds by the hour, on top of those that are there. A share a of the basic time makes it 1 + a times as
 * long, one of the shift 1 / (1 - a) times (ILO, Introduction to Work Study, from memory: which of the two has to be said).
 */
export function withAllowance(pace: Pace[], allowance: FileAllowance | null, shifts: readonly number[]): Pace[] {
  if (allowance === null) return pace;
  const { steps, of } = allowance;
  const slower = shifts.flatMap((shift) => [
    { fromSeconds: shift, speed: 1 },
    ...steps.map(({ after, share }) => ({
      fromSeconds: shift + after,
      speed: of === "shift" ? 1 - share : 1 / (1 + share),
    })),
  ]);
  const hours = [...new Set([...pace, ...slower].map(({ fromSeconds }) => fromSeconds))].sort((a, b) => a - b);
  return hours.map((fromSeconds) => {
    const written = pace.findLast((each) => each.fromSeconds <= fromSeconds);
    const rested = slower.findLast((each) => each.fromSeconds <= fromSeconds);
    return {
      fromSeconds,
      speed: (written?.speed ?? 1) * (rested?.speed ?? 1),
      mostPerSecond: written?.mostPerSecond ?? null,
    };
  });
}
