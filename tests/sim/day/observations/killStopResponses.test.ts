import { expect, it } from "vitest";
import { killLineKeys, measure, responsesOf, usualResponses } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN } from "../../../support/handMadeDay.ts";
import { killLineDay, killLinePlan } from "../../../support/killStopResults.ts";

it("reads count, time, longest, heads caught and worst wait off a day", () => {
  // A break of 60 s, and sticking down for 30 s, with one head stunned just after it broke (see killStopResults.ts).
  const { day } = killLineDay().variants[0]!;
  expect(measure(day, killLinePlan())).toMatchObject({
    "killStops.count": 2,
    "killStops.unplanned": 1,
    "killStops.seconds": 90,
    "killStops.longest": 30,
    "killStops.caught": 1,
    "killStops.worstWait": 30,
  });
});

it("has no value on a day whose stops were not written down", () => {
  const { day } = killLineDay().variants[0]!;
  expect(measure({ ...day, killStops: null }, killLinePlan())["killStops.count"]).toBeNull();
});

it("exists only where heads are stunned, is not among the usual ones, and less of it is better", () => {
  const isStop = ({ key }: { key: string }) => key.startsWith("killStops.");
  const found = responsesOf(killLinePlan()).filter(isStop);
  expect(found.map(({ better }) => better)).toEqual(["less", "less", "less", "less", "less", "less"]);
  expect(responsesOf(HAND_MADE_PLAN).filter(isStop)).toEqual([]);
  expect(usualResponses(killLinePlan()).filter((key) => isStop({ key }))).toEqual([]);
});

it("a study keeps what the limits from stunning to sticking say, asked for or not", () => {
  expect(killLineKeys(killLinePlan())).toEqual(["beyond.stun to stick", "worst.stun to stick"]);
  expect(killLineKeys(HAND_MADE_PLAN)).toEqual([]);
});
