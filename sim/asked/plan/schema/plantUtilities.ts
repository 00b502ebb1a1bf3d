import { z } from "zod";
import { density, flow, power, temperature, volume } from "../../../text/units/index.ts";
import { DURING } from "../plan.ts";
import { CEILINGS } from "./ceilings.ts";
import { quantity, share } from "./readBy.ts";
import { record } from "./record.ts";
import { name } from "./text.ts";

const MIN_RATIO = 1;
const MAX_RATIO = 20;

/** What the plant uses beside its stages: hot water, cleaning, compressed air, ventilation. */
export function plantUtilities() {
  return record({
    coldWater: quantity(temperature)
      .prefault("10 degC")
      .describe("Fresh water as it comes. Default: 10 degC, assumed."),
    heating: record({
      efficiency: share().prefault("90 %").describe("Heat in the water by fuel used. Default: 90 %, assumed."),
      recovered: share()
        .prefault("0 %")
        .describe(
          "Share of the heat that comes from the chillers' condensers or elsewhere for nothing. Default: none.",
        ),
    })
      .prefault({})
      .describe("How water is heated."),
    compressor: record({
      ratio: z
        .number()
        .gt(MIN_RATIO)
        .max(MAX_RATIO)
        .default(8)
        .describe("Absolute pressure after it by that before it. Default: 8, assumed."),
      efficiency: share()
        .prefault("70 %")
        .describe("Work of one stage without losses by electricity. Default: 70 %, common practice, no source."),
    })
      .prefault({})
      .describe("Compressed air."),
    wasteWater: record({
      cod: quantity(density)
        .nullable()
        .default(null)
        .describe(
          "Chemical oxygen demand of the waste water. No figure for rabbits was found. Default: null, not reckoned.",
        ),
      removed: share()
        .prefault("0 %")
        .describe("Share of it that screens and flotation on the site take out. Default: none."),
    })
      .prefault({})
      .describe("What leaves through the drains."),
    consumers: z.array(consumer()).max(CEILINGS.vessels).default([]).describe("What uses it. Default: none."),
  });
}

function consumer() {
  return record({
    name: name().describe("Name of the consumer, such as tool sterilisers."),
    during: z
      .enum(DURING)
      .default("work")
      .describe(
        '"work": as long as the line works; "cleaning": while it is cleaned; "all day": 24 hours. Default: work.',
      ),
    water: record({
      perHead: quantity(volume).prefault("0 L").describe("For each head hung. Default: none."),
      perHour: quantity(flow).prefault("0 L/h").describe("As long as it runs. Default: none."),
      perDay: quantity(volume).prefault("0 L").describe("Every day the same. Default: none."),
      at: quantity(temperature).optional().describe("Temperature that it is heated to. Default: cold."),
    })
      .prefault({})
      .describe("Water. Default: none."),
    air: quantity(flow).prefault("0 m3/h").describe("Compressed air, as the free air that is drawn in. Default: none."),
    power: quantity(power).prefault("0 kW").describe("Electricity, fans say. Default: none."),
  });
}
