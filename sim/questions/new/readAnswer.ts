import { nearestWords } from "../../asked/plan/index.ts";
import { formatNumber, readClock, readQuantity, time, writeQuantity } from "../../text/units/index.ts";
import type { AnswerReading } from "./question.ts";

/** "1,600" and "1 600" are 1600. */
export function wholeAnswer(text: string, least: number, most: number): AnswerReading<number> {
  const value = Number(text.replace(/(?<=\d)[, \u202f](?=\d{3}(?!\d))/g, ""));
  if (Number.isInteger(value) && value >= least && value <= most && text !== "") return { value };
  return { fault: `'${text}' is not a whole number from ${formatNumber(least, 9)} to ${formatNumber(most, 9)}` };
}

export function clockAnswer(text: string): AnswerReading<number> {
  const { value } = readClock(/^\d:/.test(text) ? `0${text}` : text);
  return value === null
    ? { fault: `'${text}' is not a time of day; write for example 06:00, and 25:30 for half past one at night` }
    : { value };
}

/** A time above zero and up to `most` seconds. */
export function timeAnswer(text: string, example: string, most: number): AnswerReading<number> {
  const { value } = readQuantity(time, text);
  if (value === null) return { fault: `'${text}' is not a time with its unit; write for example ${example}` };
  if (value > 0 && value <= most) return { value };
  return { fault: `'${text}' is not above 0 and up to ${writeTime(most)}; write for example ${example}` };
}

export function choiceAnswer<Choice extends string>(text: string, choices: readonly Choice[]): AnswerReading<Choice> {
  const found = choices.find((choice) => choice.toLowerCase() === text.toLowerCase());
  if (found !== undefined) return { value: found };
  return { fault: `'${text}' is not one of ${choices.join(", ")}; ${nearestWords(text, choices, "take one of them")}` };
}

/**
 * "evisceration 4, hanging 2": figures by name. What is not named stays as in `standard`; the names in it are those
 * that there are.
 */
export function namedAnswer<Value>(
  text: string,
  standard: Readonly<Record<string, Value>>,
  readValue: (text: string) => AnswerReading<Value>,
): AnswerReading<Readonly<Record<string, Value>>> {
  const names = Object.keys(standard);
  const found: Record<string, Value> = {};
  for (const part of partsOf(text)) {
    const name = names.find((each) => new RegExp(`^${each}[ =:]`, "i").test(part));
    if (name === undefined) return { fault: unknownName(part, names) };
    const reading = readValue(part.slice(name.length + 1).trim());
    if ("fault" in reading) return { fault: `${name}: ${reading.fault}` };
    if (Object.hasOwn(found, name)) return { fault: `${name} stands there twice; write it once` };
    found[name] = reading.value;
  }
  return { value: { ...standard, ...found }, given: Object.keys(found) };
}

function unknownName(part: string, names: readonly string[]): string {
  const written = part.replace(/[ =:]+[\d.]+ ?\p{L}*$/u, "").replace(/[ =:]+none$/i, "");
  if (names.includes(written)) return `'${part}' gives no figure for ${written}`;
  return `'${written}' is not asked for here (${names.join(", ")}); ${nearestWords(written, names, "take one of them")}`;
}

/** The parts of a list, without those that are empty. */
export function partsOf(text: string): string[] {
  return text
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
}

/** As a plan writes it: "10 s", "25 min", "3 h". */
export function writeTime(seconds: number): string {
  const unit = [
    ["h", 3600],
    ["min", 60],
  ].find(([, size]) => seconds >= (size as number) && seconds % (size as number) === 0) as [string, number] | undefined;
  return unit === undefined ? writeQuantity(time, seconds) : `${seconds / unit[1]} ${unit[0]}`;
}

export function writeNamed<Value>(values: Readonly<Record<string, Value>>, write: (value: Value) => string): string {
  return Object.entries(values)
    .map(([name, value]) => `${name} ${write(value)}`)
    .join(", ");
}
