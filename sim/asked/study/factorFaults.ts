import { foundWords } from "../../text/units/index.ts";
import { type Fault, formatPath, parsePath } from "../plan/index.ts";
import { readRange } from "./range.ts";
import type { FactorFile, SpanFile } from "./schema/factorFile.ts";

type At = readonly (string | number)[];

/** What a design can do with its factors. */
export interface FactorUse {
  /** Whether from and to may stand in place of levels. */
  ranges: boolean;
  /** How many levels every factor must have; null for any number. */
  levels: number | null;
}

/** What is wrong with the factors of a design, each by itself and with each other. `at` is where their list stands. */
export function factorFaults(factors: readonly FactorFile[], at: At, use: FactorUse): Fault[] {
  const names = factors.map(({ name }) => name);
  return [
    ...repeated(names).map((index) => twice([...at, index, "name"], names[index]!, "factors")),
    ...factors.flatMap((factor, index) => ownFaults(factor, [...at, index], use)),
    ...overlaps(factors, at),
  ];
}

/** Indexes of the entries that stand further up already. */
export function repeated(names: readonly string[]): number[] {
  return names.flatMap((name, index) => (names.indexOf(name) < index ? [index] : []));
}

export function twice(at: At, name: string, among: string): Fault {
  return fault(at, `'${name}' appears twice among the ${among}`, "each name once", "rename or delete one of them");
}

export function fault(at: At, found: string, allowed: string, remedy: string): Fault {
  return { path: formatPath(at), found, allowed, remedy };
}

function ownFaults(factor: FactorFile, at: At, use: FactorUse): Fault[] {
  const forms = (["path", "sets", "options"] as const).filter((key) => factor[key] !== undefined);
  if (forms.length !== 1) {
    const found = forms.length === 0 ? "it sets nothing" : `it has ${forms.join(" and ")}`;
    return [fault(at, found, "exactly one of path, sets, options", 'write for example "path": "line.skinning.buffer"')];
  }
  if (factor.options !== undefined) return optionFaults(factor, factor.options, at, use);
  const spans = factor.sets ?? [factor];
  const places = spans.map((_, index) => (factor.sets === undefined ? at : [...at, "sets", index]));
  const shape = spans.flatMap((span, index) => spanFaults(span, places[index]!, use));
  const stray = factor.sets === undefined ? [] : straySpan(factor, at);
  return [
    ...stray,
    ...shape,
    ...(shape.length > 0 ? [] : linkFaults(spans, places)),
    ...labelFaults(factor, spans, at),
  ];
}

function spanFaults(span: SpanFile, at: At, use: FactorUse): Fault[] {
  const ends = [Object.hasOwn(span, "from"), Object.hasOwn(span, "to")];
  const hasEnds = ends.some(Boolean);
  const allowed = use.ranges ? "levels, or from and to" : "levels";
  if (span.levels === undefined && !hasEnds)
    return [fault(at, "no levels", allowed, 'write for example "levels": [4, 8]')];
  if (span.levels !== undefined && hasEnds)
    return [fault(at, "both levels and a range", allowed, "keep one of the two")];
  if (span.levels !== undefined) return levelFaults(span.levels, at, use);
  if (!use.ranges) return [fault(at, "a range", allowed, "write the values out as levels")];
  if (!ends.every(Boolean)) return [fault(at, "one end of a range", allowed, 'write both "from" and "to"')];
  const odd = (["from", "to"] as const).flatMap((end) => endFault(span[end], [...at, end]));
  if (odd.length > 0) return odd;
  const range = readRange(span.from, span.to);
  if (range.fault !== null) return [{ path: formatPath(at), ...range.fault }];
  const { count } = range.value;
  if (count === null || use.levels === null || count >= use.levels) return [];
  return [
    fault(
      at,
      `${count} whole values`,
      `${use.levels} or more, one for each level`,
      "widen the range or lower the levels",
    ),
  ];
}

/** Anything else than these cannot have values between two of it. */
function endFault(end: unknown, at: At): Fault[] {
  // Of a quantity or a time of day, the number that it begins with; of text without one, none.
  const begins = typeof end === "string" ? Number.parseFloat(end) : end;
  if (Number.isFinite(begins)) return [];
  return [
    fault(at, `${foundWords(end)} is no end of a range`, END_OF_RANGE, "anything else than these goes into levels"),
  ];
}

const END_OF_RANGE = 'a number, a quantity, a percentage or a time of day, such as "5 s"';

function levelFaults(levels: readonly unknown[], at: At, use: FactorUse): Fault[] {
  const written = levels.map((level) => JSON.stringify(level));
  return [
    ...repeated(written).map((level) => twice([...at, "levels", level], written[level]!, "levels")),
    ...wrongCount(levels.length, [...at, "levels"], use),
  ];
}

function wrongCount(count: number, at: At, use: FactorUse): Fault[] {
  if (use.levels === null || count === use.levels) return [];
  return [fault(at, `${count} levels`, `${use.levels}, as many as the design has`, "")];
}

function straySpan(factor: FactorFile, at: At): Fault[] {
  const stray = (["levels", "from", "to"] as const).filter((key) => Object.hasOwn(factor, key));
  return stray.map((key) =>
    fault([...at, key], 'not allowed together with "sets"', "levels or ends inside each of the sets", "move it"),
  );
}

/** Linked paths move together: as many levels each, or ranges all of them. */
function linkFaults(spans: readonly SpanFile[], places: readonly At[]): Fault[] {
  const first = spans[0]!.levels?.length ?? null;
  return spans.flatMap(({ levels }, index) => {
    const count = levels?.length ?? null;
    if (count === first) return [];
    const words = (number: number | null): string => (number === null ? "a range" : `${number} levels`);
    return [fault(places[index]!, words(count), `${words(first)}, as the first of the sets has`, "")];
  });
}

function labelFaults({ labels }: FactorFile, spans: readonly SpanFile[], at: At): Fault[] {
  if (labels === undefined) return [];
  const levels = spans[0]!.levels;
  if (levels === undefined) return [fault([...at, "labels"], "labels of a range", "labels of levels", "delete them")];
  if (labels.length !== levels.length)
    return [fault([...at, "labels"], `${labels.length} labels`, `${levels.length}, one for each level`, "")];
  return repeated(labels).map((label) => twice([...at, "labels", label], labels[label]!, "labels"));
}

function optionFaults(
  factor: FactorFile,
  options: NonNullable<FactorFile["options"]>,
  at: At,
  use: FactorUse,
): Fault[] {
  const names = options.map(({ name }) => name);
  const stray = (["levels", "from", "to", "labels"] as const).filter((key) => Object.hasOwn(factor, key));
  const written = options.map(({ name: _, ...change }) => JSON.stringify(change));
  return [
    ...stray.map((key) => fault([...at, key], 'not allowed together with "options"', "options alone", "delete it")),
    ...repeated(names).map((index) => twice([...at, "options", index, "name"], names[index]!, "options")),
    ...repeated(written)
      .filter((index) => !repeated(names).includes(index))
      .map((index) => sameOption(at, index)),
    ...wrongCount(options.length, [...at, "options"], use),
  ];
}

function sameOption(at: At, index: number): Fault {
  const remedy = "change or delete one of them";
  return fault([...at, "options", index], "it is the same as an earlier option", "options that differ", remedy);
}

/** Two factors that set the same place, or a place inside the other's, would undo each other. */
function overlaps(factors: readonly FactorFile[], at: At): Fault[] {
  const targets = factors.flatMap((factor, index) =>
    targetsOf(factor, [...at, index]).map((target) => ({ ...target, index })),
  );
  return targets.flatMap(({ steps, place, index }, position) => {
    const other = targets.slice(0, position).find((before) => before.index < index && touches(steps, before.steps));
    if (other === undefined) return [];
    const found = `it sets what the factor '${factors[other.index]!.name}' sets too`;
    return [fault(place, found, "a path of its own", "join the two factors")];
  });
}

function targetsOf(factor: FactorFile, at: At): { steps: readonly unknown[]; place: At }[] {
  const one = (path: string, place: At) => {
    const steps = parsePath(path);
    return steps === null ? [] : [{ steps, place }];
  };
  const own = factor.path === undefined ? [] : one(factor.path, [...at, "path"]);
  const linked = (factor.sets ?? []).flatMap(({ path }, index) => one(path, [...at, "sets", index, "path"]));
  const chosen = (factor.options ?? []).flatMap(({ set = {} }, index) =>
    Object.keys(set).flatMap((path) => one(path, [...at, "options", index, "set", path])),
  );
  return [...own, ...linked, ...chosen];
}

function touches(one: readonly unknown[], other: readonly unknown[]): boolean {
  const depth = Math.min(one.length, other.length);
  return one.slice(0, depth).every((step, index) => step === other[index]);
}
