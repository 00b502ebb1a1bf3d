import type { FigureSource } from "./assumed.ts";
import type { DemandFile } from "./schema/demandFile.ts";
import type { StepFile } from "./schema/stepFile.ts";

/** A checked demand: SI numbers, the steps of the line in order, and the texts as they were written or assumed. */
export interface Demand extends Omit<DemandFile, "steps"> {
  steps: Step[];
  /** The demand as its file writes it, assumptions filled in: what goes into the plan word for word. */
  written: Record<string, unknown>;
  /** Every figure the design rests on. */
  figures: Figure[];
}

export interface Step {
  name: string;
  section: string;
  offLine: boolean;
  work: NonNullable<StepFile["work"]>;
  /** SI numbers. */
  figures: StepFile;
  /** As written. */
  written: Record<string, unknown>;
}

/** One figure with its source. */
export interface Figure {
  /** In the demand file. */
  path: string;
  what: string;
  value: string;
  source: FigureSource;
  note: string;
}
