import { describe, expect, it } from "vitest";
import { readExample } from "../../../../support/readExample.ts";

// biome-ignore lint/suspicious/noExplicitAny: tests write what a plan may not hold
type Loose = any;
const AT = "line[1].cooling";

const BAD: [string, (stage: Loose) => void, string[]][] = [
  [
    "a power besides",
    (stage) => (stage.power = "6 kW"),
    ['line[1].power: both a power and a "cooling" that gives the power; allowed: one of the two; keep one'],
  ],
  [
    "no carcasses whose heat is known",
    (stage) => {
      delete stage.chilling;
      stage.dwell = "2 h";
    },
    [
      `${AT}: this stage has no chilling, so there is no heat to take out; allowed: a stage with "chilling"; give "power" instead`,
    ],
  ],
  [
    "a cop besides its temperatures",
    (stage) => (stage.cooling.cop = 3),
    [
      `${AT}: both a cop and the temperatures it is computed from; allowed: "cop", or both "evaporating" and "condensing"; keep one`,
    ],
  ],
  [
    "half a cycle",
    (stage) => delete stage.cooling.condensing,
    [
      `${AT}: neither a cop nor both temperatures; allowed: "cop", or both "evaporating" and "condensing"; write for example "evaporating": "-8 degC", "condensing": "35 degC"`,
    ],
  ],
  [
    "heat that would run uphill",
    (stage) => (stage.cooling.evaporating = "2 degC"),
    [`${AT}.evaporating: 2 °C in air of 0 °C takes no heat out; allowed: colder than the air; lower it`],
  ],
  [
    "a cycle turned round",
    (stage) => (stage.cooling.condensing = "-20 degC"),
    [`${AT}.condensing: no warmer than the evaporating temperature; allowed: warmer than that; correct one of the two`],
  ],
  [
    "a machine that does nothing",
    (stage) => (stage.cooling.shareOfIdeal = 0),
    [`${AT}.shareOfIdeal: it is 0; allowed: more than 0; raise it`],
  ],
  [
    "fans given twice",
    (stage) => (stage.cooling.fans.power = "3 kW"),
    [
      `${AT}.fans: both a power and the flow it is computed from; allowed: "power", or both "flow" and "pressure"; keep one of them`,
    ],
  ],
  [
    "half a fan",
    (stage) => delete stage.cooling.fans.pressure,
    [
      `${AT}.fans: a flow without a pressure, or the other way round; allowed: "power", or both "flow" and "pressure"; keep one of them`,
    ],
  ],
  [
    "fans without efficiency",
    (stage) => (stage.cooling.fans.efficiency = 0),
    [`${AT}.fans.efficiency: it is 0; allowed: more than 0; raise it`],
  ],
];

describe("a cold room", () => {
  it.each(BAD)("is told of %s", (_, spoil, expected) => {
    const { faults } = readExample("parts/chiller", (plan) => {
      plan.sources = [];
      spoil(plan.line[1]);
    });
    expect(faults).toEqual(expected);
  });
});
