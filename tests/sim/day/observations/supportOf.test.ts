import { expect, it } from "vitest";
import { type ResponseInfo, supportOf } from "../../../../sim/day/observations/index.ts";

const of = (key: string, format: ResponseInfo["format"]) => supportOf({ key, format });

it("keeps shares from 0 to 1, times and amounts from 0 on, and lets margins and times of day be negative", () => {
  expect(of("beyond.chill", "share")).toBe("share");
  expect(of("overtime", "duration")).toBe("amount");
  expect(of("carcasses", "number")).toBe("amount");
  expect(of("margin", "number")).toBe("any");
  expect(of("marginPerHead", "number")).toBe("any");
  expect(of("fullMargin", "number")).toBe("any");
  expect(of("finish", "clock")).toBe("any");
});
