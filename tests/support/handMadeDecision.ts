import type { ResponseInfo } from "../../sim/day/observations/index.ts";
import type { Decision, DecisionRow, Gain, MeanEstimate, NetMoney } from "../../sim/days/results/index.ts";

export const FINISH: ResponseInfo = { key: "finish", label: "End of work", unit: "s", format: "clock", better: "less" };
export const WAITING: ResponseInfo = {
  ...{ key: "beyond.waiting", label: "waiting: heads outside the limit", unit: "", better: "less" },
  format: "share",
};

export function estimateOf(mean: number, half = 0): MeanEstimate {
  return {
    n: 20,
    mean,
    sd: half,
    halfWidth: half,
    low: mean - half,
    high: mean + half,
    min: mean,
    max: mean,
  } as MeanEstimate;
}

/** A gain in seconds, known to three minutes either way. */
export function gain(size: Gain["size"], minutes: number): Gain {
  return { size, mean: 60 * minutes, low: 60 * minutes - 180, high: 60 * minutes + 180 };
}

/** So many EUR a day, known to 5 EUR either way. */
export function money(size: Gain["size"], perDay: number, more: Partial<NetMoney> = {}): NetMoney {
  return {
    ...{ currency: "EUR", by: "cost", perDay: estimateOf(perDay, 5), size, daysPerYear: 250, daysAssumed: true },
    ...{ price: 0, paybackYears: null },
    ...more,
  };
}

/** Shares of heads outside the limit "waiting" by row, today's plan first. */
export function handMadeDecision(rows: readonly Partial<DecisionRow>[], shares: readonly number[] = []): Decision {
  const list = [{ name: "base" }, ...rows].map((row, index): DecisionRow => {
    const share = shares[index];
    const estimates = {
      finish: estimateOf(30_000),
      ...(share === undefined ? {} : { [WAITING.key]: estimateOf(share, 0.005) }),
    };
    const fewer = share === undefined || index === 0 ? 0 : share - shares[0]!;
    const differences = fewer === 0 ? {} : { [WAITING.key]: { mean: fewer, shown: true } as never };
    return { name: "", people: 3, estimates, differences, harm: null, gain: null, money: null, ...row };
  });
  return {
    ...{ kind: "best", inferred: true, answer: "told", verdict: "", words: [], next: [], best: null },
    ...{ deciding: "finish", matters: { size: 300, asked: false }, rows: list },
    columns: shares.length === 0 ? [FINISH] : [FINISH, WAITING],
  };
}
