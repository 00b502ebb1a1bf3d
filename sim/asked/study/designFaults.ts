import type { Fault } from "../plan/index.ts";
import { type FactorUse, factorFaults, fault, repeated, twice } from "./factorFaults.ts";
import { MAX_VARIANTS } from "./schema/designFile.ts";
import type { FactorFile } from "./schema/factorFile.ts";
import type { StudyFile } from "./schema/studyFile.ts";

type DesignFile = NonNullable<StudyFile["design"]>;

/** What the parts of a study file's design, of sound shape, say of each other. */
export function designFaults({ design, baseName }: StudyFile): Fault[] {
  if (design === undefined) return [];
  return [
    ...listFaults(design.list ?? [], baseName),
    ...factorialFaults(design.factorial),
    ...(design.oneAtATime === undefined
      ? []
      : of("oneAtATime", design.oneAtATime.factors, { ranges: true, levels: null })),
    ...(design.latinHypercube === undefined
      ? []
      : of("latinHypercube", design.latinHypercube.factors, { ranges: true, levels: null })),
    ...screeningFaults(design.screening),
  ];
}

function of(design: keyof DesignFile, factors: readonly FactorFile[], use: FactorUse): Fault[] {
  return factorFaults(factors, ["design", design, "factors"], use);
}

function listFaults(list: NonNullable<DesignFile["list"]>, baseName: string): Fault[] {
  const names = [baseName, ...list.map(({ name }) => name)];
  const among = "variants, the base included";
  return [
    ...repeated(names).map((index) => twice(["design", "list", index - 1, "name"], names[index]!, among)),
    ...list.flatMap(({ plan, set, insert = [], remove = [] }, index) =>
      plan === undefined && set === undefined && insert.length + remove.length === 0 ? [changesNothing(index)] : [],
    ),
  ];
}

function changesNothing(index: number): Fault {
  const remedy = 'write for example "set": { "line.skinning.buffer": 12 }';
  return fault(["design", "list", index], "it changes nothing", "plan, set, insert or remove", remedy);
}

function factorialFaults(factorial: DesignFile["factorial"]): Fault[] {
  if (factorial === undefined) return [];
  const count = factorial.factors.reduce((product, factor) => product * levelCount(factor), 1);
  const tooMany =
    count <= MAX_VARIANTS ? [] : [tooManyVariants("factorial", `${count} combinations`, "remove levels or factors")];
  return [...tooMany, ...of("factorial", factorial.factors, { ranges: false, levels: null })];
}

function levelCount({ levels, sets, options }: FactorFile): number {
  return (levels ?? sets?.[0]?.levels ?? options)?.length ?? 1;
}

function screeningFaults(screening: DesignFile["screening"]): Fault[] {
  if (screening === undefined) return [];
  const { factors, levels, trajectories } = screening;
  const count = trajectories * (factors.length + 1);
  return [
    ...(levels % 2 === 0 ? [] : [fault(["design", "screening", "levels"], `${levels} levels`, "an even number", "")]),
    ...(count <= MAX_VARIANTS
      ? []
      : [tooManyVariants("screening", `up to ${count} variants`, "remove trajectories or factors")]),
    ...of("screening", factors, { ranges: true, levels }),
  ];
}

function tooManyVariants(design: keyof DesignFile, found: string, remedy: string): Fault {
  return fault(["design", design], found, `${MAX_VARIANTS} or less`, remedy);
}
