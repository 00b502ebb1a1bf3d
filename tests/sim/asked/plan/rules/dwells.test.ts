import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "both a dwell and a chilling",
    (plan) => (stageOf(plan, "chilling").dwell = "90 min"),
    ['line[9]: both a dwell and a chilling; allowed: exactly one of "dwell" and "chilling"; keep one'],
  ],
  [
    "neither a dwell nor a chilling",
    (plan) => delete stageOf(plan, "bleeding").dwell,
    [
      'line[3]: neither a dwell nor a chilling; allowed: exactly one of "dwell" and "chilling"; write for example "dwell": "150 s"',
    ],
  ],
  [
    "places that are no whole hooks",
    (plan) => (stageOf(plan, "chilling").places = 1202),
    [
      "line[9].places: 1202 places do not fill whole hooks of 4 heads each; allowed: a multiple of 4; places count heads, not hooks",
    ],
  ],
  [
    "three heads on a hook",
    (plan) => (stageOf(plan, "chilling").headsPerHook = 3),
    ["line[9].headsPerHook: 3 is not one of the choices; allowed: 1, 2, 4; write one of these"],
  ],
  [
    "a core that is no warmer than the air",
    (plan) => (stageOf(plan, "chilling").chilling.air = "4 degC"),
    [
      "line[9].chilling.core: the core (4 °C) would have to be colder than the air (4 °C); allowed: above the air and below the start; correct one of the three",
    ],
  ],
  [
    "a core that is no colder than the start",
    (plan) => (stageOf(plan, "chilling").chilling.core = "37 °C"),
    [
      "line[9].chilling.core: the core (37 °C) is not below that of the carcass at the start (37 °C); allowed: above the air and below the start; correct one of the three",
    ],
  ],
  [
    "a conductivity as it is often misspelt",
    (plan) => (stageOf(plan, "chilling").chilling.conductivity = "0.48 W/mK"),
    [
      'line[9].chilling.conductivity: "0.48 W/mK" has the unit \'W/mK\'; allowed: a thermal conductivity in W/(m K); did you mean "0.48 W/(m K)"?',
    ],
  ],
];

describe("what a plan says of dwells", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
