import type { Fault } from "../fault.ts";
import { parsePath } from "../parsePath.ts";
import { resolvePath } from "../resolvePath.ts";
import { faultAt, locatedList } from "./located.ts";

/** A note on sources speaks for something that is there. */
export function sourcePaths(json: unknown): Fault[] {
  return locatedList(json, "sources").flatMap(({ at, value }) => {
    const { path = "" } = value;
    if (typeof path !== "string" || path === "") return [];
    const steps = parsePath(path);
    if (steps === null)
      return [
        faultAt([...at, "path"], `"${path}" is no path`, 'such as "line.skinning.cycle"', "check dots and brackets"),
      ];
    const { fault } = resolvePath(json, steps);
    return fault === null ? [] : [{ ...faultAt([...at, "path"], "", "", ""), ...fault }];
  });
}
