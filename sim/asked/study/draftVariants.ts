import { toChange } from "./change.ts";
import type { Draft } from "./draft.ts";
import { draftFactorial } from "./draftFactorial.ts";
import { draftLatinHypercube } from "./draftLatinHypercube.ts";
import { draftOneAtATime } from "./draftOneAtATime.ts";
import { draftScreening } from "./draftScreening.ts";
import type { StudyFile } from "./schema/studyFile.ts";

/** The variants a design of sound shape stands for, in the order of the file. */
export function draftVariants({ design, seed }: Pick<StudyFile, "design" | "seed">): Draft {
  if (design?.factorial !== undefined) return draftFactorial(design.factorial);
  if (design?.oneAtATime !== undefined) return draftOneAtATime(design.oneAtATime);
  if (design?.latinHypercube !== undefined) return draftLatinHypercube({ seed, ...present(design.latinHypercube) });
  if (design?.screening !== undefined) return draftScreening({ seed, ...present(design.screening) });
  const variants = (design?.list ?? []).map(({ name, plan, ...change }) => ({
    name,
    levels: [],
    ...toChange(change),
    ...(plan === undefined ? {} : { planPath: plan }),
  }));
  return { dimensions: [], variants, design: { kind: "list" }, baseHasLevels: true };
}

/** The same without an undefined seed, which would hide the study's. */
function present<Drawn extends { seed?: string | undefined }>({ seed, ...rest }: Drawn) {
  return seed === undefined ? rest : { ...rest, seed };
}
