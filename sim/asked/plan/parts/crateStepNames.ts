import type { Way } from "../plan.ts";

/** Keys of the crate steps in a plan file, in the order crates pass them. */
export const CRATE_STEPS = ["unloading", "feeding", "washing", "restacking", "palletsOut"] as const;
export type CrateStepKey = (typeof CRATE_STEPS)[number];

/** What each crate step is called in results. Only the automatic way takes pallets out. */
export const CRATE_STEP_NAMES: Record<Way, Record<CrateStepKey, string>> = {
  "hand-slid": {
    unloading: "unloading",
    feeding: "crate sliding",
    washing: "crate hosing",
    restacking: "restacking",
    palletsOut: "pallets out",
  },
  lift: {
    unloading: "unloading",
    feeding: "crate lift",
    washing: "crate washer",
    restacking: "restacking",
    palletsOut: "pallets out",
  },
  automatic: {
    unloading: "fork-lift in",
    feeding: "destacking",
    washing: "crate washer",
    restacking: "restacking",
    palletsOut: "pallets out",
  },
};

/** Name of the breakdown that stands for the changing of the washer's filter. */
export const FILTER_CHANGE = "filter change";
