import { describe, expect, it } from "vitest";
import { type Loose, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a limit from a chain station that lies further down",
    (plan) => (plan.limits[0].from = "end of pre-loosening"),
    [
      'limits[0].to: "start of sticking" does not come after "end of pre-loosening" on a head\'s way; allowed: a later point than that of from; swap the two, or name a later point',
    ],
  ],
  [
    "a gate at the end of a stage",
    (plan) => (plan.gates[0].from = "end of stunning"),
    [
      'gates[0].from: "end of stunning" is not a place for a gate; allowed: "start of" and the name of a stage; write for example "start of stunning"',
    ],
  ],
  [
    "a gate up the line",
    (plan) => (plan.gates[0].to = "end of hanging"),
    [
      'gates[0].to: "end of hanging" does not come after "start of stunning" on a head\'s way; allowed: a later point than that of from; swap the two, or name a later point',
    ],
  ],
  [
    "a gate at a stage that is not there",
    (plan) => (plan.gates[0].from = "start of stuning"),
    [
      "gates[0].from: 'stuning' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'sticking', 'pre-loosening', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'stunning'?",
    ],
  ],
  [
    "a gate named twice that lets nobody through",
    (plan) => plan.gates.push({ ...plan.gates[0], atMost: 0 }),
    [
      "gates[1].atMost: 0 is too small; allowed: 1 or more",
      "gates[1].name: 'room to stick' appears twice among the gates; allowed: each name once; rename one of them",
    ],
  ],
];

describe("what a plan says of gates and limits", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
