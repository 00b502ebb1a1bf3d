import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a step with both times",
    (plan) => (plan.liveHandling.unloading.perCrate = "5 s"),
    ['liveHandling.unloading: both "perCrate" and "perCycle"; allowed: exactly one of the two; keep one'],
  ],
  [
    "a step with no time",
    (plan) => delete plan.liveHandling.feeding.perCycle,
    [
      'liveHandling.feeding: neither "perCrate" nor "perCycle"; allowed: exactly one of the two; write for example "perCrate": "20 s"',
    ],
  ],
  [
    "the time of one crate for a cycle of several",
    (plan) => (plan.liveHandling.washing.cratesPerCycle = 4),
    [
      'liveHandling.washing.perCrate: "perCrate" is the time for one crate, but a cycle takes 4; allowed: "perCycle"; write the time for the whole cycle in "perCycle"',
    ],
  ],
  [
    "washing without restacking",
    (plan) => {
      plan.sharedBreakdowns = [];
      delete plan.liveHandling.restacking;
      delete plan.liveHandling.palletsOut;
    },
    [
      'liveHandling: "washing" without "restacking"; allowed: both of them or neither; add "restacking" or delete "washing"',
    ],
  ],
  [
    "restacking without washing",
    (plan) => {
      delete plan.liveHandling.washing;
    },
    [
      'liveHandling: "restacking" without "washing"; allowed: both of them or neither; add "washing" or delete "restacking"',
    ],
  ],
  [
    "pallets slid by hand",
    (plan) => {
      plan.liveHandling.way = "hand-slid";
    },
    ['liveHandling.palletsOut: pallets, but the way is "hand-slid"; allowed: only with "way": "automatic"; delete it'],
  ],
  [
    "pallets out without the steps before",
    (plan) => {
      plan.sharedBreakdowns = [];
      delete plan.liveHandling.washing;
      delete plan.liveHandling.restacking;
      plan.liveHandling.fleet = null;
    },
    [
      'liveHandling.palletsOut: pallets out without "washing" and "restacking"; allowed: after the two; add the two or delete it',
    ],
  ],
  [
    "a fleet without a way back",
    (plan) => {
      plan.sharedBreakdowns = [];
      delete plan.liveHandling.washing;
      delete plan.liveHandling.restacking;
      delete plan.liveHandling.palletsOut;
    },
    [
      'liveHandling.fleet: a limited number of crates, but the plan does not follow empty crates back; allowed: with "washing" and "restacking"; add the two or delete the fleet',
    ],
  ],
  [
    "a fleet smaller than a load",
    (plan) => (plan.liveHandling.fleet.crates = 59),
    [
      "liveHandling.fleet.crates: 59 crates in all, but the largest load has 60; allowed: 60 or more; raise it or send smaller loads",
    ],
  ],
  [
    "a breakdown called as the filter change is",
    (plan) => (plan.liveHandling.washing.breakdowns = [{ name: "filter change", uptime: "1 h", repair: "1 min" }]),
    [
      "liveHandling.washing.breakdowns[0].name: 'filter change' is what \"filterChange\" is called; allowed: another name; rename it",
    ],
  ],
  [
    "a stage called as a crate step is",
    (plan) => (stageOf(plan, "bleeding").name = "destacking"),
    [
      "day.safeStop.to: 'bleeding' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'sticking', 'pre-loosening', 'destacking', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; name one of these or add the stage",
      "line[3].name: 'destacking' is the name of a crate step; allowed: another name; rename the stage",
    ],
  ],
  [
    "a way that there is not",
    (plan) => (plan.liveHandling.way = "robot"),
    [
      "liveHandling.way: \"robot\" is not one of the choices; allowed: 'hand-slid', 'lift', 'automatic'; write one of these",
    ],
  ],
  [
    "places before feeding, which is what the lairage is",
    (plan) => (plan.liveHandling.feeding.places = 4),
    [
      "liveHandling.feeding.places: unknown key; allowed: 'positions', 'perCrate', 'perCycle', 'cratesPerCycle', 'crew', 'peoplePerPosition', 'breakdowns', 'waterPerCrate', 'waterPerHour', 'power'; delete it or write one of these",
    ],
  ],
  [
    "a head in hand where there are crates",
    (plan) => (plan.liveHandling.feeding.breakdowns[0].headInHand = "resume"),
    [
      "liveHandling.feeding.breakdowns[0].headInHand: unknown key; allowed: 'name', 'clock', 'scope', 'uptime', 'repair', 'replaced', 'crew'; delete it or write one of these",
    ],
  ],
  [
    "a breakdown named twice",
    (plan) => plan.liveHandling.feeding.breakdowns.push({ name: "jam", uptime: "1 h", repair: "1 min" }),
    [
      "liveHandling.feeding.breakdowns[1].name: 'jam' appears twice among the breakdowns of this stage; allowed: each name once; rename one of them",
    ],
  ],
];

describe("what a plan says of live handling", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
