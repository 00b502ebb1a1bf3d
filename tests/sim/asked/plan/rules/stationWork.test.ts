import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "weights the wrong way round",
    (plan) => (stageOf(plan, "skinning machine").weights.from = "3.2 kg"),
    ["line[4].weights: from is not smaller than to; allowed: from < to; put the two in order"],
  ],
  [
    "a weight factor that is no number",
    (plan) => (stageOf(plan, "skinning machine").weightFactor.perKg = "0.2"),
    ['line[4].weightFactor.perKg: "0.2" is of the wrong kind; allowed: a number'],
  ],
  [
    "water by the hour as a volume",
    (plan) => (stageOf(plan, "evisceration").water.perHour = "200 L"),
    [
      'line[6].water.perHour: "200 L" has the unit \'L\', a unit of volume; allowed: a flow in L/h, L/min, m3/h, m³/h, L/s or m3/s; write for example "200 L/h"',
    ],
  ],
  [
    "energy as a power",
    (plan) => (stageOf(plan, "stunning").energyPerHead = "0.02 kW"),
    [
      'line[1].energyPerHead: "0.02 kW" has the unit \'kW\', a unit of power; allowed: an energy in J, kJ, Wh, MJ or kWh; write for example "0.02 kWh"',
    ],
  ],
];

describe("what a plan says of stations", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
