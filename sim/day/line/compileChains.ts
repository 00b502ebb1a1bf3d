import { type ChainColumns, NO_LIMIT } from "./compiledLine.ts";
import type { Step } from "./steps.ts";

/** Chains; their slots are filled in by `compileSlots`. */
export function compileChains(all: Step[]): ChainColumns {
  const names = all.map((step) => step.name);
  const rows = all.flatMap((step, stage) => (step.kind === "chain" ? [{ stage, chain: step.of }] : []));
  const onChain = (step: Step) => (step.kind === "chain station" ? step.of : null);
  return {
    count: rows.length,
    stage: Int32Array.from(rows, (row) => row.stage),
    stationCount: Int32Array.from(rows, (row) => row.chain.stations.length),
    places: Int32Array.from(rows, (row) => row.chain.places),
    secondsPerShackle: Float64Array.from(rows, (row) => row.chain.secondsPerShackle),
    shackles: Int32Array.from(rows, (row) => row.chain.shackles?.count ?? NO_LIMIT),
    backSeconds: Float64Array.from(rows, (row) => row.chain.shackles?.backSeconds ?? 0),
    unfinishedTo: Int32Array.from(rows, (row) => names.lastIndexOf(row.chain.unfinishedTo ?? "")),
    slot: new Int32Array(rows.length).fill(-1),
    windowFrom: Int32Array.from(all, (step) => onChain(step)?.at ?? -1),
    windowTo: Int32Array.from(all, (step) => {
      const station = onChain(step);
      return station === null ? -1 : station.at + station.window;
    }),
    stops: Int8Array.from(all, (step) => (onChain(step)?.ifUnfinished === "stop" ? 1 : 0)),
  };
}
