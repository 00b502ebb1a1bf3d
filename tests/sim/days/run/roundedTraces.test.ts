import { expect, it } from "vitest";
import { roundedTraces } from "../../../../sim/days/run/roundedTraces.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

it("rounds means and position-seconds to a millionth and leaves troughs, peaks and exact traces alone", () => {
  const traces = structuredClone(handMadeResults().variants[0]!.day.traces!);
  const [queue] = traces.queues;
  if (queue?.kind !== "binned") throw new Error("the hand-made queue is in bins");
  queue.mean = [1 / 3, 2.00000049];
  queue.high = [2.12345, 5];
  traces.states[0]!.seconds[0] = 29.99999951;
  traces.out = { ...queue, name: "out" };
  const rounded = roundedTraces(traces);
  expect(rounded.queues[0]).toEqual({ ...queue, mean: [0.333333, 2] });
  expect(rounded.states[0]!.seconds[0]).toBe(30);
  expect(roundedTraces(rounded)).toEqual(rounded);
  const exact = { kind: "exact" as const, name: "out", endSeconds: 60, times: [0, 12.3456789], values: [0, 1] };
  expect(roundedTraces({ ...traces, out: exact })).toEqual({ ...traces, out: exact });
});
