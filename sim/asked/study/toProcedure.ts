import { untilOf } from "./responseFaults.ts";
import { DEFAULT_REPLICATIONS } from "./schema/procedureFile.ts";
import type { StudyFile } from "./schema/studyFile.ts";
import type { Procedure, Selection, StoppingRule } from "./study.ts";

/** How days are run and compared, and how many there are at most, from a file without faults. */
export function toProcedure(file: StudyFile): { replications: number; procedure: Procedure } {
  const { antithetic, errorRate } = file;
  const stopping = toStopping(file);
  const selection = toSelection(file);
  const controls = file.controls.map(({ response, mean }) => ({ response, mean: mean.value }));
  const written = typeof file.replications === "number" ? file.replications : DEFAULT_REPLICATIONS;
  const replications = stopping?.atMost ?? selection?.atMost ?? written;
  return { replications, procedure: { stopping, selection, antithetic, controls, errorRate } };
}

function toStopping(file: StudyFile): StoppingRule | null {
  const until = untilOf(file);
  if (until === undefined) return null;
  const { response, halfWidth, of, atLeast, atMost } = until;
  const kind = halfWidth.form === "percent" ? "relative" : "absolute";
  return { response, halfWidth: { kind, value: halfWidth.value }, of, atLeast, atMost };
}

function toSelection({ selection }: StudyFile): Selection | null {
  if (selection === undefined) return null;
  const { response, better, difference, probability, firstStage, atMost } = selection;
  return { response, better: better ?? null, difference: difference.value, probability, firstStage, atMost };
}
