/** A bound that one part of the plant sets by itself on the heads hung per second. */
export interface Ceiling {
  /** Name of the station, dwell, chain, gate, crate step, or crews. */
  what: string;
  kind: "positions" | "places" | "people" | "gate" | "crates" | "chain";
  headsPerSecond: number;
}
