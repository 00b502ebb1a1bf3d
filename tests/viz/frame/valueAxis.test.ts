import { scaleLinear } from "d3";
import { expect, test } from "vitest";
import { chartFrame, drawBottomAxis, drawLeftAxis } from "../../../viz/frame/index.ts";
import { testContext, textsOf } from "../../support/drawing.ts";

const QUANTITY = { kind: "number", label: "Out", unit: "heads" } as const;

function frame() {
  return chartFrame({ title: "t", caption: "", subtitle: "", description: "d" }, testContext());
}

test("a bottom axis carries its ticks, its name and its unit", () => {
  const f = frame();
  drawBottomAxis(f, scaleLinear().domain([0, 100]).range([0, 400]), QUANTITY, { top: 10, y: 50 });
  expect(textsOf(f.finish(90)).slice(1)).toEqual(["0", "20", "40", "60", "80", "100", "Out, heads"]);
});

test("tick texts that would touch are left out, their lines stay", () => {
  const f = frame();
  drawBottomAxis(
    f,
    scaleLinear()
      .domain([1e9, 1e9 + 3])
      .range([0, 216]),
    QUANTITY,
    { top: 10, y: 50 },
  );
  const svg = f.finish(90);
  expect(textsOf(svg).length - 2).toBeLessThan(svg.querySelectorAll("path").length - 1);
});

test("a left axis carries its ticks, its name and its unit", () => {
  const f = frame();
  drawLeftAxis(f, scaleLinear().domain([0, 40]).range([100, 0]), QUANTITY, { left: 50, right: 300, labelY: 12 });
  expect(textsOf(f.finish(90)).slice(1)).toEqual(["0", "20", "40", "Out, heads"]);
});

test("a name too long for its axis is cut, its unit never", () => {
  const f = frame();
  const quantity = { ...QUANTITY, label: "Throughput from the first shift's start to the last head out of the line" };
  drawLeftAxis(f, scaleLinear().domain([0, 40]).range([100, 0]), quantity, { left: 50, right: 300, labelY: 12 });
  expect(textsOf(f.finish(90)).at(-1)).toMatch(/^Throughput from .*…, heads$/);
});
