import type { Calibration } from "../questions/calibrate/index.ts";

/** What `--json` prints and results.json holds. */
export interface CalibrationResults extends Calibration {
  plan: string;
  observedFile: string;
  seed: string;
  passedOver: string[];
}
