import {
  foundWords,
  quantityPattern,
  type Reading,
  readQuantity,
  SHARE_PATTERN,
  time,
} from "../../../text/units/index.ts";
import { readBy } from "../../plan/index.ts";

/** A value of a response as the file wrote it; whether the form suits the response is known only with the plan. */
export interface Amount {
  form: "number" | "time" | "percent";
  /** Times in seconds, percentages as shares. */
  value: number;
  written: string;
}

const ALLOWED = "a number in the response's own unit, a time for a response that is a time, or a percentage";
const PERCENT = /^(-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*%$/u;

/** An amount above 0. `example` as JSON text. */
export function amountAboveZero(example: string) {
  return readBy((written) => aboveZero(written, example), amountJson({ exclusiveMinimum: 0 }, example));
}

export function amount(example: string) {
  return readBy((written) => readAmount(written, example), amountJson({}, example));
}

function amountJson(bounds: Record<string, number>, example: string): Record<string, unknown> {
  return {
    anyOf: [
      { type: "number", ...bounds },
      { type: "string", pattern: quantityPattern(time) },
      { type: "string", pattern: SHARE_PATTERN },
    ],
    examples: [JSON.parse(example)],
  };
}

function aboveZero(written: unknown, example: string): Reading<Amount> {
  const reading = readAmount(written, example);
  if (reading.fault !== null || reading.value.value > 0) return reading;
  const found = `${foundWords(written)} is too small`;
  return { value: null, fault: { found, allowed: "more than 0", remedy: `write for example ${example}` } };
}

function readAmount(written: unknown, example: string): Reading<Amount> {
  if (typeof written === "number" && Number.isFinite(written)) return amountOf("number", written, written);
  if (typeof written !== "string") return noAmount(written, example);
  const percent = PERCENT.exec(written);
  if (percent !== null) return amountOf("percent", Number(percent[1]) / 100, written);
  const reading = readQuantity(time, written);
  return reading.fault === null ? amountOf("time", reading.value, written) : noAmount(written, example);
}

function amountOf(form: Amount["form"], value: number, written: unknown): Reading<Amount> {
  return { value: { form, value, written: foundWords(written) }, fault: null };
}

function noAmount(written: unknown, example: string): Reading<never> {
  const found = `${foundWords(written)} cannot be read here`;
  return { value: null, fault: { found, allowed: ALLOWED, remedy: `write for example ${example}` } };
}
