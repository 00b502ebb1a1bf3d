import { z } from "zod";
import { REFRIGERANTS } from "../../../maths/chilling/index.ts";
import { flow, length, power, pressure, rate, temperature, time } from "../../../text/units/index.ts";
import { CEILINGS } from "./ceilings.ts";
import { quantity, quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";
import { name } from "./text.ts";

const MAX_COP = 20;
const MAX_PEOPLE = 100;

/** What the electricity of a chiller follows from, besides the heat of the carcasses. */
export function cooling() {
  return record({
    cop: z
      .number()
      .gt(0)
      .max(MAX_COP)
      .optional()
      .describe("Heat taken out for each unit of electricity. Either this or evaporating and condensing."),
    evaporating: quantity(temperature).optional().describe("Temperature at which the refrigerant evaporates."),
    condensing: quantity(temperature).optional().describe("Temperature at which it condenses."),
    refrigerant: z.enum(REFRIGERANTS).default("ammonia").describe("Whose ideal cycle is taken. Default: ammonia."),
    shareOfIdeal: share()
      .prefault("65 %")
      .describe(
        "Coefficient of performance of the real machine by that of the ideal cycle. Default: 65 %; 60 to 75 % is common practice, no source.",
      ),
    fans: fans().prefault({}).describe("Fans in the room: what they draw comes back as heat. Default: none."),
    lights: quantity(power).prefault("0 kW").describe("Lights in the room. Default: none."),
    walls: quantity(power).prefault("0 kW").describe("Heat through walls, floor and ceiling. Default: none."),
    people: z.number().min(0).max(MAX_PEOPLE).default(0).describe("People in the room, on the average. Default: 0."),
    humidity: share().prefault("85 %").describe("Relative humidity in the room. Default: 85 %, assumed."),
    doors: z.array(door()).max(CEILINGS.byProducts).default([]).describe("Doors that let warm air in. Default: none."),
  });
}

function fans() {
  return record({
    power: quantity(power)
      .optional()
      .describe("Electricity of all fans. Either this or flow, pressure and efficiency."),
    flow: quantity(flow).optional().describe("Air moved."),
    pressure: quantity(pressure).optional().describe("Pressure that they work against."),
    efficiency: share().prefault("50 %").describe("Of fan and motor together. Default: 50 %, assumed."),
  });
}

function door() {
  return record({
    name: name().describe("Name of the door."),
    width: quantityAboveZero(length).describe("Clear width."),
    height: quantityAboveZero(length).describe("Clear height."),
    outside: quantity(temperature).describe("Temperature of the air outside."),
    outsideHumidity: share().prefault("70 %").describe("Its relative humidity. Default: 70 %, assumed."),
    passes: quantity(rate).describe("How often somebody passes."),
    openFor: quantity(time).describe("How long it stands open for a pass."),
    flowFactor: share()
      .prefault("80 %")
      .describe(
        "Flow through it by the full flow of a door that stays open. Default: 80 % (ASHRAE Refrigeration, from memory).",
      ),
    curtain: share()
      .prefault("0 %")
      .describe(
        "Share of the flow that a curtain stops: air 75 to 80 %, plastic strips about 93 % (Pham and Oliver 1983). Default: none.",
      ),
  });
}
