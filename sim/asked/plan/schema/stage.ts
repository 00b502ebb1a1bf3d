import { z } from "zod";
import type { StageKind } from "../../../text/kinds/index.ts";
import { conductivity, density, length, mass, specificHeat, speed, temperature } from "../../../text/units/index.ts";
import { CEILINGS } from "./ceilings.ts";
import { chain } from "./chain.ts";
import { cooling } from "./cooling.ts";
import { quantity, quantityAboveZero, share } from "./readBy.ts";
import { record } from "./record.ts";
import { commonParts, workParts } from "./stageParts.ts";
import { reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

const BY_ANALOGY = "by analogy with other lean meat; no figures for rabbit were found";

/** One stage: a station that works on heads, a dwell that holds them for a time, or a chain that carries them along. */
export function stage(varying: VaryingQuantities) {
  const kinds = {
    station: station(varying),
    dwell: dwell(varying),
    chain: chain(varying),
  } satisfies Record<StageKind, unknown>;
  type Kinds = (typeof kinds)[StageKind];
  return z.discriminatedUnion("kind", Object.values(kinds) as [Kinds, ...Kinds[]]);
}

function station(varying: VaryingQuantities) {
  return record({
    ...commonParts(varying),
    kind: z.literal("station").describe("A station: parallel positions with places before them."),
    work: z
      .enum(["machine", "manual"])
      .optional()
      .describe('"manual" needs a crew. Default: "manual" when a crew is named, else "machine".'),
    buffer: z
      .union([whole(0, CEILINGS.places), z.null()])
      .default(0)
      .describe("Places before the positions; null for no limit."),
    ...workParts(varying),
    weights: record({
      from: quantityAboveZero(mass).describe("Least live weight it takes."),
      to: quantityAboveZero(mass).describe("Most live weight it takes."),
      else: reference().describe("Stage that the others go to, unworked."),
    })
      .nullable()
      .default(null)
      .describe("Live weights the machine can be set to. Default: null, every weight."),
  });
}

function dwell(varying: VaryingQuantities) {
  return record({
    ...commonParts(varying),
    kind: z.literal("dwell").describe("A dwell: heads stay side by side for at least a time and leave in order."),
    places: z.union([whole(1, CEILINGS.places), z.null()]).describe("Heads it holds; null for no limit."),
    headsPerHook: z
      .literal([1, 2, 4])
      .default(1)
      .describe("Heads on one hook; the hook is free again when its last head has left. Default: 1."),
    dwell: varying.time.optional().describe('Least time each head stays. Either this or "chilling".'),
    chilling: chilling().optional(),
    cooling: cooling()
      .optional()
      .describe('What its electricity follows from; with "chilling", in place of "power". Default: the power alone.'),
  });
}

/** What the time to the core temperature is computed from. */
function chilling() {
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
