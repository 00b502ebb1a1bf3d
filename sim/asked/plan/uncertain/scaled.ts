import { foundWords, isUnit, readClock, readQuantity, temperature } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { isRecord } from "../isRecord.ts";

type Finding = Pick<Fault, "found" | "allowed" | "remedy">;
export type Scaled = { value: unknown; fault: null } | { value: null; fault: Finding };

const NUMBER_AND_UNIT = /^(-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)(\s*)(\D.*)$/su;
const MONEY = /^[A-Z]{3}(?:\s*\/\s*\S+)?$/u;
const ALLOWED = "a quantity, a share, an amount of money, a number or a distribution";
/** A plan's distributions; anything else in braces is no one figure. */
const FAMILIES = /^(?:exponential|lognormal|gamma|weibull|erlang|normal|uniform|triangular|pert|empirical)$/u;

/**
 * What stands in a plan's file, so many times as large, written as it was. Of a distribution all quantities are
 * multiplied: its coefficient of variation stays. A whole number of 2 or more stays whole, and at least 1.
 */
export function scaled(written: unknown, factor: number): Scaled {
  if (typeof written === "number") return { value: scaledNumber(written, factor), fault: null };
  if (typeof written === "string") return scaledText(written, factor);
  if (isRecord(written)) return scaledDistribution(written, factor);
  return refused(
    written === undefined ? "nothing is written there" : foundWords(written),
    "write the figure there first",
  );
}

function scaledNumber(written: number, factor: number): number {
  const isWhole = Number.isInteger(written) && written >= 2;
  return isWhole ? Math.max(1, Math.round(written * factor)) : tidied(written * factor);
}

/** Twelve digits: what follows is rounding, and a plan is read by people too. */
function tidied(value: number): number {
  return Number(value.toPrecision(12));
}

function scaledText(written: string, factor: number): Scaled {
  if (readClock(written).fault === null)
    return refused(`${foundWords(written)} is a time of day`, "make a study with other hours instead");
  if (readQuantity(temperature, written).fault === null)
    return refused(`${foundWords(written)} is a temperature, whose zero is arbitrary`, "make a study of it instead");
  const [, digits, space, unit] = NUMBER_AND_UNIT.exec(written) ?? [];
  if (unit === undefined || !(unit === "%" || MONEY.test(unit) || isUnit(unit)))
    return refused(`${foundWords(written)} is no figure`, "name the path of a figure");
  return { value: `${tidied(Number(digits) * factor)}${space}${unit}`, fault: null };
}

function scaledDistribution(written: Record<string, unknown>, factor: number): Scaled {
  const [entry, ...others] = Object.entries(written);
  if (entry === undefined || others.length > 0 || !FAMILIES.test(entry[0]))
    return refused("several figures stand there", "name the path of each of them");
  const [family, given] = entry;
  if (Array.isArray(given)) return gathered(given, factor, (values) => ({ [family]: values }));
  if (!isRecord(given)) return refused(foundWords(given), "name the path of a figure");
  if ("csv" in given)
    return refused("the values stand in a table", 'write them into the plan: { "empirical": ["4.1 s", ...] }');
  const keys = Object.keys(given);
  return gathered(
    keys.map((key) => given[key]),
    factor,
    (values) => ({
      [family]: Object.fromEntries(keys.map((key, index) => [key, values[index]])),
    }),
  );
}

/** Texts are the quantities of a distribution; its bare numbers are what stays. */
function gathered(parts: readonly unknown[], factor: number, joined: (values: unknown[]) => unknown): Scaled {
  const found = parts.map((part) =>
    typeof part === "string" ? scaledText(part, factor) : { value: part, fault: null },
  );
  const wrong = found.find(({ fault }) => fault !== null);
  return wrong === undefined ? { value: joined(found.map(({ value }) => value)), fault: null } : (wrong as Scaled);
}

function refused(found: string, remedy: string): Scaled {
  return { value: null, fault: { found, allowed: ALLOWED, remedy } };
}
