import { levelWords } from "./levelWords.ts";
import type { Factor } from "./study.ts";
import type { StudyFile } from "./studyFile.ts";

/** A variant before its plan is read. */
export interface DraftVariant {
  name: string;
  levels: number[];
  set: Record<string, unknown>;
}

export interface Draft {
  factors: Factor[];
  /** Level values in the order of `factors[i].levels`. */
  values: unknown[][];
  /** Without the base. */
  variants: DraftVariant[];
}

/** The variants a design stands for, in the order of the file; in a factorial the last factor changes fastest. */
export function draftVariants(design: StudyFile["design"]): Draft {
  if (design?.list !== undefined) {
    return { factors: [], values: [], variants: design.list.map(({ name, set }) => ({ name, levels: [], set })) };
  }
  if (design?.factorial === undefined) return { factors: [], values: [], variants: [] };
  const factors = design.factorial.factors.map(({ name, path, levels, labels }) => ({
    name,
    path,
    levels: labels ?? levels.map((level) => levelWords(level, path)),
  }));
  const values = design.factorial.factors.map(({ levels }) => levels);
  return { factors, values, variants: combinations(values).map((levels) => combined(factors, values, levels)) };
}

function combinations(values: readonly unknown[][]): number[][] {
  return values.reduce<number[][]>(
    (sofar, levels) => sofar.flatMap((before) => levels.map((_, level) => [...before, level])),
    [[]],
  );
}

function combined(factors: readonly Factor[], values: readonly unknown[][], levels: number[]): DraftVariant {
  const name = factors.map((factor, index) => `${factor.name} ${factor.levels[levels[index]!]}`).join(", ");
  const set = Object.fromEntries(factors.map((factor, index) => [factor.path, values[index]![levels[index]!]]));
  return { name, levels, set };
}
