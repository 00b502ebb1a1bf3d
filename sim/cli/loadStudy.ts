import { formatFault } from "../asked/plan/index.ts";
import { readStudy, type Study } from "../asked/study/index.ts";
import { responsesOf } from "../day/observations/index.ts";
import { BadInput, PLAN_GUIDE, STUDY_GUIDE } from "./badInput.ts";
import type { InputFile } from "./inputFile.ts";
import { refuseOtherKind } from "./otherKind.ts";

export interface LoadedStudy {
  study: Study;
  /** The base plan as it was read, before any checking. */
  basePlan: unknown;
}

/** The study in a file; `BadInput` with every fault when it, its plan or one of its variants is not sound. */
export function loadStudy(file: InputFile): LoadedStudy {
  refuseOtherKind(file, "study");
  const { study, basePlan, faults } = readStudy(file.json, file.files, { knownResponses: responsesOf });
  if (study === null) {
    const lines = faults.map((fault) => `${file.path}: ${formatFault(fault)}`);
    throw new BadInput(lines, [STUDY_GUIDE, PLAN_GUIDE]);
  }
  return { study, basePlan };
}
