import { z } from "zod";
import { CEILINGS } from "./ceilings.ts";
import { reference } from "./text.ts";

/** Crews that may do a piece of work: one name, or several in order of preference. */
export function crewNames(what: string) {
  return z
    .union([reference(), z.array(reference()).max(CEILINGS.crews), z.null()])
    .default(null)
    .transform((written) => (written === null ? [] : typeof written === "string" ? [written] : written))
    .describe(
      `${what} One name, or a list with the preferred crew first; nobody else may do it. Default: null, nobody.`,
    );
}

/** The one crew that gives a person for a repair or an emptying. */
export function crewName(what: string) {
  return reference().nullable().default(null).describe(what);
}
