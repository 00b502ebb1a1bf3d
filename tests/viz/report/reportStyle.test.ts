import { expect, test } from "vitest";
import { reportStyle } from "../../../viz/report/reportStyle.ts";

test("the style asks for nothing from outside, knows paper, and sets no text under 11 px (9 pt on paper)", () => {
  const style = reportStyle();
  expect(style).not.toMatch(/url\(|@import|http/);
  expect(style).toContain("@page{size:A4");
  for (const [, size, unit] of style.matchAll(/font(?:-size)?:([\d.]+)(px|pt)/g))
    expect(Number(size)).toBeGreaterThanOrEqual(unit === "px" ? 11 : 9);
});
