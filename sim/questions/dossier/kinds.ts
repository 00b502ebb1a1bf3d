import { type Fault, isRecord, type Plan, type TextFiles } from "../../asked/plan/index.ts";
import { stableJson } from "../../days/results/index.ts";
import { type AlternativeName, type Demand, type PlantDesign, readDemand, sizePlant } from "../size/index.ts";

/** One kind of plant, for so many shifts, sized to the demand. */
export interface SizedKind {
  /** "compact plant", or with the number of its shifts where both are compared. */
  name: string;
  kind: AlternativeName;
  shifts: number;
  demand: Demand;
  design: PlantDesign;
  plan: Plan;
}

export type KindsReading = { kinds: SizedKind[]; faults: [] } | { kinds: null; faults: Fault[] };

/**
 * Every kind of plant that the demand wants compared, for its own shifts and, where it names a second shift, for both. A kind that cannot be
 * sized to the demand is left out, and so is one whose plan is that of an earlier one; faults where none can.
 */
export function sizeKinds(json: unknown, files: TextFiles): KindsReading {
  const own = readDemand(json, files);
  if (own.demand === null) return { kinds: null, faults: own.faults };
  const both = own.demand.compare.secondShift === undefined ? null : readDemand(withSecondShift(json), files);
  if (both?.demand === null) return { kinds: null, faults: both.faults };
  const demands = both === null ? [own.demand] : [own.demand, both.demand];
  const sized = demands.flatMap((demand) =>
    demand.compare.kinds.map((kind) => {
      const { design, plan, faults } = sizePlant(demand, files, kind);
      if (design === null) return { kind: null, faults };
      const shifts = demand.day.shifts.length;
      const name = both === null ? kind : `${kind}, ${SHIFTS[shifts] ?? `${shifts} shifts`}`;
      return { kind: { name, kind, shifts, demand, design, plan }, faults: [] };
    }),
  );
  const all = sized.flatMap(({ kind }) => (kind === null ? [] : [kind]));
  const kinds = all.filter((kind, at) => !all.slice(0, at).some((before) => isAlike(before, kind)));
  return kinds.length > 0 ? { kinds, faults: [] } : { kinds: null, faults: sized[0]!.faults };
}

/** Two kinds whose plants differ by nothing but what their notes call them. */
function isAlike(one: SizedKind, other: SizedKind): boolean {
  const bare = ({ design }: SizedKind) => stableJson({ ...design.plan, notes: "" });
  return one.shifts === other.shifts && bare(one) === bare(other);
}

const SHIFTS: Record<number, string> = { 1: "one shift", 2: "two shifts" };

/** The demand with the second shift after its own, and its breaks. */
function withSecondShift(json: unknown): unknown {
  const copy = structuredClone(json) as {
    day: { shifts: unknown[]; breaks?: unknown[] };
    compare: { secondShift: Record<string, unknown> };
  };
  const { breaks, ...shift } = copy.compare.secondShift;
  copy.day.shifts = [...copy.day.shifts, shift];
  copy.day.breaks = [...(copy.day.breaks ?? []), ...(Array.isArray(breaks) ? breaks : [])];
  return isRecord(copy) ? copy : json;
}
