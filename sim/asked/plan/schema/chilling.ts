import { conductivity, density, length, specificHeat, speed, temperature } from "../../../text/units/index.ts";
import { quantity, quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";

const BY_ANALOGY = "by analogy with other lean meat; no figures for rabbit were found";

/** What the time to the core temperature is computed from. */
export function chilling() {
  return record({
    start: quantity(temperature)
      .prefault("38 degC")
      .describe("Temperature of the carcass at the start. Default: 38 degC, assumed: about body temperature."),
    air: quantity(temperature).describe("Temperature of the air."),
    core: quantity(temperature).describe("Core temperature at which the carcass may leave; above that of the air."),
    airSpeed: quantityAboveZero(speed).describe("Speed of the air at the carcass."),
    carcassLength: quantityAboveZero(length).describe("Length of the cylinder that stands for the carcass."),
    carcassShare: share()
      .optional()
      .describe("Weight of the carcass as a share of the live weight. Default: what the stages before it leave."),
    conductivity: quantityAboveZero(conductivity)
      .prefault("0.48 W/(m K)")
      .describe(`Thermal conductivity of the meat. Default: 0.48 W/(m K), ${BY_ANALOGY}.`),
    density: quantityAboveZero(density)
      .prefault("1070 kg/m3")
      .describe(`Density of the meat. Default: 1070 kg/m3, ${BY_ANALOGY}.`),
    specificHeat: quantityAboveZero(specificHeat)
      .prefault("3500 J/(kg K)")
      .describe(`Specific heat capacity of the meat. Default: 3500 J/(kg K), ${BY_ANALOGY}.`),
  }).describe(
    'Time to a core temperature, computed by conduction from the weight of the carcass. Either this or "dwell".',
  );
}
