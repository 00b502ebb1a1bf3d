import { isRecord } from "../../../sim/asked/plan/index.ts";
import { readQuantity, time } from "../../../sim/text/units/index.ts";

/** A varying time as a plan file writes it: "5 s", {"lognormal": {"mean": "5 s", "cv": 0.3}} and so on. */
type Json = unknown;

/** Families given by their mean; the others are given by limits or by measured values. */
const BY_MEAN = ["exponential", "lognormal", "gamma", "weibull", "erlang", "normal"];
const WITH_CV = ["lognormal", "gamma", "weibull"];

/** Mean in seconds; null where the text does not tell it (values in a CSV file, or not a sound time). */
export function meanSecondsOf(written: Json): number | null {
  if (typeof written === "string") return secondsOf(written);
  const [family, parts] = familyOf(written);
  if (family === null) return null;
  if (BY_MEAN.includes(family) && isRecord(parts)) return secondsOf(parts.mean);
  if (family === "empirical") return Array.isArray(parts) ? meanOfList(parts.map(secondsOf)) : null;
  if (!isRecord(parts)) return null;
  const [min, mode, max] = [secondsOf(parts.min), secondsOf(parts.mode), secondsOf(parts.max)];
  if (min === null || max === null) return null;
  if (family === "uniform") return (min + max) / 2;
  if (mode === null) return null;
  return family === "pert" ? (min + 4 * mode + max) / 6 : (min + mode + max) / 3;
}

/** The same kind of time with another mean: all its times are stretched, its coefficient of variation stays. */
export function withMeanSeconds(written: Json, mean: number): Json {
  const before = meanSecondsOf(written);
  return before === null || before === 0 ? written : stretched(written, mean / before);
}

/** Coefficient of variation where the plan gives one (0 for a time that is always the same); else null. */
export function cvOf(written: Json): number | null {
  if (typeof written === "string") return 0;
  const [family, parts] = familyOf(written);
  if (family === null || !WITH_CV.includes(family) || !isRecord(parts)) return null;
  return typeof parts.cv === "number" ? parts.cv : null;
}

/** The same mean with another coefficient of variation; a time that was always the same becomes lognormal. */
export function withCv(written: Json, cv: number): Json {
  const [family, parts] = familyOf(written);
  if (cv === 0) {
    const mean = meanSecondsOf(written);
    return mean === null ? written : writeSeconds(mean);
  }
  if (typeof written === "string") return { lognormal: { mean: written, cv } };
  return family !== null && isRecord(parts) ? { [family]: { ...parts, cv } } : written;
}

export function writeSeconds(seconds: number): string {
  return `${Number(seconds.toPrecision(6))} s`;
}

function familyOf(written: Json): [string, unknown] | [null, null] {
  if (!isRecord(written)) return [null, null];
  const [entry, ...more] = Object.entries(written);
  return entry === undefined || more.length > 0 ? [null, null] : entry;
}

function secondsOf(written: Json): number | null {
  return readQuantity(time, written).value;
}

function meanOfList(values: (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length < values.length || known.length === 0
    ? null
    : known.reduce((sum, value) => sum + value, 0) / known.length;
}

/** Every time inside, multiplied. */
function stretched(written: Json, factor: number): Json {
  const seconds = secondsOf(written);
  if (seconds !== null) return writeSeconds(seconds * factor);
  if (Array.isArray(written)) return written.map((part) => stretched(part, factor));
  if (!isRecord(written)) return written;
  return Object.fromEntries(Object.entries(written).map(([key, part]) => [key, stretched(part, factor)]));
}
