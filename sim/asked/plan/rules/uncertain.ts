import type { Fault } from "../fault.ts";
import { formatPath } from "../formatPath.ts";
import { parsePath } from "../parsePath.ts";
import { resolvePath } from "../resolvePath.ts";
import { scaled } from "../uncertain/scaled.ts";
import { faultAt, locatedList, locatedTexts } from "./located.ts";

interface Found {
  at: readonly (string | number)[];
  path: string;
  /** Keys and indexes, so that a name and an index of the same element are seen to be one. */
  steps: string;
}

/** Every path of an uncertain figure leads to one figure that can be multiplied, and no two to the same. */
export function uncertain(json: unknown): Fault[] {
  const texts = locatedList(json, "uncertain").flatMap(({ at }) => locatedTexts(json, ...at, "paths"));
  const read = texts.map(({ at, text }) => readFigure(json, at, text));
  const found = read.flatMap((each) => ("steps" in each ? [each] : []));
  return [...read.flatMap((each) => ("steps" in each ? [] : [each])), ...overlaps(found)];
}

function readFigure(json: unknown, at: Found["at"], path: string): Found | Fault {
  const steps = parsePath(path);
  if (steps === null)
    return faultAt(at, `"${path}" is no path`, 'such as "line.skinning.cycle"', "check dots and brackets");
  const { place, fault } = resolvePath(json, steps);
  if (fault !== null) return { path: formatPath(at), ...fault };
  const figure = scaled((place.parent as Record<PropertyKey, unknown>)[place.key], 1);
  if (figure.fault !== null) return { ...faultAt(at, "", "", ""), ...figure.fault };
  return { at, path, steps: placeOf(json, steps) };
}

function placeOf(json: unknown, steps: readonly (string | number)[]): string {
  const keys = steps.map((_, last) => resolvePath(json, steps.slice(0, last + 1)).place!.key);
  return `${formatPath(keys)}.`;
}

/** A figure that stands inside another one would be multiplied twice. */
function overlaps(found: readonly Found[]): Fault[] {
  return found.flatMap(({ at, path, steps }, index) => {
    const other = found
      .slice(0, index)
      .find((before) => steps.startsWith(before.steps) || before.steps.startsWith(steps));
    if (other === undefined) return [];
    const words = path === other.path ? `"${path}" stands here twice` : `"${path}" and "${other.path}" are one figure`;
    return [faultAt(at, words, "each figure once", "take one of the two out")];
  });
}
