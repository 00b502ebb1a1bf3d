import { expect, it } from "vitest";
import { makerDifference, makerMark } from "../../../../../sim/days/run/wire/index.ts";

const HERE = makerMark("1.0.0");

it("finds no difference between two of the same program and mathematics", () => {
  expect(makerDifference(makerMark("1.0.0"), HERE)).toBeNull();
});

it("names the versions, and else the mathematics", () => {
  expect(makerDifference(makerMark("1.1.0"), HERE)).toBe("gambrel 1.1.0 there, 1.0.0 here");
  expect(makerDifference({ ...HERE, arithmetic: "0" }, HERE)).toMatch(/release of Node\.js there whose exp, log/);
});
