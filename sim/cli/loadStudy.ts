import { responsesOf } from "../observations/index.ts";
import { formatFault, inputKind } from "../plan/index.ts";
import { readStudy, type Study } from "../study/index.ts";
import { BadInput, PLAN_GUIDE, STUDY_GUIDE } from "./badInput.ts";
import type { InputFile } from "./inputFile.ts";

export interface LoadedStudy {
  study: Study;
  /** The base plan as it was read, before any checking. */
  basePlan: unknown;
}

/** The study in a file; `BadInput` with every fault when it, its plan or one of its variants is not sound. */
export function loadStudy(file: InputFile): LoadedStudy {
  if (inputKind(file.json) === "plan") {
    throw new BadInput([`${file.path}: this is a plan; run it with "gambrel day", or name a study.`]);
  }
  const { study, basePlan, faults } = readStudy(file.json, file.files, { knownResponses: responsesOf });
  if (study === null) {
    const lines = faults.map((fault) => `${file.path}: ${formatFault(fault)}`);
    throw new BadInput(lines, [STUDY_GUIDE, PLAN_GUIDE]);
  }
  return { study, basePlan };
}
