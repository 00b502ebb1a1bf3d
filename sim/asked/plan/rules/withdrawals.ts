import { readClock } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { faultAt, located, locatedList, namesOf } from "./located.ts";
import { chillersOf, stagesOf } from "./stages.ts";

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

/** A lot is held in a chiller that there is, behind the killing, until after its lorry is due. */
export function heldLots(json: unknown): Fault[] {
  const chillers = namesOf(chillersOf(json));
  return locatedList(json, "supply", "loads").flatMap((load) => {
    const held = located(json, ...load.at, "held");
    if (held === null) return [];
    const name = String(held.value.in);
    const due = readClock(load.value.at).value;
    const until = readClock(held.value.until).value;
    const remedy = nearestWords(name, chillers, "name a chiller");
    return [
      ...(chillers.includes(name)
        ? []
        : [faultAt([...held.at, "in"], `no carcasses can hang in '${name}'`, listWords(chillers), remedy)]),
      ...(due === null || until === null || until > due
        ? []
        : [
            faultAt(
              [...held.at, "until"],
              "it is released before it comes",
              `after ${load.value.at}`,
              "check the hours",
            ),
          ]),
    ];
  });
}
