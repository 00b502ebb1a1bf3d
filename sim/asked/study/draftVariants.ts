import { toChange } from "./change.ts";
import { changeAt } from "./changeAt.ts";
import { dimension } from "./dimension.ts";
import type { Dimension, Draft, DraftVariant } from "./draft.ts";
import { draftLatinHypercube } from "./draftLatinHypercube.ts";
import { draftScreening } from "./draftScreening.ts";
import type { FactorFile } from "./schema/factorFile.ts";
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

/** Every level of every factor by itself, factor by factor; of a range, its two ends. */
function draftOneAtATime({ factors }: { factors: readonly FactorFile[] }): Draft {
  const dimensions = factors.map((factor) => dimension(factor, (range) => [range.at(0), range.at(1)]));
  const variants = dimensions.flatMap((factor, index) =>
    factor.changes.map((change, level) => ({
      name: `${factor.name} ${factor.levels[level]}`,
      levels: dimensions.map((_, other) => (other === index ? level : -1)),
      ...change,
    })),
  );
  return { dimensions, variants, design: { kind: "one at a time" }, baseHasLevels: true };
}

/** Every combination of the levels; the last factor changes fastest. */
function draftFactorial({ factors }: { factors: readonly FactorFile[] }): Draft {
  const dimensions = factors.map((factor) => dimension(factor, () => []));
  const variants = combinations(dimensions).map((levels) => combined(dimensions, levels));
  return { dimensions, variants, design: { kind: "factorial" }, baseHasLevels: true };
}

function combinations(dimensions: readonly Dimension[]): number[][] {
  return dimensions.reduce<number[][]>(
    (sofar, { levels }) => sofar.flatMap((before) => levels.map((_, level) => [...before, level])),
    [[]],
  );
}

function combined(dimensions: readonly Dimension[], levels: number[]): DraftVariant {
  const name = dimensions.map((factor, index) => `${factor.name} ${factor.levels[levels[index]!]}`).join(", ");
  return { name, levels, ...changeAt(dimensions, levels) };
}
