import { formatShare, readShare } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, locatedList } from "./located.ts";
import { chainStationsOf, stagesOf } from "./stages.ts";
import { wholeWay } from "./wholeWay.ts";

/** Shares written as 50 % and 50 % make no more than all, rounding aside. */
const ALL = 1 + 1e-9;

/** No more is taken off a head than there is of it: at any place of work, and along the line by live weight. */
export function byProductShares(json: unknown): Fault[] {
  const stages = stagesOf(json);
  const places = stages.flatMap((stage) => [stage, ...chainStationsOf(json, stage)]);
  const atOnce = places.flatMap(({ at }) => {
    const place = [...at, "takesOff"];
    return sharesOf(json, at) > ALL
      ? [faultAt(place, "the shares add up to more than 100 %", "100 % or less", "lower them")]
      : [];
  });
  return atOnce.length > 0 ? atOnce : alongTheLine(json, stages);
}

/** Along the way that heads take when nobody sends them elsewhere. */
function alongTheLine(json: unknown, stages: readonly Located[]): Fault[] {
  let total = 0;
  for (const stage of wholeWay(stages)) {
    for (const place of [stage, ...chainStationsOf(json, stage)]) {
      total += sharesOf(json, place.at, "live weight");
      if (total <= ALL) continue;
      const found = `with this, ${formatShare(total)} of the live weight is taken off along the line`;
      return [faultAt([...place.at, "takesOff"], found, "100 % or less", "lower the shares")];
    }
  }
  return [];
}

function sharesOf(json: unknown, at: Located["at"], of?: string): number {
  return locatedList(json, ...at, "takesOff")
    .filter(({ value }) => of === undefined || (value.of ?? "live weight") === of)
    .reduce((sum, { value }) => sum + (readShare(value.share).value ?? 0), 0);
}
