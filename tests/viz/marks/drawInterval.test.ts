import { expect, test } from "vitest";
import { chartFrame } from "../../../viz/frame/index.ts";
import { drawLevelInterval, drawUprightInterval } from "../../../viz/marks/index.ts";
import { testContext } from "../../support/drawing.ts";

const ALONE = { mean: 5, low: null, high: null };
const pixels = (value: number) => value;
const STYLE = { stroke: "blue", paper: "white", filled: true };

function frame() {
  return chartFrame({ title: "t", caption: "", subtitle: "", description: "d" }, testContext());
}

test("an interval is a bar with a dot, level or upright", () => {
  const f = frame();
  drawLevelInterval(f.body, pixels, { mean: 5, low: 2, high: 8 }, 20, STYLE);
  drawUprightInterval(f.body, 30, pixels, { mean: 5, low: 8, high: 2 }, STYLE);
  const svg = f.finish(9);
  expect([...svg.querySelectorAll("path")].map((path) => path.getAttribute("d"))).toEqual([
    "M2,16v8M2,20H8M8,16v8",
    "M26,8h8M30,8V2M26,2h8",
  ]);
  expect(svg.querySelectorAll("circle").length).toBe(2);
});

test("without an interval only the dot is drawn, never a bar of no length", () => {
  const f = frame();
  drawLevelInterval(f.body, pixels, ALONE, 20, STYLE);
  drawUprightInterval(f.body, 5, pixels, ALONE, STYLE);
  expect(f.finish(9).querySelectorAll("path").length).toBe(0);
});

test("an open dot shows the page, a filled one the line's colour", () => {
  const f = frame();
  drawLevelInterval(f.body, pixels, { mean: 5, low: 2, high: 8 }, 20, { ...STYLE, filled: false });
  drawLevelInterval(f.body, pixels, { mean: 5, low: 2, high: 8 }, 20, STYLE);
  expect([...f.finish(9).querySelectorAll("circle")].map((dot) => dot.getAttribute("fill"))).toEqual(["white", "blue"]);
});
