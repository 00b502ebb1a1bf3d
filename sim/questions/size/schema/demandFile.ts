import { z } from "zod";
import {
  clock,
  freeText,
  money,
  name,
  pay,
  quantity,
  quantityAboveZero,
  record,
  share,
  site,
  type TextFiles,
  varyingQuantities,
  WAYS,
  whole,
} from "../../../asked/plan/index.ts";
import { length, mass, speed, temperature, time } from "../../../text/units/index.ts";
import { ALTERNATIVES } from "../alternatives.ts";
import { assumedValue } from "../assumed.ts";
import { businessKeys } from "./businessFile.ts";
import { handlingFile } from "./handlingFile.ts";
import { stepFile } from "./stepFile.ts";

const MAX_HEADS = 10_000_000;

const MAX_PEAK = 3;

const DAYS_OF_WEEK = 7;

const MAX_SHIFTS = 10;

const MAX_BREAKS = 20;

const MAX_CRATES = 10_000;

const MAX_PER_CRATE = 1000;

/** The shape of the demand file. What one part says of another is checked by `demandFaults`. */
export function demandFile(files: TextFiles) {
  const varying = varyingQuantities(files);
  return record({
    $schema: z.string().optional().describe("Where this schema lies, for editors."),
    name: name().describe("Name of the plan that comes of it."),
    notes: freeText().default("").describe("Anything a reader should know."),
    alternative: z
      .enum(ALTERNATIVES)
      .optional()
      .describe("Kind of plant to write the plan of. Default: the full line, live crates handled as in crates.way."),
    week: week().describe(
      "What a week is to bring: heads, carcasses or their mass; exactly one of the three, or none and the markets.",
    ),
    day: day().describe("Shifts and breaks."),
    animals: record({
      liveWeight: assumable("animals.liveWeight", varying.massAboveZero, "Live weight of a head."),
      deadOnArrival: assumable("animals.deadOnArrival", share(), "Share dead on arrival."),
      condemned: assumable("animals.condemned", share(), "Share condemned at inspection."),
      toTrim: assumable("animals.toTrim", share(), "Share sent from inspection to trim and back."),
      yield: assumable("animals.yield", share(), "Carcass as a share of live weight."),
      lot: whole(1, MAX_HEADS).optional().describe("Heads of a usual lot, from one farm. Default: those of a lorry."),
    })
      .prefault({})
      .describe("The animals and what becomes of them."),
    line: record({
      availability: assumable(
        "line.availability",
        share(),
        "Share of the hanging time in which the line runs at its rate.",
      ),
      handLoad: assumable("line.handLoad", share(), "Most load of a position worked by hand."),
      machineLoad: assumable("line.machineLoad", share(), "Most load of a machine, its repairs counted."),
      cover: assumable("line.cover", quantity(time), "Time that the places before a station can cover."),
      walking: assumable(
        "line.walking",
        quantity(time),
        "Walk to the next step of the same post, once a head; where posts are pooled.",
      ),
    })
      .prefault({})
      .describe("How full the line may be planned."),
    steps: z
      .record(z.string(), stepFile(varying))
      .prefault({})
      .describe("Steps by name, where they differ from the usual ones."),
    chilling: chilling().prefault({}).describe("The chiller."),
    chain: chain().prefault({}).describe("Overhead chain; its figures are told in any case."),
    crates: record({
      way: z
        .enum(WAYS)
        .default("hand-slid")
        .describe("How live crates are handled, where the alternative does not say. Default: hand-slid."),
      headsPerCrate: assumable("crates.headsPerCrate", whole(1, MAX_PER_CRATE), "Heads in a crate."),
      perLorry: assumable("crates.perLorry", whole(1, MAX_CRATES), "Crates on a lorry."),
      lead: assumable("crates.lead", quantity(time), "How long before the first shift the first lorry is due."),
      delay: assumable("crates.delay", varying.time, "How late lorries come."),
      away: assumable("crates.away", quantity(time), "From a lorry's leaving until its crates are back full."),
      handling: handlingFile(varying).prefault({}).describe("Steps on crates, by way of live handling."),
    })
      .prefault({})
      .describe("Crates and lorries."),
    byProducts: record({
      vessel: assumable("byProducts.vessel", quantityAboveZero(mass), "What a vessel holds."),
      emptying: assumable("byProducts.emptying", quantity(time), "How long it takes to empty one."),
    })
      .prefault({})
      .describe("Vessels for by-products, one for each."),
    pay: pay().nullable().default(null).describe("Of everybody; needs money. Default: null, not reckoned."),
    money: money()
      .nullable()
      .default(null)
      .describe("Prices for the plan, as a plan writes them. Default: null, none."),
    site: site()
      .nullable()
      .default(null)
      .describe("Building and services for the plan, as a plan writes them. Default: null, usual figures."),
    ...businessKeys(),
  });
}

export type DemandFile = z.output<ReturnType<typeof demandFile>>;

function week() {
  return record({
    heads: whole(1, MAX_HEADS).optional().describe("Live heads a week."),
    carcasses: whole(1, MAX_HEADS).optional().describe("Carcasses a week."),
    carcassMass: quantityAboveZero(mass).optional().describe("Mass of the carcasses of a week."),
    days: whole(1, DAYS_OF_WEEK).describe("Working days of the week."),
    peak: assumable("week.peak", z.number().min(1).max(MAX_PEAK), "The busiest day over the mean day."),
  });
}

function day() {
  const shift = record({
    name: name().describe("Name of the shift."),
    from: clock().describe("Start of the shift."),
    to: clock().describe("End of the shift. Hours from 24 on are those of the next day."),
  });
  const pause = record({
    name: name().describe("Name of the break."),
    at: clock().describe("When it starts."),
    length: quantityAboveZero(time).describe("How long it lasts."),
  });
  return record({
    shifts: z.array(shift).min(1).max(MAX_SHIFTS).describe("One after another, without overlap."),
    breaks: z.array(pause).max(MAX_BREAKS).default([]).describe("Breaks of everybody on the line. Default: none."),
    preStart: assumable("day.preStart", quantity(time), "Checks before the first head."),
    cleaning: assumable("day.cleaning", quantity(time), "Cleaning after the last work."),
  });
}

function chilling() {
  return record({
    air: assumable("chilling.air", quantity(temperature), "Temperature of the air."),
    core: assumable("chilling.core", quantity(temperature), "Core temperature at which a carcass leaves."),
    airSpeed: assumable("chilling.airSpeed", quantityAboveZero(speed), "Speed of the air at the carcass."),
    carcassLength: assumable("chilling.carcassLength", quantityAboveZero(length), "Length of the carcass."),
    evaporating: assumable(
      "chilling.evaporating",
      quantity(temperature),
      "Temperature at which the refrigerant evaporates.",
    ),
    condensing: assumable("chilling.condensing", quantity(temperature), "Temperature at which it condenses."),
    shareOfIdeal: assumable("chilling.shareOfIdeal", share(), "Coefficient of performance by that of the ideal cycle."),
    fans: assumable("chilling.fans", share(), "Electricity of the fans by the most heat of the carcasses."),
    otherHeat: assumable(
      "chilling.otherHeat",
      share(),
      "Heat of doors, people and walls by the most heat of the carcasses.",
    ),
    headsPerHook: assumable("chilling.headsPerHook", z.literal([1, 2, 4]), "Heads on one hook."),
    spare: assumable("chilling.spare", share(), "Spare places."),
  });
}

function chain() {
  return record({
    use: z
      .boolean()
      .default(false)
      .describe("Let the plan bleed on a chain instead of a rail or trough. Default: false."),
    pitch: assumable("chain.pitch", quantityAboveZero(length), "From one shackle to the next."),
    filled: assumable("chain.filled", share(), "Share of the shackles that carry a head."),
    back: assumable("chain.back", quantity(time), "Way of a shackle back through its washer."),
  });
}

/** A key that may be left out: the assumption made for this path then stands in its place, and the description says so. */
function assumable<Schema extends z.ZodType>(path: string, schema: Schema, words: string) {
  const value = assumedValue(path);
  return schema
    .prefault(value as z.input<Schema>)
    .describe(`${words} Assumed where it is left out: ${JSON.stringify(value)}.`);
}
