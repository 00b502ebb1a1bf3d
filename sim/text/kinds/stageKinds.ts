/** The kinds of stages that a plan's line is made of, by the names that plan files use. A new kind begins here. */
export const STAGE_KINDS = ["station", "dwell", "chain"] as const;
export type StageKind = (typeof STAGE_KINDS)[number];

/** The kinds of places that a day is made of: stages, the steps that handle crates, and the stations on chains. */
export type StepKind = StageKind | "crates" | "chain station";

/**
 * What places of a kind do. Whoever needs to know no more than that asks `does`; whoever treats each kind in its own way
 * gives `byKind` a row for each. So the compiler names every place that has to think about a new kind, and nobody compares
 * the names themselves (a structure test holds that).
 *
 * work: has positions with a cycle of their own, perhaps crews and breakdowns. buffer heads: has places before those. hold heads: keeps them side by side for a
 * time. carry stations: moves heads past the stations on it. stand on a chain: is such a station. handle crates: sees no
 * single heads. send heads on: has a way to a next stage, perhaps removals and diversions.
 */
const DEEDS = {
  crates: ["work", "handle crates"],
  station: ["work", "buffer heads", "send heads on"],
  dwell: ["hold heads", "send heads on"],
  chain: ["carry stations", "send heads on"],
  "chain station": ["work", "stand on a chain"],
} as const satisfies Record<StepKind, readonly string[]>;

export type Deed = (typeof DEEDS)[StepKind][number];

/** The kinds whose places do it. */
export type KindThat<D extends Deed> = {
  [K in StepKind]: D extends (typeof DEEDS)[K][number] ? K : never;
}[StepKind];

/** Whether places of its kind do it. */
export function does<T extends { kind: StepKind }, D extends Deed>(
  place: T,
  deed: D,
): place is T & { kind: KindThat<D> } {
  const deeds: readonly Deed[] = DEEDS[place.kind];
  return deeds.includes(deed);
}

/** What the row for its kind makes of the thing. There is a row for every kind: a new one is named by the compiler. */
export function byKind<T extends { kind: string }, R>(
  thing: T,
  rows: { [K in T["kind"]]: (thing: T & { kind: K }) => R },
): R {
  return (rows[thing.kind as T["kind"]] as (thing: T) => R)(thing);
}

/** The kind that an unread file gives a stage; null for none that there is. */
export function stageKind(written: unknown): StageKind | null {
  return STAGE_KINDS.find((kind) => kind === written) ?? null;
}
