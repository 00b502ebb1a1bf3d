import { foundWords } from "./foundWords.ts";
import { type Reading, read, refused } from "./reading.ts";

/** An amount of money; `currency` is the three-letter code of ISO 4217 (its form is checked, not its existence). */
export interface MoneyAmount {
  amount: number;
  currency: string;
}

export const MONEY_PATTERN = "^(\\d+\\.?\\d*|\\.\\d+)\\s*[A-Z]{3}$";
export const MONEY_EXAMPLE = "1200 EUR";

const money = /^(\d+\.?\d*|\.\d+)\s*([A-Z]{3})$/u;

/** Reads "1200 EUR". Amounts are 0 or more. */
export function readMoney(written: unknown): Reading<MoneyAmount> {
  const parts = typeof written === "string" ? money.exec(written) : null;
  if (parts === null) {
    return refused(
      `${foundWords(written)} is not an amount of money`,
      "a number of 0 or more and a three-letter currency code in capitals",
      `write for example "${MONEY_EXAMPLE}"`,
    );
  }
  return read({ amount: Number(parts[1]), currency: parts[2] as string });
}
