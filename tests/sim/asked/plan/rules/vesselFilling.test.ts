import { describe, expect, it } from "vitest";
import { type Loose, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a vessel emptied when more than full",
    (plan) => (plan.vessels[0].emptyAt = "900 kg"),
    ["vessels[0].emptyAt: emptying is called for at more than the vessel holds; allowed: 800 kg or less; lower it"],
  ],
  [
    "an emptying by a crew that is not there",
    (plan) => (plan.vessels[0].crew = "maintainance"),
    [
      "vessels[0].crew: 'maintainance' is no crew; allowed: 'fork-lift', 'kill', 'dressing', 'relief', 'maintenance'; did you mean 'maintenance'?",
    ],
  ],
  [
    "a vessel named twice",
    (plan) => (plan.vessels[1].name = "blood tank"),
    [
      "vessels[1].name: 'blood tank' stands twice among the vessels; allowed: each name once; rename one of them",
      "line[4].takesOff[0].vessel: 'skin bin' is no vessel; allowed: 'blood tank', 'viscera bin'; name one of these or add the vessel",
      "line[5].takesOff[0].vessel: 'skin bin' is no vessel; allowed: 'blood tank', 'viscera bin'; name one of these or add the vessel",
    ],
  ],
];

describe("what a plan says of vessels", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
