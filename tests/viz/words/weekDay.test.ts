import { expect, test } from "vitest";
import { dateWords, hoursOf, weekClock, whichDay } from "../../../viz/words/weekDay.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

const DAY = syntheticStudy();
const BREAK = { name: "lunch", fromSeconds: 3600, toSeconds: 5400 };
const days = ["Monday", "Tuesday", "Wednesday"].map((name, index) => ({
  ...{ name, works: true, counted: true, startSeconds: index * 86_400 + 21_600 },
  shifts: [],
  breaks: index === 1 ? [BREAK] : [],
}));
const WEEK = { ...DAY, plan: { ...DAY.plan, week: { begins: "2031-02-27", days, orders: [] } } };

test("a day is named by its number, one of a week by its name and the week's number", () => {
  expect(whichDay(DAY, { replication: 4 })).toBe("day 5");
  expect(whichDay(WEEK, { replication: 4 })).toBe("Tuesday of week 2");
});

test("its breaks are its own, not those of the plan", () => {
  expect(hoursOf(DAY, { replication: 4 }).breaks).toBe(DAY.plan.breaks);
  expect(hoursOf(WEEK, { replication: 4 }).breaks).toEqual([BREAK]);
  expect(hoursOf(WEEK, { replication: 5 }).breaks).toEqual([]);
});

test("dates go on over the end of a month, and are left out without a beginning", () => {
  expect([0, 1, 2].map((day) => dateWords("2031-02-27", day))).toEqual(["27 Feb", "28 Feb", "1 March"]);
  // 2028 is a leap year.
  expect(dateWords("2028-02-28", 1)).toBe("29 Feb");
  expect(dateWords(null, 1)).toBe("");
});

test("a time of the week has the name of its day; the last day's hours go on into its night", () => {
  expect(weekClock(days, 86_400 + 16 * 3600 + 39 * 60)).toBe("Tuesday 16:39");
  expect(weekClock(days, 2 * 86_400 + 25 * 3600)).toMatch(/^Wednesday 01:00/);
});
