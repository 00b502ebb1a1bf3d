import { expect, test } from "vitest";
import type { ResponseInfo } from "../../../sim/days/results/index.ts";
import { responseFormat } from "../../../viz/words/index.ts";

function info(format: ResponseInfo["format"], unit = ""): ResponseInfo {
  return { key: "k", label: "Label", unit, format, better: null };
}

test("a number shows what its half-width allows, and its unit", () => {
  const format = responseFormat(info("number", "heads/h"), 0);
  expect(format.value(588.234, 2.57)).toBe("588 heads/h");
  expect(format.range(585.66, 590.8, 2.57)).toBe("586 to 591");
  expect(format.difference(36.26, 1.26)).toBe("+36.3 heads/h");
  expect(format.comparison(-4.2, 1.3)).toBe("4.2 heads/h less");
  // Nothing on any day: no spread, and no digits for want of it.
  expect(format.value(0, 0)).toBe("0 heads/h");
});

test("shares are per cent, their differences percentage points", () => {
  const format = responseFormat(info("share"), 0);
  expect(format.value(0.8596, 0.0026)).toBe("86.0 %");
  expect(format.comparison(-0.1798, 0.0012)).toBe("17.98 percentage points less");
  expect(format.differenceScale).toBe(100);
});

test("a clock value is a time of day, its difference a span earlier or later", () => {
  const format = responseFormat(info("clock"), 6 * 3600);
  expect(format.value(3600, 200)).toBe("07:00");
  expect(format.value(3601, 30)).toBe("07:00");
  expect(format.comparison(-1392, 72)).toBe("23.2 min earlier");
  expect(format.comparison(1392, 72)).toBe("23.2 min later");
});

test("spans of one study share a unit when their largest is given", () => {
  const format = responseFormat(info("duration"), 0, { value: 3600, difference: 1400 });
  expect(format.value(60, 6)).toBe("1.00 min");
  expect(format.differenceRange(-85, 7, 46)).toBe("\u22121.4 to +0.1 min");
});

test("without a resolution a value keeps about three digits", () => {
  const format = responseFormat(info("number"), 0);
  expect([595.44, 45.93, 4.567, 7].map((value) => format.value(value, null))).toEqual(["595", "45.9", "4.57", "7"]);
});

test("days that are all alike are written like a value without an interval, not by what rounding left of it", () => {
  const format = responseFormat(info("duration"), 0);
  expect(format.value(450, 1.1e-13)).toBe("7.50 min");
  expect(format.range(450 - 1e-13, 450 + 1e-13, 1.1e-13)).toBe("7.50 to 7.50 min");
});

test("nothing gets a plus sign when it rounds to nothing", () => {
  expect(responseFormat(info("number"), 0).difference(0.001, 1.2)).toBe("0.0");
});
