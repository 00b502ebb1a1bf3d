import type { ColumnFit, PlanFragment } from "../questions/fit/index.ts";

/** What `--json` prints and results.json holds. */
export interface FitResults {
  file: string;
  seed: string;
  samples: number;
  columns: ColumnFit[];
  passedOver: string[];
  fragment: PlanFragment;
}
