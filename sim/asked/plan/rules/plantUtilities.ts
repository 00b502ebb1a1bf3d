import { readQuantity, readShare, temperature } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, located, locatedList } from "./located.ts";

/** What the plant's consumers need to be reckoned by. */
export function plantUtilities(json: unknown): Fault[] {
  const told = located(json, "utilities");
  if (told === null) return [];
  const cold = readQuantity(temperature, told.value.coldWater ?? "10 degC").value;
  const zeros = ["heating", "compressor"].flatMap((key) => {
    const part = located(json, "utilities", key);
    return part !== null && readShare(part.value.efficiency ?? 1).value === 0
      ? [faultAt([...part.at, "efficiency"], "it is 0", "more than 0", "raise it")]
      : [];
  });
  const consumers = locatedList(json, "utilities", "consumers").flatMap(({ at, value }) => [
    ...coldHot(cold, readQuantity(temperature, located(value, "water")?.value.at).value, [...at, "water", "at"]),
    ...(value.during === "cleaning" && located(json, "day", "cleaning") === null
      ? [faultAt([...at, "during"], "cleaning, but the day has none", '"day.cleaning"', "say how long it takes")]
      : []),
  ]);
  return [...zeros, ...consumers];
}

function coldHot(cold: number | null, hot: number | null, at: readonly (string | number)[]): Fault[] {
  if (cold === null || hot === null || hot > cold) return [];
  return [
    faultAt(
      at,
      `${hot} \u00b0C is no warmer than the fresh water of ${cold} \u00b0C`,
      "warmer than that",
      "leave it out for cold water",
    ),
  ];
}
