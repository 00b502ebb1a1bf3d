import { describe, expect, it } from "vitest";
import { readExample } from "../../../../support/readExample.ts";

// biome-ignore lint/suspicious/noExplicitAny: tests write what a plan may not hold
type Loose = any;

const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "hot water colder than the tap",
    (plan) => (plan.utilities.consumers[0].water.at = "8 degC"),
    [
      "utilities.consumers[0].water.at: 8 °C is no warmer than the fresh water of 10 °C; allowed: warmer than that; leave it out for cold water",
    ],
  ],
  [
    "cleaning on a day without any",
    (plan) => delete plan.day.cleaning,
    [
      'utilities.consumers[1].during: it runs during cleaning, but the day has no cleaning; allowed: "day.cleaning"; add "cleaning" to the day',
    ],
  ],
  [
    "a boiler and a compressor that do nothing",
    (plan) => {
      plan.utilities.heating.efficiency = 0;
      plan.utilities.compressor.efficiency = 0;
    },
    [
      "utilities.heating.efficiency: it is 0; allowed: more than 0; raise it",
      "utilities.compressor.efficiency: it is 0; allowed: more than 0; raise it",
    ],
  ],
  [
    "two consumers of one name",
    (plan) => (plan.utilities.consumers[1].name = "tool sterilisers"),
    [
      "utilities.consumers[1].name: 'tool sterilisers' appears twice among the consumers; allowed: each name once; rename one of them",
    ],
  ],
];

describe("the plant's utilities", () => {
  it.each(BAD)("are told of %s", (_, spoil, expected) => {
    expect(readExample("parts/utilities", spoil).faults).toEqual(expected);
  });
});
