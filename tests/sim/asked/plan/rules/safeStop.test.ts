import { describe, expect, it } from "vitest";
import { type Loose, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a stretch that runs up the line",
    (plan) => (plan.day.safeStop = { from: "bleeding", to: "sticking" }),
    [
      "day.safeStop.to: 'sticking' stands before 'bleeding' in the line; allowed: the same stage as from, or a later one; swap the two",
    ],
  ],
  [
    "a stretch to a stage that is not there",
    (plan) => (plan.day.safeStop.to = "bleding"),
    [
      "day.safeStop.to: 'bleding' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'sticking', 'pre-loosening', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'bleeding'?",
    ],
  ],
  [
    "checks longer than the first shift",
    (plan) => (plan.day.preStart = "9 h"),
    ["day.preStart: the checks last longer than the first shift; allowed: less than 8.5 h; lower it"],
  ],
];

describe("what a plan says of the day", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
