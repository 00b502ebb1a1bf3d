import { expect, test } from "vitest";
import { formatClock } from "../../../viz/frame/index.ts";

// Hours 00 to 23 and minutes in two digits: ISO 8601-1:2019, 5.3 (extended format), from memory.
test("formatClock writes hours and minutes in two digits each, seconds when precise", () => {
  expect(formatClock(0)).toBe("00:00");
  expect(formatClock(6 * 3600 + 5 * 60)).toBe("06:05");
  expect(formatClock(6 * 3600 + 5 * 60 + 7, true)).toBe("06:05:07");
});

test("formatClock rounds to the nearest minute, and carries over the hour and the day", () => {
  expect(formatClock(3599.9)).toBe("01:00");
  expect(formatClock(86_399)).toBe("00:00 +1 d");
});

test("formatClock counts days on either side of the plan's day", () => {
  expect(formatClock(86_400 + 4200)).toBe("01:10 +1 d");
  expect(formatClock(-3600)).toBe("23:00 \u22121 d");
});

test("formatClock says so when there is no time", () => {
  expect(formatClock(Number.NaN)).toBe("not known");
});
