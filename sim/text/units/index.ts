// Families of units

export { area } from "./area.ts";
export { conductivity } from "./conductivity.ts";
export { current } from "./current.ts";
export { density } from "./density.ts";
export { energy } from "./energy.ts";
export { flow } from "./flow.ts";
export { length } from "./length.ts";
export { mass } from "./mass.ts";
export { power } from "./power.ts";
export { pressure } from "./pressure.ts";
export { rate } from "./rate.ts";
export { specificHeat } from "./specificHeat.ts";
export { speed } from "./speed.ts";
export { temperature } from "./temperature.ts";
export { time } from "./time.ts";
export type { UnitFamily, UnitScale } from "./unitFamily.ts";
export { volume } from "./volume.ts";

// From text to numbers

export { foundWords } from "./foundWords.ts";
export { quantityPattern } from "./quantityPattern.ts";
export { CLOCK_EXAMPLE, CLOCK_PATTERN, readClock } from "./readClock.ts";
export { type Reading, type ReadingFault, read, refused } from "./reading.ts";
export { MONEY_EXAMPLE, MONEY_PATTERN, type MoneyAmount, readMoney } from "./readMoney.ts";
export { type MoneyPer, moneyPerExample, moneyPerPattern, readMoneyPer, type Sign } from "./readMoneyPer.ts";
export { MONEY_RATE_EXAMPLE, MONEY_RATE_PATTERN, type MoneyRate, readMoneyRate } from "./readMoneyRate.ts";
export { allowedUnits, isUnit, readQuantity } from "./readQuantity.ts";
export { readShare, SHARE_PATTERN } from "./readShare.ts";

// From numbers to text

export {
  differenceUnit,
  type FigureKind,
  type FigureScale,
  type FigureText,
  figureText,
  signed,
  valueText,
} from "./figureText.ts";
export { formatClock, SECONDS_PER_DAY, writeClock } from "./formatClock.ts";
export { formatConfidence } from "./formatConfidence.ts";
export { decimalsFor, formatDecimals } from "./formatDecimals.ts";
export { formatDuration, formatMinutes } from "./formatDuration.ts";
export { formatNumber } from "./formatNumber.ts";
export { formatQuantity, writeQuantity } from "./formatQuantity.ts";
export { formatRate } from "./formatRate.ts";
export {
  type Ends,
  formatBound,
  formatDifference,
  formatEstimate,
  formatRange,
  formatResponse,
  formatSpan,
  roundedUp,
} from "./formatResponse.ts";
export { formatShare } from "./formatShare.ts";
export { groupDigits } from "./groupDigits.ts";
export { intervalDecimals } from "./intervalDecimals.ts";
export { oneOf } from "./oneOf.ts";
export { textTable } from "./textTable.ts";
export { type TimeUnit, timeUnitFor } from "./timeUnit.ts";

// Words

export { capital } from "./capital.ts";
export { visible } from "./visible.ts";
