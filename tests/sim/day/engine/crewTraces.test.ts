import { describe, expect, it } from "vitest";
import type { StepTrace } from "../../../../sim/day/engine/index.ts";
import { constant, crew, dwell, manual, pause, planOf, stream } from "../../../support/plans.ts";
import { runChecked } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

const plan = withDay(
  planOf(
    stream(constant(5), 7),
    [manual("a", 4, "own", { crews: ["own", "relief"] }), dwell("chilling", 60, Infinity)],
    { crews: [crew("own", 1), crew("relief", 1)] },
  ),
  { breaks: [pause("tea", 10, 20, { crews: ["own"] })] },
);

const steps = (trace: StepTrace) =>
  trace.kind === "exact" ? trace.times.map((time, i) => [time, trace.values[i]]) : [];

/** Person-seconds under a trace. */
function area(trace: StepTrace): number {
  if (trace.kind === "binned") return 0;
  return trace.values.reduce(
    (sum, value, i) => sum + value * ((trace.times[i + 1] ?? trace.endSeconds) - trace.times[i]!),
    0,
  );
}

describe("traces of crews", () => {
  // Own crew: 5-9, away 10-30, then 30-34 and 35-39; relief 10-14, 15-19, 20-24, 25-29. Work ends at 39, chilling at 99.
  const { traces, crews } = runChecked(plan, { traces: "exact" });
  const [own, relief] = traces!.crews;

  it("tell who has work in hand and who is on duty, up to the end of work", () => {
    expect(own!.name).toBe("own");
    expect(steps(own!.busy)).toEqual([
      [0, 0],
      [5, 1],
      [9, 0],
      [30, 1],
      [34, 0],
      [35, 1],
      [39, 0],
    ]);
    expect(steps(own!.present)).toEqual([
      [0, 1],
      [10, 0],
      [30, 1],
      [39, 0],
    ]);
    expect(steps(relief!.present)).toEqual([
      [0, 1],
      [39, 0],
    ]);
  });

  it("have under them the person-seconds of the crew's record", () => {
    traces!.crews.forEach(({ busy, present }, index) => {
      expect(area(busy)).toBe(crews[index]!.busySeconds);
      expect(area(present)).toBe(crews[index]!.presentSeconds);
    });
  });
});
