import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { faultAt, located, locatedList, namesOf } from "./located.ts";
import { stagesOf } from "./stages.ts";

/** A load is withdrawn at a stage that there is, as something that this stage removes. */
export function withdrawals(json: unknown): Fault[] {
  const stages = stagesOf(json);
  return locatedList(json, "supply", "loads").flatMap(({ at }) => {
    const withdrawn = located(json, ...at, "withdrawn");
    if (withdrawn === null) return [];
    const name = String(withdrawn.value.at);
    const stage = stages.find(({ value }) => value.name === name);
    if (stage === undefined) {
      const names = namesOf(stages);
      return [
        faultAt(
          [...withdrawn.at, "at"],
          `'${name}' is no stage`,
          listWords(names),
          nearestWords(name, names, "check the name"),
        ),
      ];
    }
    const removed = locatedList(json, ...stage.at, "removals").map(({ value }) => String(value.as));
    const as = String(withdrawn.value.as);
    if (removed.includes(as)) return [];
    const remedy = nearestWords(as, removed, `add it to the removals of ${name}`);
    return [faultAt([...withdrawn.at, "as"], `'${as}' is no removal of ${name}`, listWords(removed), remedy)];
  });
}
