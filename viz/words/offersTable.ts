import { formatDecimals, intervalDecimals } from "../../sim/text/units/index.ts";
import type { Decision, OptionsResult, Ranged } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { type DecisionCell, type DecisionTable, decisionTable } from "./decisionTable.ts";

/** Letters of figures of the day that fit beside those of the offers. */
const DAY_LETTERS = 34;
/** A payback beyond a lifetime is none that a bank would read. */
const LONGEST_YEARS = 100;
const EMPTY: DecisionCell = { value: "", range: "", shown: null };

/**
 * Offers down, today's plan first; price, payback and yearly benefit across, then what the simulated days say of the day
 * where a decision holds it. The money column of a study is left out: it reckons no interest.
 */
export function offersTable(
  { options, currency, buy }: OptionsResult,
  decision: Decision | null | undefined,
  startClockSeconds: number,
): DecisionTable {
  const unit = isolated(currency);
  const days =
    decision == null
      ? null
      : decisionTable(withoutMoney(decision), startClockSeconds, { rows: options.length + 1, letters: DAY_LETTERS });
  const today = days?.rows[0]?.name ?? "today's plan";
  const bodies = [
    { name: today, own: [EMPTY, EMPTY, EMPTY], harm: null },
    ...options.map(({ name, price, worth, harm }) => ({
      name: isolated(name),
      own: [
        { ...EMPTY, value: `${formatDecimals(price, 0)} ${unit}` },
        ranged(worth.paybackYears, (value) => (value > LONGEST_YEARS ? "never" : value.toFixed(1)), "years", null),
        ranged(worth.perYear, money, unit, worth.perYear.low > 0 || worth.perYear.high < 0),
      ],
      harm,
    })),
  ];
  return {
    columns: ["Price", "Payback", "Benefit a year", ...(days?.columns ?? [])],
    rows: bodies.map(({ name, own, harm }, index) => ({
      ...{ name, harm, best: buy === null ? false : index === buy + 1 },
      cells: [...own, ...(days?.rows[index]?.cells ?? [])],
    })),
    more: 0,
    left: days?.left ?? [],
  };
}

function withoutMoney(decision: Decision): Decision {
  return {
    ...decision,
    columns: decision.columns.filter(
      ({ unit, key }) => key === "finish" || key === "overtime" || key.startsWith("beyond.") || unit === "carcasses/h",
    ),
    rows: decision.rows.map((row) => ({ ...row, money: null })),
  };
}

function ranged(
  { mean, low, high }: Ranged,
  text: (value: number, half: number) => string,
  unit: string,
  shown: boolean | null,
): DecisionCell {
  const [middle, from, to] = [mean, low, high].map((value) => text(value, (high - low) / 2));
  const value = /\d/.test(middle!) ? `${middle} ${unit}` : middle!;
  return { value, range: from === to ? "" : `${from} to ${to}`, shown };
}

function money(value: number, halfWidth: number): string {
  return formatDecimals(value, halfWidth > 0 ? Math.min(0, intervalDecimals(halfWidth)) : 0);
}
