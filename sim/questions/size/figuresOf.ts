import { formatPath, isRecord, parsePath, resolvePath } from "../../asked/plan/index.ts";
import { ASSUMPTIONS, type Assumption } from "./assumed.ts";
import { BUSINESS_ASSUMPTIONS } from "./assumedBusiness.ts";
import type { Figure } from "./demand.ts";
import { TO_BEGIN_WITH, USUAL_STEPS, type UsualStep } from "./usualSteps.ts";

const GIVEN = { source: "given", note: "" } as const;

/** Every figure that a design rests on: as the demand gives it, or as it is assumed. `json` is the demand as written. */
export function figuresOf(json: unknown, leftOut: ReadonlySet<string>): Figure[] {
  return [
    ...required(json),
    ...(valueAt(json, "markets") === undefined ? [] : sizedFor(json)),
    ...ASSUMPTIONS.flatMap((assumption) => figuresAt(json, assumption)),
    ...USUAL_STEPS.filter(({ name }) => !leftOut.has(name)).flatMap((step) => stepFigures(json, step)),
    ...ownSteps(json),
  ];
}

/** Every figure that the money and the people of a dossier rest on, beside those of the plant. */
export function businessFigures(json: unknown): Figure[] {
  const others = BUSINESS_ASSUMPTIONS.filter(({ path }) => !OF_MARKETS.includes(path));
  return [
    ...others.flatMap((assumption) => figuresAt(json, assumption)),
    ...Object.entries(GIVEN_ALONE).flatMap(([path, what]) => {
      const given = valueAt(json, path);
      return given === undefined ? [] : [{ path, what, value: words(given), ...GIVEN }];
    }),
  ];
}

const OF_MARKETS = ["years.sizedFor", "years.spare"];

const GIVEN_ALONE = {
  pay: "pay of everybody",
  money: "prices",
  "capital.stations": "prices of positions",
  "capital.crate": "price of a crate",
  "capital.vessel": "price of a vessel",
  "capital.floor": "price of the building",
  "capital.power": "price of the electrical installation",
  "capital.other": "what else is bought",
  "capital.loan": "loan",
  available: "what the site has",
};

function sizedFor(json: unknown): Figure[] {
  return BUSINESS_ASSUMPTIONS.filter(({ path }) => OF_MARKETS.includes(path)).flatMap((each) => figuresAt(json, each));
}

/** As given, or as it is assumed: each number with a source of its own in a line of its own. */
function figuresAt(json: unknown, assumption: Assumption): Figure[] {
  const { path, what, parts = [assumption] } = assumption;
  const given = valueAt(json, path);
  if (given !== undefined) return [{ path, what, value: words(given), ...GIVEN }];
  return parts.map((claim) => ({
    path: claim.path,
    what: claim.what,
    value: words(claim.value),
    source: claim.source,
    note: claim.note,
  }));
}

const REQUIRED = {
  "week.heads": "heads a week",
  "week.carcasses": "carcasses a week",
  "week.carcassMass": "carcasses a week",
  markets: "markets",
  "week.days": "working days a week",
  "day.shifts": "shifts",
  "day.breaks": "breaks",
};

/** What only the demand itself can say. */
function required(json: unknown): Figure[] {
  return Object.entries(REQUIRED).flatMap(([path, what]) => {
    const given = valueAt(json, path);
    return given === undefined ? [] : [{ path, what, value: words(given), ...GIVEN }];
  });
}

/** What a usual step is, not a figure. */
const UNSAID = ["work", "zone"];

/** One line for each key of a usual step: given ones and assumed ones apart. */
function stepFigures(json: unknown, { name, json: usual, origins }: UsualStep): Figure[] {
  const given = givenStep(json, name);
  const replaced = "cycle" in given || "rate" in given;
  const assumed = Object.keys(usual).filter(
    (key) => !UNSAID.includes(key) && !(key in given) && !(replaced && (key === "cycle" || key === "rate")),
  );
  return [
    ...Object.keys(given).map((key) => figure(name, key, given[key], GIVEN)),
    ...assumed.map((key) => figure(name, key, usual[key], origins[key] ?? TO_BEGIN_WITH)),
  ];
}

function ownSteps(json: unknown): Figure[] {
  const usual = new Set(USUAL_STEPS.map(({ name }) => name));
  const steps = isRecord(json) && isRecord(json.steps) ? json.steps : {};
  return Object.keys(steps)
    .filter((name) => !usual.has(name))
    .flatMap((name) => Object.entries(givenStep(json, name)).map(([key, value]) => figure(name, key, value, GIVEN)));
}

function figure(step: string, key: string, value: unknown, origin: Pick<Figure, "source" | "note">): Figure {
  const path = formatPath(["steps", step, key]);
  return { path, what: `${step}: ${KEYS[key] ?? key}`, value: words(value), ...origin };
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
