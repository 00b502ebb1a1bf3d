import { energy, flow, power, volume } from "../../../text/units/index.ts";
import { quantity } from "./readBy.ts";
import { record } from "./record.ts";

/** Water and energy of one stage. */
export function utilities() {
  return {
    water: record({
      perHead: quantity(volume).prefault("0 L").describe("For each head worked on. Default: none."),
      perHour: quantity(flow)
        .prefault("0 L/h")
        .describe("As long as the crew is there, whether heads come or not. Default: none."),
    })
      .prefault({})
      .describe("Water used. Default: none."),
    energyPerHead: quantity(energy).prefault("0 kWh").describe("Energy for each head worked on. Default: none."),
    power: quantity(power)
      .prefault("0 kW")
      .describe("Power drawn as long as the line runs, whether heads come or not. Default: none."),
  };
}
