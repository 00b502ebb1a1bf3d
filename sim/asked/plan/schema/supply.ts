import { z } from "zod";
import { time } from "../../../text/units/index.ts";
import { CEILINGS } from "./ceilings.ts";
import { clock, quantityAboveZero, share, shareAboveZero } from "./readBy.ts";
import { oneKeyOf, record } from "./record.ts";
import { name, reference } from "./text.ts";
import type { VaryingQuantities } from "./varying.ts";
import { whole } from "./whole.ts";

/** Where the heads come from: exactly one of the three. */
export function supply(varying: VaryingQuantities) {
  return oneKeyOf({
    loads: loads(varying)
      .optional()
      .describe(`Lorries with crates; needs "liveHandling". At most ${CEILINGS.loads} loads, counting repeats.`),
    stream: record({
      interarrival: varying.timeAboveZero.describe("Time between one head and the next."),
      heads: whole(1, CEILINGS.heads).describe("How many come."),
      whenFull: z
        .enum(["wait", "turn away"])
        .default("wait")
        .describe("What a head does when the first stage has no place for it."),
      liveWeight: liveWeight(varying),
    })
      .optional()
      .describe("Single heads that come one by one."),
    saturated: record({
      heads: whole(1, CEILINGS.heads).describe("How many heads the run takes."),
      liveWeight: liveWeight(varying),
    })
      .optional()
      .describe("The first stage never runs out of heads: a run that shows what the line can do."),
  });
}

/** The lorries of a day. */
export function loads(varying: VaryingQuantities) {
  return z.array(load(varying)).min(1).max(CEILINGS.loads);
}

function load(varying: VaryingQuantities) {
  return record({
    name: name().describe("Name of the load; repeats are numbered behind it."),
    lot: name()
      .nullable()
      .default(null)
      .describe(
        "Farm or lot that its animals are of, where several loads are of one. Default: null, a lot of its own.",
      ),
    at: clock().describe("When the lorry is due."),
    delay: varying.time.nullable().default(null).describe("Added to the due time. Default: null, always on time."),
    comes: shareAboveZero()
      .prefault(1)
      .describe("Chance that the lorry comes at all; each of repeated ones by itself. Default: 1, always."),
    crates: whole(1, CEILINGS.cratesPerLoad).describe("Crates on the lorry."),
    headsPerCrate: whole(1, CEILINGS.headsPerCrate).describe("Heads in each crate."),
    withdrawn: record({
      chance: shareAboveZero().describe("Chance that all of it is withdrawn."),
      at: reference().describe("Stage at the end of whose work its heads are taken off."),
      as: reference().describe("Which of that stage's removals they count as."),
    })
      .nullable()
      .default(null)
      .describe("The whole load may be withdrawn, at inspection say. Default: null, it never is."),
    held: record({
      in: reference().describe("Dwell stage in which its carcasses hang apart, a chiller."),
      until: clock().describe("When they are released; hours from 24 on are those of the next day."),
    })
      .nullable()
      .default(null)
      .describe("Its carcasses are held: others pass them, and none leaves before the hour. Default: null, no."),
    deadOnArrival: share().prefault(0).describe("Share of the heads that are dead on arrival."),
    liveWeight: liveWeight(varying),
    repeat: record({
      every: quantityAboveZero(time).describe("Time from one lorry to the next."),
      times: whole(1, CEILINGS.loads).describe("How many lorries in all, the first one included."),
    })
      .optional()
      .describe("The same lorry again and again. Default: once."),
  });
}

/** Live weight of one head. */
export function liveWeight(varying: VaryingQuantities) {
  return varying.massAboveZero
    .prefault("2.5 kg")
    .describe(
      "Live weight of a head. Default: the middle of the 2.4 to 2.6 kg that Lebas, Cuniculture, gives for Europe.",
    );
}
