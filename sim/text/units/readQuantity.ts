import { conductivity } from "./conductivity.ts";
import { current } from "./current.ts";
import { density } from "./density.ts";
import { energy } from "./energy.ts";
import { flow } from "./flow.ts";
import { foundWords } from "./foundWords.ts";
import { length } from "./length.ts";
import { mass } from "./mass.ts";
import { power } from "./power.ts";
import { pressure } from "./pressure.ts";
import { rate } from "./rate.ts";
import { type Reading, read, refused } from "./reading.ts";
import { specificHeat } from "./specificHeat.ts";
import { speed } from "./speed.ts";
import { temperature } from "./temperature.ts";
import { time } from "./time.ts";
import type { UnitFamily } from "./unitFamily.ts";
import { volume } from "./volume.ts";

/** Digits with a decimal point, then the rest. No thousands separators: "1,200" means two things in two countries. */
const NUMBER_AND_UNIT = /^(-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/su;

const FAMILIES = [
  time,
  rate,
  mass,
  length,
  speed,
  temperature,
  power,
  energy,
  volume,
  flow,
  current,
  conductivity,
  density,
  specificHeat,
  pressure,
];

/**
 * Reads a quantity such as "4.2 s" into SI (`family.si`). The space before the unit may be left out.
 * Refused, each with its own message: anything but a text, a number without its unit, an unknown unit, a unit of another
 * family, a decimal comma, a value below `family.least`, a value too large for a double.
 */
export function readQuantity(family: UnitFamily, written: unknown): Reading<number> {
  if (typeof written === "number") return bareNumber(family, String(written));
  if (typeof written !== "string") return unreadable(family, written);
  const parts = NUMBER_AND_UNIT.exec(written);
  if (parts === null) return unreadable(family, written);
  const [, digits, unit] = parts as unknown as [string, string, string];
  if (unit === "") return bareNumber(family, JSON.stringify(written));
  if (/^,\d/u.test(unit)) return comma(family, written);
  const scale = Object.hasOwn(family.units, unit) ? family.units[unit] : undefined;
  if (scale === undefined) return unknownUnit(family, written, unit);
  // Adding 0 turns "-0 °C" into plain 0.
  return inRange(family, written, (Number(digits) * scale[0]) / scale[1] + 0);
}

/** "a time in ms, s, min, h or d" */
export function allowedUnits(family: UnitFamily): string {
  const symbols = Object.keys(family.units);
  const last = symbols.pop();
  return `${family.name} in ${symbols.length === 0 ? "" : `${symbols.join(", ")} or `}${last}`;
}

/** Whether a text is the symbol of a unit that is known here, of whatever family. */
export function isUnit(symbol: string): boolean {
  return FAMILIES.some(({ units }) => Object.hasOwn(units, symbol));
}

function bareNumber(family: UnitFamily, found: string): Reading<never> {
  return refused(`${found} has no unit`, allowedUnits(family), example(family));
}

function unreadable(family: UnitFamily, written: unknown): Reading<never> {
  return refused(`${foundWords(written)} is not ${family.name}`, allowedUnits(family), example(family));
}

function comma(family: UnitFamily, written: string): Reading<never> {
  const allowed = `${allowedUnits(family)}, with a decimal point and no thousands separator`;
  return refused(`${foundWords(written)} has a comma in its number`, allowed, example(family));
}

function unknownUnit(family: UnitFamily, written: string, unit: string): Reading<never> {
  const spelling = Object.hasOwn(family.otherSpellings, unit) ? family.otherSpellings[unit] : undefined;
  if (spelling !== undefined) {
    const better = `${written.slice(0, written.length - unit.length).trimEnd()} ${spelling}`;
    return refused(`${foundWords(written)} has the unit '${unit}'`, allowedUnits(family), `did you mean "${better}"?`);
  }
  const other = FAMILIES.find((candidate) => candidate !== family && Object.hasOwn(candidate.units, unit));
  const what = other === undefined ? "which is none of the units known here" : `a unit of ${bareName(other)}`;
  return refused(`${foundWords(written)} has the unit '${unit}', ${what}`, allowedUnits(family), example(family));
}

function inRange(family: UnitFamily, written: string, value: number): Reading<number> {
  if (!Number.isFinite(value))
    return refused(`${foundWords(written)} is too large`, allowedUnits(family), example(family));
  if (value < family.least || (family.least >= 0 && written.startsWith("-"))) {
    return refused(
      `${foundWords(written)} is too small`,
      `${allowedUnits(family)}, ${leastWords(family)}`,
      example(family),
    );
  }
  return read(value);
}

function leastWords(family: UnitFamily): string {
  return `${family.least} ${family.si} or more`;
}

function example(family: UnitFamily): string {
  return `write for example "${family.example}"`;
}

function bareName(family: UnitFamily): string {
  return family.name.replace(/^an? /u, "");
}
