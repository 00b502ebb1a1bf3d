import { type Fault, formatPath, parsePath } from "../plan/index.ts";
import { MOST_VARIANTS, type StudyFile } from "./studyFile.ts";

type FileFactor = NonNullable<NonNullable<StudyFile["design"]>["factorial"]>["factors"][number];

/** What the parts of a study file of sound shape say of each other. */
export function designFaults(file: StudyFile): Fault[] {
  const factors = file.design?.factorial?.factors ?? [];
  const list = file.design?.list ?? [];
  const names = [file.baseName, ...list.map(({ name }) => name)];
  return [
    ...repeated(names).map((index) =>
      twice(["design", "list", index - 1, "name"], names[index]!, "variants, the base included"),
    ),
    ...repeated(factors.map(({ name }) => name)).map((index) =>
      twice(["design", "factorial", "factors", index, "name"], factors[index]!.name, "factors"),
    ),
    ...repeated(file.responses).map((index) => twice(["responses", index], file.responses[index]!, "responses")),
    ...tooManyVariants(factors),
    ...factors.flatMap(levelFaults),
    ...overlaps(factors),
  ];
}

/** Indexes of the entries that stand further up already. */
function repeated(names: readonly string[]): number[] {
  return names.flatMap((name, index) => (names.indexOf(name) < index ? [index] : []));
}

function twice(at: readonly (string | number)[], name: string, among: string): Fault {
  return fault(at, `'${name}' stands twice among the ${among}`, "each name once", "rename or delete one of them");
}

function tooManyVariants(factors: readonly FileFactor[]): Fault[] {
  const count = factors.reduce((product, { levels }) => product * levels.length, 1);
  if (count <= MOST_VARIANTS) return [];
  return [
    fault(["design", "factorial"], `${count} combinations`, `${MOST_VARIANTS} or less`, "take levels or factors out"),
  ];
}

function levelFaults({ levels, labels }: FileFactor, index: number): Fault[] {
  const at = ["design", "factorial", "factors", index];
  const written = levels.map((level) => JSON.stringify(level));
  const labelFaults =
    labels === undefined || labels.length === levels.length
      ? repeated(labels ?? []).map((label) => twice([...at, "labels", label], labels![label]!, "labels"))
      : [fault([...at, "labels"], `${labels.length} labels`, `${levels.length}, one for each level`, "")];
  return [
    ...repeated(written).map((level) => twice([...at, "levels", level], written[level]!, "levels")),
    ...labelFaults,
  ];
}

/** Two factors that set the same place, or a place inside the other's, would undo each other. */
function overlaps(factors: readonly FileFactor[]): Fault[] {
  const paths = factors.map(({ path }) => parsePath(path));
  return paths.flatMap((path, index) => {
    const other = paths.findIndex((candidate, before) => before < index && isWithin(path, candidate));
    if (other === -1) return [];
    const found = `it sets what the factor '${factors[other]!.name}' sets too`;
    return [
      fault(["design", "factorial", "factors", index, "path"], found, "a path of its own", "join the two factors"),
    ];
  });
}

function isWithin(one: readonly unknown[] | null, other: readonly unknown[] | null): boolean {
  if (one === null || other === null) return false;
  return one.slice(0, other.length).every((step, depth) => step === other[depth]);
}

function fault(at: readonly (string | number)[], found: string, allowed: string, remedy: string): Fault {
  return { path: formatPath(at), found, allowed, remedy };
}
