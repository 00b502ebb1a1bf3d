import { formatPath } from "../../../asked/plan/index.ts";
import type { Demand, Figure } from "../demand.ts";
import type { Parts } from "../parts.ts";
import { STUN_TO_STICK, watchesKill } from "./watchesOf.ts";

/**
 * What the plan's figures rest on: one note for the whole, one for each stage and crate step by where its figures come from, and a line of its
 * own for each figure that is published. A figure that the demand gives is no better known than the demand says: "assumed".
 */
export function sourcesOf({ name, steps, figures }: Demand, { choice }: Parts): Record<string, unknown>[] {
  const whole = {
    path: "",
    kind: "invented",
    note: `Sized from the demand "${name}"; what no other line speaks for was worked out or invented, and is to be replaced by figures of the site`,
  };
  const handling = `${formatPath(["crates", "handling", choice.way])}.`;
  return [
    whole,
    ...publishedOnes(steps, figures),
    ...publishedLimit(steps),
    ...steps.flatMap((step) => ofStep(formatPath(["line", step.name]), formatPath(["steps", step.name]), figures)),
    ...CRATE_STEPS.flatMap((step) => ofStep(formatPath(["liveHandling", step]), `${handling}${step}`, figures)),
  ];
}

const CRATE_STEPS = ["unloading", "feeding", "washing", "restacking", "palletsOut"];

/** Where published figures of the demand stand in the plan. */
function publishedOnes(steps: Demand["steps"], figures: readonly Figure[]): Record<string, unknown>[] {
  const chilling = steps.find(({ work }) => work === "chilling");
  const places: Record<string, string | null> = {
    "animals.liveWeight.normal.mean": "supply.loads[0].liveWeight.normal.mean",
    "chilling.core": chilling === undefined ? null : formatPath(["line", chilling.name, "chilling", "core"]),
  };
  return figures.flatMap(({ path, source, note }) => {
    const place = places[path] ?? null;
    return source !== "published" || place === null ? [] : [{ path: place, kind: "published", note }];
  });
}

/** The one time limit of the plan that somebody published; the others are house rules. */
function publishedLimit(steps: Demand["steps"]): Record<string, unknown>[] {
  if (!watchesKill(steps)) return [];
  return [{ path: formatPath(["limits", STUN_TO_STICK.name, "max"]), kind: "published", note: STUN_TO_STICK.source }];
}

/** `under`: the path in the demand below which the figures stand. */
function ofStep(path: string, under: string, figures: readonly Figure[]): Record<string, unknown>[] {
  const own = figures.filter((figure) => figure.path.startsWith(`${under}.`));
  const origins = [...new Map(own.map((figure) => [`${figure.source} ${figure.note}`, figure])).values()];
  return origins.map(({ source, note }) => {
    const keys = own.filter((figure) => figure.source === source && figure.note === note);
    const named = keys.map(({ what }) => what.slice(what.indexOf(": ") + 2)).join(", ");
    return source === "given"
      ? { path, kind: "assumed", note: `As the demand gives it: ${named}` }
      : { path, kind: source, note: `${named}: ${note}` };
  });
}
