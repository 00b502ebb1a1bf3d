import type { TraceKind } from "../days/run/index.ts";
import type { Ceilings } from "./ceilings.ts";

/** What can be said of a study on the command line. */
export interface StudyCommandOptions {
  seed?: string;
  replications?: number;
  /** "binned" when left out, "none" with more than `MOST_TRACED` variants. */
  traces?: TraceKind;
  verify?: boolean;
  out?: string;
  overwrite?: boolean;
  resume?: boolean;
  threads?: number;
  queue?: string;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}
