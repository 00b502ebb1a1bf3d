import type { Fault } from "../fault.ts";
import { breaksForSomeone } from "./breaksForSomeone.ts";
import { byProductShares } from "./byProductShares.ts";
import { calendar } from "./calendar.ts";
import { chains } from "./chains.ts";
import { cooling } from "./cooling.ts";
import { crateHandling } from "./crateHandling.ts";
import { dwells } from "./dwells.ts";
import { enoughPeople } from "./enoughPeople.ts";
import { hanging } from "./hanging.ts";
import { limitOrder } from "./limitOrder.ts";
import { oneCurrency } from "./oneCurrency.ts";
import { paces } from "./paces.ts";
import { plantUtilities } from "./plantUtilities.ts";
import { presentation } from "./presentation.ts";
import { references } from "./references.ts";
import { safeStop } from "./safeStop.ts";
import { sharedBreakdowns } from "./sharedBreakdowns.ts";
import { sharesBy } from "./sharesBy.ts";
import { sizes } from "./sizes.ts";
import { sourcePaths } from "./sourcePaths.ts";
import { stationWork } from "./stationWork.ts";
import { stunned } from "./stunned.ts";
import { supplyHandling } from "./supplyHandling.ts";
import { uniqueNames } from "./uniqueNames.ts";
import { vesselFilling } from "./vesselFilling.ts";
import { ways } from "./ways.ts";

const RULES = [
  uniqueNames,
  references,
  sharedBreakdowns,
  ways,
  enoughPeople,
  stationWork,
  paces,
  sharesBy,
  dwells,
  cooling,
  chains,
  hanging,
  byProductShares,
  presentation,
  plantUtilities,
  vesselFilling,
  supplyHandling,
  crateHandling,
  calendar,
  safeStop,
  stunned,
  breaksForSomeone,
  limitOrder,
  oneCurrency,
  sizes,
  sourcePaths,
];

/** What the parts of a plan file say of each other, as far as they are sound. */
export function checkRules(json: unknown): Fault[] {
  return RULES.flatMap((rule) => rule(json));
}
