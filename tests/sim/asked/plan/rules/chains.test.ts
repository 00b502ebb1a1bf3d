import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a chain shorter than its pitch",
    (plan) => {
      stageOf(plan, "kill chain").length = "20 cm";
    },
    ["line[2].length: the chain is shorter than its pitch; allowed: one pitch or more; lengthen it"],
  ],
  [
    "a chain shorter than its windows",
    (plan) => (stageOf(plan, "kill chain").length = "9 m"),
    [
      "line[2].stations[1]: the chain is shorter than its windows: that of 'pre-loosening' ends at 9.3 m, the last shackle at 9 m; allowed: 9 m or less; lengthen the chain or move the window",
    ],
  ],
  [
    "windows that overlap",
    (plan) => (stageOf(plan, "pre-loosening").at = "1.2 m"),
    [
      "line[2].stations[1].at: the window of 'pre-loosening' begins at 1.2 m, before that of 'sticking' ends at 1.5 m; allowed: 1.5 m or later; move one or make it shorter",
    ],
  ],
  [
    "stations out of order",
    (plan) => stageOf(plan, "kill chain").stations.reverse(),
    [
      "line[2].stations[1].at: 'sticking' stands before 'pre-loosening' on the chain, but after it in the list; allowed: 9.3 m or later; put stations in the order heads pass them",
    ],
  ],
  [
    "too many shackles",
    (plan) => (stageOf(plan, "kill chain").pitch = "0.1 mm"),
    ["line[2].length: 120000 shackles; allowed: 100000 or less; check length and pitch"],
  ],
  [
    "a window to pass without a stage",
    (plan) => (stageOf(plan, "kill chain").unfinishedTo = null),
    [
      "line[2].stations[1].ifUnfinished: heads may pass 'pre-loosening' unfinished, but the chain does not say where they go; allowed: \"stop the chain\", or a stage for them; add \"unfinishedTo\" to 'kill chain'",
    ],
  ],
  [
    "neither a cycle nor a rate on a chain",
    (plan) => delete stageOf(plan, "sticking").cycle,
    [
      'line[2].stations[0]: neither a cycle nor a rate; allowed: exactly one of "cycle" and "rate"; write for example "cycle": "5.5 s"',
    ],
  ],
  [
    "a chain that stands still",
    (plan) => (stageOf(plan, "kill chain").speed = "0 m/s"),
    ['line[2].speed: "0 m/s" is too small; allowed: more than 0; write for example "3.5 m/min"'],
  ],
  [
    "a station on a chain named as a stage",
    (plan) => (stageOf(plan, "sticking").name = "bleeding"),
    [
      "line[3].name: 'bleeding' appears twice among the stages; allowed: each name once; rename one of them",
      "day.breaks[0].stages[0]: 'sticking' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'pre-loosening', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'stunning'?",
      "limits[0].to: 'sticking' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'pre-loosening', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'stunning'?",
      "gates[0].to: 'sticking' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'pre-loosening', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'stunning'?",
      "sources[1].path: 'sticking' is not a name in 'line[\"kill chain\"].stations'; allowed: 'bleeding', 'pre-loosening'; write one of these",
    ],
  ],
  [
    "more stages than are read, stations on chains counted",
    (plan) => {
      const chain = stageOf(plan, "kill chain");
      chain.length = "200 m";
      for (let i = 0; i < 290; i++)
        chain.stations.push({ name: `s${i}`, at: `${(40 + i) * 0.3 + 0.01} m`, window: 1, cycle: "1 s" });
    },
    ["line: 302 stages, counting stations on chains; allowed: 300 or less; combine some"],
  ],
];

describe("what a plan says of chains", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
