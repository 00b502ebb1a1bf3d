import { scaleLinear } from "d3";
import { expect, test } from "vitest";
import { chartFrame, clockAt, drawClockAxis, drawClockGrid, drawPauses } from "../../../viz/frame/index.ts";
import { testContext, textsOf } from "../../support/drawing.ts";

function frame() {
  return chartFrame({ title: "t", caption: "", subtitle: "", description: "d" }, testContext());
}

test("a time axis shows full hours of the day as HH:MM and names itself with its unit", () => {
  const f = frame();
  drawClockAxis(
    f,
    scaleLinear()
      .domain([0, 4 * 3600])
      .range([100, 300]),
    5.5 * 3600,
    50,
  );
  expect(textsOf(f.finish(80))).toEqual(["t", "06:00", "07:00", "08:00", "09:00", "clock time (h:min)"]);
});

test("hours after midnight say which day they belong to", () => {
  const f = frame();
  drawClockAxis(
    f,
    scaleLinear()
      .domain([0, 4 * 3600])
      .range([100, 700]),
    22 * 3600,
    50,
  );
  const texts = textsOf(f.finish(80));
  expect(texts).toContain("23:00");
  expect(texts).toContain("00:00");
  expect(texts).toContain("+1 d");
});

test("grid lines stand at the ticks of the axis", () => {
  const f = frame();
  drawClockGrid(f, scaleLinear().domain([0, 7200]).range([0, 100]), 0, 10, 20);
  const paths = [...f.finish(80).querySelectorAll("path")].map((path) => path.getAttribute("d"));
  expect(paths).toEqual(["M0.0,10V20", "M50.0,10V20", "M100.0,10V20"]);
});

test("pauses are drawn within the axis only, and a name that would touch another is left out", () => {
  const f = frame();
  const time = scaleLinear().domain([0, 1000]).range([100, 700]);
  const pauses = [
    { name: "first pause", fromSeconds: 100, toSeconds: 200 },
    { name: "second pause", fromSeconds: 210, toSeconds: 220 },
    { name: "after the day", fromSeconds: 2000, toSeconds: 2100 },
    { name: "to the end", fromSeconds: 900, toSeconds: 5000 },
  ];
  drawPauses(f, pauses, time, 50, 90);
  const svg = f.finish(90);
  expect(textsOf(svg)).toEqual(["t", "first pause", "to the end"]);
  const bands = [...svg.querySelectorAll("rect")].slice(1);
  expect(bands.map((band) => [band.getAttribute("x"), band.getAttribute("width")])).toEqual([
    ["160.0", "60.0"],
    ["226.0", "6.0"],
    ["640.0", "60.0"],
  ]);
});

test("clockAt counts from the day's start", () => {
  expect(clockAt(5400, 6 * 3600)).toBe("07:30");
});
