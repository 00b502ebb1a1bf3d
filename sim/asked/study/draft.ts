import type { Change } from "./change.ts";
import type { Design, Factor } from "./study.ts";

/** A factor with what each of its levels changes in the base. */
export interface Dimension extends Factor {
  changes: Change[];
}

/** A variant before its plan is read; level -1 stands for the base's own value. */
export interface DraftVariant extends Change {
  name: string;
  /** Path of the plan file that the variant starts from instead of the base. */
  planPath?: string;
  levels: number[];
}

/** The variants a design stands for, without the base. The trajectories of a screening point into `variants`. */
export interface Draft {
  dimensions: Dimension[];
  variants: DraftVariant[];
  design: Design;
  /** Whether the levels are ones a base may have, so that it is worth asking which of them it has. */
  baseHasLevels: boolean;
}
