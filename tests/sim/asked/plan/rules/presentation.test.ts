import { describe, expect, it } from "vitest";
import { readExample } from "../../../../support/readExample.ts";

// biome-ignore lint/suspicious/noExplicitAny: tests write what a plan may not hold
type Loose = any;
const faults = (change: (plan: Loose) => void) => readExample("parts/presentation", change).faults;
const SOLD = "presentation";

const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "parts that are more than the animal",
    (plan) => (plan.bodyParts.skin = "16.5 %"),
    [
      'bodyParts: the parts add up to 101.5 % of the live weight; allowed: 100 %; correct the share that is wrong; if only "rest" is, it is 48.5 %',
    ],
  ],
  [
    "parts that leave no meat",
    (plan) => (plan.bodyParts.gut = "80 %"),
    [
      "bodyParts: the parts add up to 161 % of the live weight; allowed: 100 %; correct the shares: they leave nothing for muscle, bone and fat",
    ],
  ],
  [
    "a yield with head for a carcass without",
    (plan) =>
      (plan.presentation.yield = { share: "57 %", head: "on", paws: "off", weighed: "cold", liveWeight: "farm" }),
    [
      'presentation.yield.head: the yield is with the head, but what is sold is without the head; allowed: "off"; give a yield of what is sold, or none',
      'presentation.yield.weighed: the yield is of the cold carcass, but what is sold is of the hot carcass; allowed: "hot"; give a yield of what is sold, or none',
    ],
  ],
  [
    "a weight at the farm that nobody can work out",
    (plan) => delete plan.presentation.journeyLoss,
    [
      'presentation.journeyLoss: missing, but yields are of the live weight at the farm and heads are weighed at slaughter; allowed: a share such as "2 %"; weigh a load at the farm and before slaughter',
    ],
  ],
  [
    "words beside the presentation",
    (plan) => (plan.dressing = "with head"),
    ['dressing: both words and a presentation; allowed: one of the two; keep "presentation" and delete this'],
  ],
  [
    "a hot weight with drip that is only a share",
    (plan) => (plan.line[3].takesOff = [{ name: "drip", share: "2 %", of: "what is left" }]),
    [
      'line[3].takesOff[0]: the carcass is weighed hot, but the plan does not say whether this is drip; allowed: "parts"; write "parts": ["chillLoss"]',
    ],
  ],
  [
    "both a share and parts",
    (plan) => (plan.line[0].takesOff[0].share = "3 %"),
    ['line[0].takesOff[0]: both a share and parts; allowed: exactly one of "share" and "parts"; keep one'],
  ],
  [
    "neither",
    (plan) => (plan.line[1].takesOff[0] = { name: "skins" }),
    [
      'line[1].takesOff[0]: neither a share nor parts; allowed: exactly one of "share" and "parts"; write for example "share": "3 %"',
      'presentation: \'skin\' is not part of what is sold, but no stage on the way takes it off; name it in "parts" of the "takesOff" of a stage',
    ],
  ],
  [
    "drip together with a part",
    (plan) => (plan.line[3].takesOff[0].parts = ["chillLoss", "kidneys"]),
    [
      "line[3].takesOff[0].parts: drip together with parts of the body; allowed: one of the two; split it into two entries",
    ],
  ],
  [
    "drip without its share",
    (plan) => delete plan.presentation.chillLoss,
    ['presentation.chillLoss: missing, but a stage takes off drip; allowed: a share such as "2 %"; add "chillLoss"'],
  ],
  [
    "a part that comes off twice",
    (plan) => plan.line[2].takesOff[0].parts.push("head"),
    [
      "line[2].takesOff[0].parts[2]: 'head' is also taken off by an earlier stage; allowed: once on the way; name it at one of them",
    ],
  ],
  [
    "parts that nobody takes off",
    (plan) => (plan.line[1].takesOff[1].parts = ["forePaws"]),
    [
      "presentation: 'head', 'hindPaws' are not part of what is sold, but no stage on the way takes them off; name them in \"parts\" of the \"takesOff\" of a stage",
    ],
  ],
];

describe(SOLD, () => {
  it.each(BAD)("is told of %s", (_, spoil, expected) => {
    expect(faults(spoil)).toEqual(expected);
  });

  it("needs the shares of the parts", () => {
    expect(faults((plan) => delete plan.bodyParts)[0]).toBe(
      'bodyParts: missing, but a stage takes off parts; allowed: the share of every part; add "bodyParts"',
    );
  });

  it("needs what is sold", () => {
    expect(faults((plan) => delete plan.presentation)[0]).toBe(
      'presentation: missing, but a stage takes off parts; allowed: what is sold as a carcass; add "presentation"',
    );
  });

  it("lets a part that is sold stay on the carcass whatever stage names it", () => {
    const head = readExample("parts/presentation", (plan) => (plan.presentation.head = "on"));
    expect(head.faults).toEqual([]);
    const paws = head.plan.line[1]!.byProducts[1]!;
    expect(paws).toMatchObject({ name: "paws and head", share: 0.036, of: "live weight" });
  });
});
