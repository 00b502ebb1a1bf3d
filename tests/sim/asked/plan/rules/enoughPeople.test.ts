import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "several crews of which none is large enough",
    (plan) => {
      stageOf(plan, "pre-loosening").peoplePerPosition = 11;
    },
    [
      "line[2].stations[1].crew: no crew ever has the people that one position takes; allowed: a crew with 11 or more in at least one shift; add people",
    ],
  ],
  [
    "one of several crews that is not there",
    (plan) => {
      stageOf(plan, "pre-loosening").crew = ["dressing", "relif"];
    },
    [
      "line[2].stations[1].crew[1]: 'relif' is not a crew; allowed: 'fork-lift', 'kill', 'dressing', 'relief', 'maintenance'; did you mean 'relief'?",
    ],
  ],
  [
    "repairs by a crew that is never there",
    (plan) => {
      plan.crews[4].people = 0;
    },
    [
      "crews[4].people: 'maintenance' never has more than 0, but a repair takes 1; allowed: 1 or more in at least one shift; add people",
    ],
  ],
  [
    "an emptying by a crew that is never there",
    (plan) => {
      plan.crews.push({ name: "yard", people: 0 });
      plan.vessels[2].crew = "yard";
    },
    [
      "crews[5].people: 'yard' never has more than 0, but an emptying takes 1; allowed: 1 or more in at least one shift; add people",
    ],
  ],
  [
    "a filter change by a crew that is never there",
    (plan) => {
      plan.crews.push({ name: "yard", people: 0 });
      plan.liveHandling.washing.filterChange.crew = "yard";
    },
    [
      "crews[5].people: 'yard' never has more than 0, but a filter change takes 1; allowed: 1 or more in at least one shift; add people",
    ],
  ],
  [
    "more people ill than the crew has",
    (plan) => {
      plan.crews[4].ill = 3;
    },
    [
      "crews[4].people: 'maintenance' never has more than 0, but a repair takes 1; allowed: 1 or more in at least one shift; add people",
      "crews[4].ill: 3 ill of 1 people; allowed: at most 1; lower it",
    ],
  ],
  [
    "a crew that has no other place to change to, and no time to work between",
    (plan) => {
      plan.crews[4].rotation = { every: "1 min", takes: "60 s" };
    },
    [
      "crews[4].rotation: 'maintenance' works at no place; allowed: a crew with two places or more; name the crew at another place too, or delete it",
      "crews[4].rotation.takes: changing takes as long as the work between; allowed: less than 1 min; lower it",
    ],
  ],
  [
    "a crew that steps in for itself, one that is not there, and so many at least with nobody who steps in",
    (plan) => {
      plan.crews[3].cover = ["relief", "relif"];
      plan.crews[4].atLeast = 1;
    },
    [
      "crews[3].cover[1]: 'relif' is not a crew; allowed: 'fork-lift', 'kill', 'dressing', 'relief', 'maintenance'; did you mean 'relief'?",
      "crews[3].cover[0]: the crew steps in for itself; allowed: other crews; delete it",
      'crews[4].atLeast: nobody steps in; allowed: "cover" with it; name crews under "cover", or delete it',
    ],
  ],
  [
    "manual work with an empty list of crews",
    (plan) => {
      Object.assign(stageOf(plan, "hanging"), { work: "manual", crew: [] });
    },
    ['line[0]: manual work without a crew; allowed: the name of a crew, or "work": "machine"; add the key "crew"'],
  ],
  [
    "a crew that is a number",
    (plan) => {
      stageOf(plan, "hanging").crew = 3;
    },
    ["line[0].crew: 3 is of the wrong kind; allowed: a text in double quotes or a list [ ] or null"],
  ],
  [
    "a crew that is always absent",
    (plan) => (plan.crews[1].absent = "100 %"),
    ["crews[1].absent: everybody is always absent; allowed: less than 100 %; lower it"],
  ],
  [
    "pay without time",
    (plan) => (plan.crews[1].pay = "18 EUR"),
    [
      'crews[1].pay: "18 EUR" is not money per time; allowed: a number of 0 or more, a three-letter currency code in capitals, then /s, /min, /h or /d; write for example "18 EUR/h"',
    ],
  ],
  [
    "cleaning by a crew that is not there",
    (plan) => (plan.day.cleaning.crews = ["kil"]),
    [
      "day.cleaning.crews[0]: 'kil' is not a crew; allowed: 'fork-lift', 'kill', 'dressing', 'relief', 'maintenance'; did you mean 'kill'?",
    ],
  ],
];

describe("what a plan says of crews", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
