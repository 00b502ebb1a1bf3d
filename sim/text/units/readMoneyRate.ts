import { foundWords } from "./foundWords.ts";
import { type Reading, read, refused } from "./reading.ts";
import { readMoney } from "./readMoney.ts";
import { time } from "./time.ts";

/** Money per time, such as a wage. */
export interface MoneyRate {
  amountPerSecond: number;
  currency: string;
}

export const MONEY_RATE_PATTERN = "^(\\d+\\.?\\d*|\\.\\d+)\\s*[A-Z]{3}\\s*/\\s*(s|min|h|d)$";
export const MONEY_RATE_EXAMPLE = "18 EUR/h";

/** Reads "18 EUR/h"; per s, min, h or d. */
export function readMoneyRate(written: unknown): Reading<MoneyRate> {
  const parts = typeof written === "string" ? /^(.*?)\s*\/\s*(s|min|h|d)$/u.exec(written) : null;
  const money = parts === null ? null : readMoney(parts[1]).value;
  if (parts === null || money === null) {
    return refused(
      `${foundWords(written)} is not money per time`,
      "a number of 0 or more, a three-letter currency code in capitals, then /s, /min, /h or /d",
      `write for example "${MONEY_RATE_EXAMPLE}"`,
    );
  }
  const scale = time.units[parts[2] as string]!;
  return read({ amountPerSecond: (money.amount * scale[1]) / scale[0], currency: money.currency });
}
