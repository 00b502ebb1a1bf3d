import type { Fault } from "../fault.ts";
import { breaksForSomeone } from "./breaksForSomeone.ts";
import { calendar } from "./calendar.ts";
import { enoughPeople } from "./enoughPeople.ts";
import { limitOrder } from "./limitOrder.ts";
import { references } from "./references.ts";
import { sizes } from "./sizes.ts";
import { sourcePaths } from "./sourcePaths.ts";
import { stationWork } from "./stationWork.ts";
import { supplyHandling } from "./supplyHandling.ts";
import { uniqueNames } from "./uniqueNames.ts";

const RULES = [
  uniqueNames,
  references,
  enoughPeople,
  stationWork,
  supplyHandling,
  calendar,
  breaksForSomeone,
  limitOrder,
  sizes,
  sourcePaths,
];

/** What the parts of a plan file say of each other, as far as they are sound. */
export function checkRules(json: unknown): Fault[] {
  return RULES.flatMap((rule) => rule(json));
}
