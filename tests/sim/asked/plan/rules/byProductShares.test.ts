import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "more taken off at one place than there is",
    (plan) =>
      stageOf(plan, "evisceration").takesOff.push({
        name: "rest",
        share: 0.9,
        of: "what is left",
      }),
    ["line[6].takesOff: the shares add up to more than 100 %; allowed: 100 % or less; lower them"],
  ],
  [
    "more taken off along the line than there is",
    (plan) => (stageOf(plan, "evisceration").takesOff[0].share = "90 %"),
    [
      "line[6].takesOff: with this, 109 % of the live weight is taken off along the line; allowed: 100 % or less; lower the shares",
    ],
  ],
  [
    "a vessel that is not there",
    (plan) => (stageOf(plan, "sticking").takesOff[0].vessel = "blood tnk"),
    [
      "line[2].stations[0].takesOff[0].vessel: 'blood tnk' is not a vessel; allowed: 'blood tank', 'skin bin', 'viscera bin'; did you mean 'blood tank'?",
    ],
  ],
  [
    "a by-product named twice",
    (plan) => stageOf(plan, "sticking").takesOff.push({ name: "blood", share: "1 %" }),
    [
      "line[2].stations[0].takesOff[1].name: 'blood' appears twice among the by-products of this stage; allowed: each name once; rename one of them",
    ],
  ],
];

describe("what a plan says of by-products", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
