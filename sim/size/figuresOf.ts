import { formatPath, isRecord, parsePath, resolvePath } from "../plan/index.ts";
import { ASSUMPTIONS } from "./assumed.ts";
import type { Figure } from "./demand.ts";
import { USUAL_STEPS, type UsualStep } from "./usualSteps.ts";

/** Every figure that a design rests on: as the demand gives it, or as it is assumed. `json` is the demand as written. */
export function figuresOf(json: unknown, leftOut: ReadonlySet<string>): Figure[] {
  const general = ASSUMPTIONS.map(({ path, what, value, source, note }): Figure => {
    const given = valueAt(json, path);
    if (given !== undefined) return { path, what, value: words(given), source: "given", note: "" };
    return { path, what, value: words(value), source, note };
  });
  return [
    ...general,
    ...USUAL_STEPS.filter(({ name }) => !leftOut.has(name)).flatMap((step) => stepFigures(json, step)),
    ...ownSteps(json),
  ];
}

/** One line for each key of a usual step: given ones and assumed ones apart. */
function stepFigures(json: unknown, { name, json: usual, source, note }: UsualStep): Figure[] {
  const given = givenStep(json, name);
  const replaced = "cycle" in given || "rate" in given;
  const assumed = Object.keys(usual).filter(
    (key) => key !== "work" && !(key in given) && !(replaced && (key === "cycle" || key === "rate")),
  );
  return [
    ...Object.keys(given).map((key) => figure(name, key, given[key], "given", "")),
    ...assumed.map((key) => figure(name, key, usual[key], source, note)),
  ];
}

function ownSteps(json: unknown): Figure[] {
  const usual = new Set(USUAL_STEPS.map(({ name }) => name));
  const steps = isRecord(json) && isRecord(json.steps) ? json.steps : {};
  return Object.keys(steps)
    .filter((name) => !usual.has(name))
    .flatMap((name) =>
      Object.entries(givenStep(json, name)).map(([key, value]) => figure(name, key, value, "given", "")),
    );
}

function figure(step: string, key: string, value: unknown, source: Figure["source"], note: string): Figure {
  return {
    path: formatPath(["steps", step, key]),
    what: `${step}: ${KEYS[key] ?? key}`,
    value: words(value),
    source,
    note,
  };
}

const KEYS: Record<string, string> = {
  takesOff: "by-products",
  waterPerHead: "water for each head",
  waterPerHour: "water all the time",
  dwell: "least stay",
};

function givenStep(json: unknown, name: string): Record<string, unknown> {
  const steps = isRecord(json) && isRecord(json.steps) ? json.steps : {};
  return isRecord(steps[name]) ? steps[name] : {};
}

function valueAt(json: unknown, path: string): unknown {
  const { place } = resolvePath(json, parsePath(path) ?? []);
  return place === null ? undefined : (place.parent as Record<PropertyKey, unknown>)[place.key];
}

/** A figure in a few words: distributions by their name and their numbers. */
function words(value: unknown): string {
  if (Array.isArray(value)) return value.map(words).join("; ");
  if (!isRecord(value)) return String(value);
  const entries = Object.entries(value);
  if (entries.length === 1 && isRecord(entries[0]![1])) return `${entries[0]![0]}, ${words(entries[0]![1])}`;
  return entries.map(([key, inner]) => `${key} ${words(inner)}`).join(", ");
}
