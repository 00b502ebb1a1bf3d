import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a next stage that is not there",
    (plan) => (stageOf(plan, "skinning machine").next = "eviseration"),
    [
      "line[4].next: 'eviseration' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'evisceration'?",
    ],
  ],
  [
    "a stage that sends heads to itself in every way",
    (plan) => {
      stageOf(plan, "inspection").removals.length = 1;
      stageOf(plan, "bleeding").next = "bleeding";
      stageOf(plan, "inspection").diversions[0].to = "inspection";
      stageOf(plan, "skinning machine").weights.else = "skinning machine";
      stageOf(plan, "kill chain").unfinishedTo = "kill chain";
      stageOf(plan, "skinning machine").breakdowns[0].headInHand.to = "skinning machine";
    },
    [
      "line[2].unfinishedTo: 'kill chain' sends heads to itself; allowed: another stage; name another stage or delete it",
      "line[3].next: 'bleeding' sends heads to itself; allowed: another stage; name another stage or delete it",
      "line[4].weights.else: 'skinning machine' sends heads to itself; allowed: another stage; name another stage or delete it",
      "line[4].breakdowns[0].headInHand.to: 'skinning machine' sends heads to itself; allowed: another stage; name another stage or delete it",
      "line[7].diversions[0].to: 'inspection' sends heads to itself; allowed: another stage; name another stage or delete it",
      "sources[2].path: 'trim' is not a name in 'line.inspection.diversions'; allowed: 'inspection'; write one of these",
    ],
  ],
  [
    "heads sent to stages that are not there, in every way",
    (plan) => {
      stageOf(plan, "inspection").diversions[0].to = "trimm";
      stageOf(plan, "skinning machine").weights.else = "by hand";
      stageOf(plan, "kill chain").unfinishedTo = "sticking";
      stageOf(plan, "pre-loosening").breakdowns[0].headInHand = { to: "nowhere" };
    },
    [
      "line[2].unfinishedTo: 'sticking' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'stunning'?",
      "line[2].stations[1].breakdowns[0].headInHand.to: 'nowhere' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; name one of these or add the stage",
      "line[4].weights.else: 'by hand' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; name one of these or add the stage",
      "line[7].diversions[0].to: 'trimm' is not a stage; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; did you mean 'trim'?",
      "sources[2].path: 'trim' is not a name in 'line.inspection.diversions'; allowed: 'trimm'; did you mean 'trimm'?",
    ],
  ],
  [
    "an off-line stage that nobody sends heads to",
    (plan) => (stageOf(plan, "inspection").diversions = []),
    [
      "line[8]: 'trim' is off the line, and no stage sends heads there; allowed: a stage that heads reach; send heads there, or leave it out",
      "sources[2].path: 'trim' is not a name in 'line.inspection.diversions'; allowed: none; write one of these",
    ],
  ],
  [
    "a stage that the line goes round",
    (plan) => (stageOf(plan, "bleeding").next = "evisceration"),
    [
      "line[4]: no head ever reaches 'skinning machine': the stages before it send theirs elsewhere; allowed: a stage that heads reach; send heads there, or leave it out",
    ],
  ],
  [
    "a loop without a way out",
    (plan) => (stageOf(plan, "inspection").next = "evisceration"),
    [
      "line[7].next: heads go round for ever: 'inspection', 'evisceration' and again; allowed: a way out; change one \"next\" so that heads get out",
    ],
  ],
  [
    "a loop through two written ways, told once",
    (plan) => {
      stageOf(plan, "inspection").removals.length = 1;
      stageOf(plan, "evisceration").next = "trim";
      stageOf(plan, "trim").next = "evisceration";
    },
    [
      "line[6].next: heads go round for ever: 'evisceration', 'trim' and again; allowed: a way out; change one \"next\" so that heads get out",
    ],
  ],
  [
    "a first stage off the line",
    (plan) => (stageOf(plan, "hanging").offLine = true),
    [
      "line[0].offLine: the first stage is off the line; allowed: a first stage on the line; put a stage of the line before it",
    ],
  ],
  [
    "a stage of heads passed unfinished when every window stops the chain",
    (plan) => {
      delete stageOf(plan, "pre-loosening").ifUnfinished;
      stageOf(plan, "skinning machine").weights = null;
      stageOf(plan, "skinning machine").breakdowns = [];
    },
    [
      "line[5]: 'hand skinning' is off the line, and no stage sends heads there; allowed: a stage that heads reach; send heads there, or leave it out",
    ],
  ],
  [
    "diversions and removals of more heads than there are",
    (plan) => {
      stageOf(plan, "inspection").removals[0].share = "60 %";
      stageOf(plan, "inspection").diversions[0].share = "41 %";
    },
    [
      "line[7].diversions: the shares of removals and diversions add up to more than 100 %; allowed: 100 % or less; lower them",
    ],
  ],
  [
    "the same stage twice among the diversions",
    (plan) => stageOf(plan, "inspection").diversions.push({ to: "trim", share: "1 %" }),
    [
      "line[7].diversions[1].to: 'trim' appears twice among the diversions of this stage; allowed: each name once; rename one of them",
    ],
  ],
  [
    "a stage left out that others still name",
    (plan) => {
      stageOf(plan, "trim").leftOut = true;
    },
    [
      "line[7].diversions[0].to: 'trim' is left out; allowed: 'hanging', 'stunning', 'kill chain', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'chilling'; name one of these or put 'trim' back",
    ],
  ],
  [
    "a chain left out whose stations are named",
    (plan) => {
      plan.sharedBreakdowns = [];
      stageOf(plan, "kill chain").leftOut = true;
    },
    [
      "day.breaks[0].stages[0]: 'sticking' is left out; allowed: 'hanging', 'stunning', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; name one of these or put 'sticking' back",
      "limits[0].to: 'sticking' is left out; allowed: 'hanging', 'stunning', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; name one of these or put 'sticking' back",
      "gates[0].to: 'sticking' is left out; allowed: 'hanging', 'stunning', 'bleeding', 'skinning machine', 'hand skinning', 'evisceration', 'inspection', 'trim', 'chilling'; name one of these or put 'sticking' back",
    ],
  ],
  [
    "everything left out",
    (plan) => {
      for (const stage of plan.line) stage.leftOut = true;
      plan.sharedBreakdowns = [];
      plan.limits = [];
      plan.gates = [];
      plan.day.safeStop = null;
      plan.day.breaks = [];
    },
    ["line: every stage is left out; allowed: 1 or more stages; put one back"],
  ],
  [
    "heads sent back to the stage that takes them in",
    (plan) => (stageOf(plan, "trim").next = "hanging"),
    [
      "line[8].next: 'hanging' takes heads that arrive: none that have been on the line can go back to it; allowed: a later stage; name another stage",
    ],
  ],
];

describe("what a plan says of the ways of heads", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
