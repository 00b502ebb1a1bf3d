import { readQuantity, temperature } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, located, locatedList } from "./located.ts";
import { stagesOf, workplacesOf, writtenDoes } from "./stages.ts";

/** What the keys of a dwell say of each other. */
export function dwells(json: unknown): Fault[] {
  const all = stagesOf(json).filter(({ value }) => writtenDoes(value, "hold heads"));
  return all.flatMap((dwell) => [
    ...dwellOrChilling(dwell),
    ...wholeHooks(dwell),
    ...temperatures(located(json, ...dwell.at, "chilling")),
    ...carcassWeight(json, located(json, ...dwell.at, "chilling")),
  ]);
}

function dwellOrChilling({ at, value }: Located): Fault[] {
  const hasDwell = value.dwell !== undefined;
  if (hasDwell !== (value.chilling !== undefined)) return [];
  const found = hasDwell ? "both a dwell and a chilling" : "neither a dwell nor a chilling";
  const remedy = hasDwell ? "keep one" : 'write for example "dwell": "150 s"';
  return [faultAt(at, found, 'exactly one of "dwell" and "chilling"', remedy)];
}

function wholeHooks({ at, value }: Located): Fault[] {
  const { places, headsPerHook } = value;
  if (typeof places !== "number" || typeof headsPerHook !== "number" || places % headsPerHook === 0) return [];
  const found = `${places} places do not fill whole hooks of ${headsPerHook} heads each`;
  return [faultAt([...at, "places"], found, `a multiple of ${headsPerHook}`, "places count heads, not hooks")];
}

function temperatures(chilling: Located | null): Fault[] {
  if (chilling === null) return [];
  const { at, value } = chilling;
  const start = readQuantity(temperature, value.start ?? "38 degC").value;
  const air = readQuantity(temperature, value.air).value;
  const core = readQuantity(temperature, value.core).value;
  if (start === null || air === null || core === null || (air < core && core < start)) return [];
  const found =
    core <= air
      ? `the core (${core} °C) would have to be colder than the air (${air} °C)`
      : `the core (${core} °C) is not below that of the carcass at the start (${start} °C)`;
  return [faultAt([...at, "core"], found, "above the air and below the start", "correct one of the three")];
}

/** How heavy a carcass is follows from what the line takes off, if it takes anything off. */
function carcassWeight(json: unknown, chilling: Located | null): Fault[] {
  if (chilling === null || chilling.value.carcassShare !== undefined) return [];
  if (workplacesOf(json).some(({ at }) => locatedList(json, ...at, "takesOff").length > 0)) return [];
  const found = "missing, and nothing to compute it from: no stage takes anything off";
  return [faultAt([...chilling.at, "carcassShare"], found, 'a share such as "53 %"', 'add "carcassShare"')];
}
