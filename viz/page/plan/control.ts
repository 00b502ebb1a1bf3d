/** Something that can be moved: one number of the plan, and how the plan's JSON follows it. */
export interface Control {
  /** Stable name: the path it changes, and what of it. */
  id: string;
  /** Name of the group: a station, "Lorries and crates" ... */
  group: string;
  label: string;
  /** What is set, as a study file would name it. */
  path: string;
  /** Value in the plan as it is. */
  base: number;
  min: number;
  max: number;
  step: number;
  /** With its unit. */
  words: (value: number) => string;
  /** The JSON at `path` (as it is by now) with the new value in it. */
  change: (json: unknown, value: number) => unknown;
}

/** Which controls were moved, and to what. */
export type Moves = Readonly<Record<string, number>>;
