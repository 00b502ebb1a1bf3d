import { z } from "zod";
import { length, speed, time } from "../../../text/units/index.ts";
import { byProducts } from "./byProducts.ts";
import { capital } from "./capital.ts";
import { CEILINGS } from "./ceilings.ts";
import { pace } from "./pace.ts";
import { quantity, quantityAboveZero } from "./readBy.ts";
import { record } from "./record.ts";
import { settings } from "./settings.ts";
import { commonParts, workParts } from "./stageParts.ts";
import { name, reference } from "./text.ts";
import { utilities } from "./utilities.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

/** A moving overhead chain with the stations that work on the heads riding it. */
export function chain(varying: VaryingQuantities) {
  return record({
    ...commonParts(varying),
    kind: z
      .literal("chain")
      .describe("A moving overhead chain: heads ride from the loading to the unloading point past its stations."),
    length: quantityAboveZero(length).describe("From the loading to the unloading point."),
    pitch: quantityAboveZero(length).describe("From one shackle to the next."),
    speed: quantityAboveZero(speed).describe("Speed of the chain."),
    pace: pace(),
    shackles: record({
      count: whole(1, CEILINGS.places).describe("Shackles in circulation."),
      back: quantity(time).describe("Time of their way back through the shackle washer."),
    })
      .nullable()
      .default(null)
      .describe("Detachable shackles that circulate. Default: null, they are fixed to the chain."),
    unfinishedTo: reference()
      .nullable()
      .default(null)
      .describe("Stage for heads that passed a window unfinished. Default: null; every station stops the chain."),
    stations: z
      .array(chainStation(varying))
      .max(CEILINGS.stages)
      .default([])
      .describe("Stations along the chain, in the order heads pass them. Default: none, it only carries."),
  });
}

function chainStation(varying: VaryingQuantities) {
  return record({
    name: name().describe("Name of the station; no stage has the same."),
    at: quantity(length).describe("From the loading point to the start of its window."),
    window: whole(1, CEILINGS.places).describe("Shackles within its reach; windows do not overlap."),
    ifUnfinished: z
      .enum(["stop the chain", "pass to trim"])
      .default("stop the chain")
      .describe('What happens when a head leaves the window unfinished; "pass to trim" needs "unfinishedTo".'),
    ...workParts(varying),
    takesOff: byProducts(),
    ...utilities(),
    capital: capital(),
    settings: settings(),
  });
}
