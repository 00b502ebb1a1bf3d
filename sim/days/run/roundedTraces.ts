import type { StateTrace, StepTrace, Traces } from "../../day/engine/index.ts";

/**
 * Traces in bins with means and position-seconds to a millionth: what a result keeps of them, and what sums over a day
 * cannot tell from the whole. Lowest and highest values stay as they are; who asked for exact traces gets all of them as
 * they were recorded.
 */
export function roundedTraces(traces: Traces): Traces {
  const { queues, wip, out, arrived, hung, entered, crews, states } = traces;
  if (out.kind === "exact") return traces;
  return {
    queues: queues.map(rounded),
    wip: wip.map(rounded),
    out: rounded(out),
    arrived: rounded(arrived),
    hung: rounded(hung),
    entered: entered.map(rounded),
    crews: crews.map(({ name, busy, present }) => ({ name, busy: rounded(busy), present: rounded(present) })),
    states: states.map((trace): StateTrace => ({ ...trace, seconds: trace.seconds.map(millionth) })),
  };
}

function rounded(trace: StepTrace): StepTrace {
  return trace.kind === "exact" ? trace : { ...trace, mean: trace.mean.map(millionth) };
}

function millionth(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
