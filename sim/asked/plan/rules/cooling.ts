import { power, readQuantity, readShare, temperature } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, located } from "./located.ts";
import { stagesOf, writtenDoes } from "./stages.ts";

/** What a cold room says of itself, and of the stage it is of. */
export function cooling(json: unknown): Fault[] {
  return stagesOf(json).flatMap((stage) => {
    const told = writtenDoes(stage.value, "hold heads") ? located(json, ...stage.at, "cooling") : null;
    return told === null ? [] : [...ofStage(stage, told), ...copOrCycle(told), ...cycle(stage, told), ...fans(told)];
  });
}

function ofStage(stage: Located, { at }: Located): Fault[] {
  const faults: Fault[] = [];
  if (stage.value.chilling === undefined)
    faults.push(
      faultAt(
        at,
        "this stage has no chilling, so there is no heat to take out",
        'a stage with "chilling"',
        'give "power" instead',
      ),
    );
  if ((readQuantity(power, stage.value.power ?? "0 kW").value ?? 0) > 0)
    faults.push(
      faultAt(
        [...stage.at, "power"],
        'both a power and a "cooling" that gives the power',
        "one of the two",
        "keep one",
      ),
    );
  return faults;
}

function copOrCycle({ at, value }: Located): Fault[] {
  const temperatures = [value.evaporating, value.condensing].filter((each) => each !== undefined).length;
  const given = value.cop !== undefined;
  if (given ? temperatures === 0 : temperatures === 2) return [];
  const allowed = '"cop", or both "evaporating" and "condensing"';
  const found = given ? "both a cop and the temperatures it is computed from" : "neither a cop nor both temperatures";
  return [
    faultAt(
      at,
      found,
      allowed,
      given ? "keep one" : 'write for example "evaporating": "-8 degC", "condensing": "35 degC"',
    ),
  ];
}

/** Heat goes from the air to what evaporates, and from what condenses to the outside. */
function cycle(stage: Located, { at, value }: Located): Fault[] {
  const evaporating = readQuantity(temperature, value.evaporating).value;
  const condensing = readQuantity(temperature, value.condensing).value;
  const air = readQuantity(temperature, located(stage.value, "chilling")?.value.air).value;
  const faults: Fault[] = [];
  if (evaporating !== null && air !== null && evaporating >= air)
    faults.push(
      faultAt(
        [...at, "evaporating"],
        `${evaporating} \u00b0C in air of ${air} \u00b0C takes no heat out`,
        "colder than the air",
        "lower it",
      ),
    );
  if (evaporating !== null && condensing !== null && condensing <= evaporating)
    faults.push(
      faultAt(
        [...at, "condensing"],
        "no warmer than the evaporating temperature",
        "warmer than that",
        "correct one of the two",
      ),
    );
  if (readShare(value.shareOfIdeal ?? 1).value === 0)
    faults.push(faultAt([...at, "shareOfIdeal"], "it is 0", "more than 0", "raise it"));
  return faults;
}

function fans(told: Located): Fault[] {
  const fan = located(told.value, "fans");
  if (fan === null) return [];
  const { power: given, flow, pressure, efficiency } = fan.value;
  const place = [...told.at, "fans"];
  if (readShare(efficiency ?? 1).value === 0)
    return [faultAt([...place, "efficiency"], "it is 0", "more than 0", "raise it")];
  const moved = [flow, pressure].filter((each) => each !== undefined).length;
  if (given === undefined ? moved !== 1 : moved === 0) return [];
  const found =
    given === undefined
      ? "a flow without a pressure, or the other way round"
      : "both a power and the flow it is computed from";
  return [faultAt(place, found, '"power", or both "flow" and "pressure"', "keep one of them")];
}
