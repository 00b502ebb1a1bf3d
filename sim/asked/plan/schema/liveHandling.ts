import { z } from "zod";
import { flow, power, time, volume } from "../../../text/units/index.ts";
import { WAYS } from "../plan.ts";
import { breakdowns } from "./breakdowns.ts";
import { CEILINGS } from "./ceilings.ts";
import { crewName, crewNames } from "./crewNames.ts";
import { quantity, quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

/** How crates get from the lorry to the hanging point, and back. */
export function liveHandling(varying: VaryingQuantities) {
  const back = backStep(varying);
  return record({
    way: z
      .enum(WAYS)
      .default("hand-slid")
      .describe(
        "Crates slid by hand on rollers and hosed down; a lift for the top crate of a stack, with an in-line washer; or automatic destacking of pallets.",
      ),
    unloading: record(stepParts(varying)).describe("From the lorry to the lairage."),
    lairageCrates: z
      .union([whole(1, CEILINGS.crates), z.null()])
      .describe("Crates the lairage holds; null for no limit. A lorry waits while it is full."),
    feeding: record(stepParts(varying)).describe("From the lairage to the hanging point."),
    cratesAtHanging: whole(1, CEILINGS.cratesPerLoad)
      .default(2)
      .describe("Crates that stand at the hanging point at once, the one being emptied included."),
    washing: washing(varying)
      .optional()
      .describe("Of the emptied crates; with restacking. Default: empty crates are not followed."),
    restacking: back.optional().describe("Of the washed crates, for the lorry."),
    palletsOut: back.optional().describe('Of the stacked pallets; only with the way "automatic".'),
    fleet: fleet(),
  });
}

function stepParts(varying: VaryingQuantities) {
  return {
    positions: whole(1, CEILINGS.positions).default(1).describe("Crates or stacks handled side by side."),
    perCrate: varying.time.optional().describe('Time for one crate. Either this or "perCycle".'),
    perCycle: varying.time
      .optional()
      .describe('Time for up to "cratesPerCycle" crates at once. Either this or "perCrate".'),
    cratesPerCycle: whole(1, CEILINGS.cratesPerLoad)
      .default(1)
      .describe("Crates handled at once: a stack, a level, a pallet. Default: 1."),
    crew: crewNames("Crew that holds each position meanwhile."),
    peoplePerPosition: whole(1, CEILINGS.peoplePerPosition).default(1).describe("People it takes at each position."),
    breakdowns: breakdowns(varying),
    waterPerCrate: quantity(volume).prefault("0 L").describe("Water for each crate. Default: none."),
    waterPerHour: quantity(flow)
      .prefault("0 L/h")
      .describe("Water used all the time, whether crates come or not. Default: none."),
    power: quantity(power).prefault("0 kW").describe("Power drawn as long as the line runs. Default: none."),
  };
}

function backParts(varying: VaryingQuantities) {
  return {
    ...stepParts(varying),
    places: z
      .union([whole(1, CEILINGS.crates), z.null()])
      .default(null)
      .describe("Crates that can wait before it. Default: null, no limit."),
  };
}

function backStep(varying: VaryingQuantities) {
  return record(backParts(varying));
}

function washing(varying: VaryingQuantities) {
  return record({
    ...backParts(varying),
    waterReused: share().prefault(0).describe("Share of the wash water that is used again. Default: 0."),
    filterChange: record({
      afterRunning: quantityAboveZero(time).describe("Running time from one change to the next."),
      takes: quantity(time).describe("How long it stands."),
      crew: crewName("Crew that gives one person for it. Default: null, help is always at hand."),
    })
      .nullable()
      .default(null)
      .describe("Filter of the wash water. Default: null, none."),
  });
}

function fleet() {
  return record({
    crates: whole(1, CEILINGS.crates).describe("Crates in circulation; the largest load must find enough."),
    away: quantity(time).describe("Time from a lorry's leaving with empty crates until they are back full."),
  })
    .nullable()
    .default(null)
    .describe(
      'A finite number of crates; needs "washing" and "restacking". Default: null, as many as the loads bring.',
    );
}
