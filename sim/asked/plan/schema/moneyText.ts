import {
  MONEY_EXAMPLE,
  MONEY_PATTERN,
  MONEY_RATE_EXAMPLE,
  MONEY_RATE_PATTERN,
  moneyPerExample,
  moneyPerPattern,
  readMoney,
  readMoneyPer,
  readMoneyRate,
  type Sign,
  type UnitFamily,
} from "../../../text/units/index.ts";
import { readBy } from "./readBy.ts";

/** Money for one unit of something, per SI unit of the family. */
export function price(family: UnitFamily, sign: Sign) {
  return readBy((written) => readMoneyPer(family, sign, written), {
    type: "string",
    pattern: moneyPerPattern(family, sign),
    examples: [moneyPerExample(family)],
  });
}

/** Money per time. */
export function pay() {
  return readBy(readMoneyRate, { type: "string", pattern: MONEY_RATE_PATTERN, examples: [MONEY_RATE_EXAMPLE] });
}

/** An amount of money. */
export function amount() {
  return readBy(readMoney, { type: "string", pattern: MONEY_PATTERN, examples: [MONEY_EXAMPLE] });
}
