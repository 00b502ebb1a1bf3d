import { z } from "zod";

/** Shorter lists are written as they are. */
const MIN_LENGTH = 8;
/** More values than the bins of any trace: what claims more did not come from a run. */
const MAX_VALUES = 1_000_000;

const RUNS = z.strictObject({ runs: z.array(z.number().nullable()) });

/**
 * Lists of numbers of which many follow each other unchanged, as traces have them, turned into runs: [2, 2, 2, 0] becomes { "runs": [2, 3, 0, 1] }, a
 * value and how often, wherever that is shorter. Nothing is lost: `fromRuns(inRuns(x))` is `x`. For data whose keys nobody chose: `runs` means a list.
 */
export function inRuns(value: unknown): unknown {
  if (Array.isArray(value)) return isNumbers(value) ? runsOf(value) : value.map(inRuns);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, inRuns(each)]));
}

/** What `inRuns` was given. Throws a `RangeError` at runs that say nothing, or that claim more values than any run has. */
export function fromRuns(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(fromRuns);
  if (typeof value !== "object" || value === null) return value;
  const found = RUNS.safeParse(value);
  if (found.success) return listOf(found.data.runs);
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, fromRuns(each)]));
}

function isNumbers(list: readonly unknown[]): list is (number | null)[] {
  return list.length >= MIN_LENGTH && list.every((each) => typeof each === "number" || each === null);
}

function runsOf(list: readonly (number | null)[]): unknown {
  const runs: (number | null)[] = [];
  for (const value of list) {
    if (runs.length > 0 && runs.at(-2) === value) runs[runs.length - 1]! += 1;
    else runs.push(value, 1);
  }
  return runs.length < list.length ? { runs } : list;
}

function listOf(runs: readonly (number | null)[]): (number | null)[] {
  const counts = runs.filter((_, index) => index % 2 === 1);
  const length = counts.reduce<number>((sum, count) => sum + (count ?? Number.NaN), 0);
  const isSound = runs.length % 2 === 0 && counts.every((count) => Number.isInteger(count) && count! > 0);
  if (!isSound || !(length <= MAX_VALUES)) throw new RangeError("fromRuns: these runs are no list of values");
  return counts.flatMap((count, row) => Array.from({ length: count! }, () => runs[row * 2]!));
}
