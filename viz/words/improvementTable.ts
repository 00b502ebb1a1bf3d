import { formatDecimals, formatEstimate, formatResponse } from "../../sim/text/units/index.ts";
import type { Improvement } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import type { DecisionCell, DecisionTable } from "./decisionTable.ts";

/** What the table of a search reads of it. */
type Searched = Pick<Improvement, "goal" | "allocated" | "answer" | "recommended" | "period">;

/** Today's arrangement and the recommended one, with the goal, the end of work, what each takes and money; null where today's is recommended or none is. */
export function improvementTable({ goal, allocated, answer, recommended, period }: Searched): DecisionTable | null {
  if (recommended === null || recommended.isBase || recommended.goal === null || recommended.gain === null) return null;
  const { gain, ends, money, uses, name } = recommended;
  const [mean, range] = formatEstimate(recommended.goal, goal, 0);
  const worse = goal.better === "less" ? gain.mean : -gain.mean;
  const shown = gain.low > 0 || gain.high < 0;
  const [before] = formatEstimate({ ...recommended.goal, mean: recommended.goal.mean + worse }, goal, 0);
  const bases = allocated.elements.map(({ base }) => base);
  const today = bases.some((base) => base === null)
    ? ""
    : formatDecimals(
        bases.reduce<number>((sum, base) => sum + base!, 0),
        0,
      );
  const clock = (seconds: number) => formatResponse(seconds, { unit: "s", format: "clock" }, ends!.startClockSeconds);
  return {
    columns: [
      isolated(goal.label),
      ...(ends === null ? [] : [period === undefined ? "End of work" : "End of work, mean of the days"]),
      isolated(allocated.kind === "budget" ? `Spent [${allocated.unit}]` : allocated.unit),
      ...(money === null ? [] : [`Money a ${money.daysTogether === undefined ? "day" : "week"}, to today`]),
    ],
    rows: [
      {
        name: "today's arrangement",
        cells: [
          plain(before),
          ...(ends === null ? [] : [plain(clock(ends.today))]),
          plain(["budget", "times", "week"].includes(allocated.kind) ? "0" : today),
          ...(money === null ? [] : [plain("")]),
        ],
        ...{ best: answer === "no" || answer === "too small", harm: null },
      },
      {
        name: isolated(name),
        cells: [
          { value: mean, range, shown },
          ...(ends === null ? [] : [{ ...plain(clock(ends.pick)), shown }]),
          plain(uses === null ? "" : formatDecimals(uses, 0)),
          ...(money === null ? [] : [moneyCell(money)]),
        ],
        ...{ best: answer === "yes", harm: null },
      },
    ],
    more: 0,
  };
}

function plain(value: string): DecisionCell {
  return { value, range: "", shown: null };
}

function moneyCell({
  perDay: { mean, low, high },
  currency,
}: NonNullable<NonNullable<Improvement["recommended"]>["money"]>): DecisionCell {
  const signed = (value: number) => `${value > 0 ? "+" : ""}${formatDecimals(value, 0)}`;
  const range = low === null || high === null || low === high ? "" : `${signed(low)} to ${signed(high)}`;
  return { value: `${signed(mean)} ${isolated(currency)}`, range, shown: (low ?? mean) > 0 || (high ?? mean) < 0 };
}
