import { isolated } from "../frame/index.ts";

/** One figure of a plan as the file has it, and where it comes from. */
export interface InputRow {
  /** Where it stands, in the path notation of plans and studies. */
  path: string;
  value: string;
  kind: string;
  note: string;
}

export interface SourceNote {
  path: string;
  kind: string;
  note: string;
}

/** Words about the plan, which are no figures. */
const NO_FIGURES = new Set(["$schema", "name", "notes", "sources", "source"]);
const UNKNOWN: SourceNote = { path: "", kind: "assumed", note: "no source named" };
/** The key of an object that is a distribution, not a part. */
const FAMILIES = /^(lognormal|triangular|exponential|gamma|weibull|uniform|erlang|pert|normal|empirical)$/;

/**
 * Every figure of a plan file as it was read, in the order of the file, each with its source: that of the nearest part
 * above it that the plan's notes speak for, or the `source` written beside it. A figure nobody speaks for is assumed.
 */
export function inputRows(plan: unknown, sources: readonly SourceNote[]): InputRow[] {
  const whole = sources.find(({ path }) => path === "") ?? UNKNOWN;
  return rowsOf(plan, { path: "", aliases: [""] }, whole, sources);
}

/** A place in the plan: as it is shown, and all ways in which a note may name it. */
interface Place {
  path: string;
  aliases: readonly string[];
}

function rowsOf(value: unknown, place: Place, above: SourceNote, sources: readonly SourceNote[]): InputRow[] {
  const source = sources.find(({ path }) => path !== "" && place.aliases.includes(path)) ?? above;
  if (isFigure(value)) {
    const { kind, note } = source;
    return [
      { path: isolated(place.path), value: isolated(figureText(value)), kind: isolated(kind), note: isolated(note) },
    ];
  }
  const own = ownSource(value, source);
  return partsOf(value, place).flatMap(([part, next]) => rowsOf(part, next, own, sources));
}

function isFigure(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return true;
  if (Array.isArray(value)) return value.every((item) => typeof item !== "object" || item === null);
  const keys = Object.keys(value);
  return keys.length === 1 && FAMILIES.test(keys[0]!);
}

/** A part that names its source in words of its own, as limits and settings do. */
function ownSource(value: unknown, source: SourceNote): SourceNote {
  const words = (value as { source?: unknown }).source;
  return typeof words === "string" && words !== "" ? { path: "", kind: "named beside it", note: words } : source;
}

function partsOf(value: unknown, place: Place): [unknown, Place][] {
  if (Array.isArray(value)) return value.map((item, index) => [item, elementPlace(item, index, place)]);
  return Object.entries(value as object)
    .filter(([key]) => !NO_FIGURES.has(key))
    .map(([key, part]) => [part, joined(place, [step(key, place.path)])]);
}

/** An element of a list goes by its name where it has one, and always by its number. */
function elementPlace(item: unknown, index: number, place: Place): Place {
  const name = (item as { name?: unknown } | null)?.name;
  const number = `[${index}]`;
  return joined(
    place,
    typeof name === "string" && name !== "" ? [step(name, place.path), `["${name}"]`, number] : [number],
  );
}

/** ".skinning"; names that hold a mark of the notation go in brackets as JSON text. */
function step(name: string, before: string): string {
  if (/[.[\]"]/.test(name)) return `[${JSON.stringify(name)}]`;
  return before === "" ? name : `.${name}`;
}

function joined(place: Place, steps: readonly string[]): Place {
  return {
    path: place.path + steps[0]!,
    aliases: place.aliases.flatMap((alias) => steps.map((each) => alias + each)),
  };
}

/** "5.5 s", "lognormal: mean 5.5 s, cv 0.3", "yes", "none"; of a long list its length and ends. */
function figureText(value: unknown): string {
  if (value === null) return "no limit";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (Array.isArray(value)) return listText(value);
  if (typeof value !== "object") return String(value);
  const [family, parameters] = Object.entries(value)[0]!;
  if (Array.isArray(parameters)) return `${family}: ${listText(parameters)}`;
  const parts = Object.entries(parameters as object).map(([key, part]) => `${key} ${String(part)}`);
  return `${family}: ${parts.join(", ")}`;
}

function listText(list: readonly unknown[]): string {
  if (list.length === 0) return "none";
  if (list.length <= 8) return list.map(String).join(", ");
  return `${list.length} values, ${String(list[0])} ... ${String(list.at(-1))}`;
}
