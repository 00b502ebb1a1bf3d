import type { ResponseInfo } from "../responseInfo.ts";

/** What a week makes of its days' values of one response. */
export interface OverDays {
  /** In words, behind the label. */
  words: string;
  /** Key of the response that says how much each day counts; null where every day counts the same. */
  weight: string | null;
  /** One value of all days; null where no day has one. */
  of(values: readonly (number | null)[], weights: readonly (number | null)[]): number | null;
}

/** What a quotient is taken over: a week's is the quotient of its sums, so days count by it. */
const TAKEN_OVER: readonly [RegExp, string][] = [
  [/^(costPerHead|fullCostPerHead|marginPerHead|(water|wasteWater|energy)PerHead)$/, "carcasses"],
  [/^(costPerKg|fullCostPerKg|(water|energy|cod)PerTonne)$/, "carcassKg"],
  [/^carcassesPerPersonHour$/, "personHours"],
  [/^timeInSystem\.mean$/, "carcasses"],
  [/^dressingPercentage$/, "liveKg"],
];

/** The worst of the days: figures that are extremes of their day. */
const EXTREMES = /^(worst|shortest)\.|\.max$|^killStops\.(longest|worstWait)$|Peak$|^timeInSystem\.max$/;

/** How the values of a week's days become the week's. */
export function overDays({ key, better }: Pick<ResponseInfo, "key" | "better">): OverDays {
  if (EXTREMES.test(key)) return better === "more" ? LEAST : MOST;
  const taken = TAKEN_OVER.find(([keys]) => keys.test(key));
  return taken === undefined ? MEAN : weighted(taken[1]);
}

const MOST: OverDays = { words: "most of any day", weight: null, of: (values) => extreme(values, Math.max) };
const LEAST: OverDays = { words: "least of any day", weight: null, of: (values) => extreme(values, Math.min) };
const MEAN: OverDays = {
  words: "mean of the days",
  weight: null,
  of: (values) =>
    meanOf(
      values,
      values.map(() => 1),
    ),
};

function weighted(weight: string): OverDays {
  return { words: "of all days together", weight, of: meanOf };
}

function extreme(values: readonly (number | null)[], pick: (...numbers: number[]) => number): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : pick(...known);
}

/** A day without a value, or that counts nothing, is left out. */
function meanOf(values: readonly (number | null)[], weights: readonly (number | null)[]): number | null {
  let sum = 0;
  let total = 0;
  for (const [row, value] of values.entries()) {
    const weight = weights[row] ?? 0;
    if (value === null || weight === 0) continue;
    sum += weight * value;
    total += weight;
  }
  return total === 0 ? null : sum / total;
}

/** The sum over the days; null where a day has no value, for a sum without it would be of another week. */
export function sumOf(values: readonly (number | null)[]): number | null {
  return values.includes(null) ? null : values.reduce<number>((sum, value) => sum + value!, 0);
}
