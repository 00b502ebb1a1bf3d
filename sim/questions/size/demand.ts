import type { Way } from "../../asked/plan/index.ts";
import type { AlternativeName } from "./alternatives.ts";
import type { FigureSource } from "./assumed.ts";
import type { DemandFile } from "./schema/demandFile.ts";
import type { CrateStepFile } from "./schema/handlingFile.ts";
import type { StepFile } from "./schema/stepFile.ts";
import type { Zone } from "./zones.ts";

/** A checked demand: SI numbers, the steps of the line in order, and the texts as they were written or assumed. */
export interface Demand extends Omit<DemandFile, "steps" | "alternative"> {
  /** The kind of plant whose plan is asked for. */
  alternative: AlternativeName;
  steps: DemandStep[];
  /** The steps on crates in order, for every way of live handling. */
  handling: Record<Way, HandlingStep[]>;
  /** The demand as its file writes it, assumptions filled in: what goes into the plan word for word. */
  written: Record<string, unknown>;
  /** Every figure the design rests on. */
  figures: Figure[];
  /** Those that its money and people rest on, beside them. */
  businessFigures: Figure[];
}

export interface DemandStep {
  name: string;
  section: string;
  offLine: boolean;
  work: NonNullable<StepFile["work"]>;
  zone: Zone;
  /** SI numbers. */
  figures: StepFile;
  /** As written. */
  written: Record<string, unknown>;
}

/** A step on crates. */
export interface HandlingStep {
  name: string;
  /** SI numbers; the time is always there. */
  figures: CrateStepFile & { time: NonNullable<CrateStepFile["time"]>; cratesAtOnce: number; people: number };
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
