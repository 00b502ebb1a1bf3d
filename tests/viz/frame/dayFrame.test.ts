import { expect, test } from "vitest";
import { dayFrame, drawDayPlot, finishDay } from "../../../viz/frame/index.ts";
import { testContext, textsOf } from "../../support/drawing.ts";

const DAY = {
  ...{ title: "t", caption: "", subtitle: "", description: "" },
  ...{ startClockSeconds: 6 * 3600, endSeconds: 7200 },
  pauses: [{ name: "breakfast", fromSeconds: 3600, toSeconds: 4500 }],
};
const frame = () => dayFrame(DAY, testContext(), { left: 88, right: 48 });
const marks = (root: SVGSVGElement, ...ends: string[]) => ends.map((end) => root.getAttribute(`data-time-${end}`));

test("the picture's root tells where its time axis lies, for a cursor through several pictures", () => {
  const day = frame();
  expect([day.time(0), day.time(3600), day.time(7200)]).toEqual([100, 400, 700]);
  expect(marks(day.finish(50), "left", "right", "end")).toEqual(["100", "700", "7200"]);
});

test("a cursor reaches from the first plot to the last one", () => {
  const day = frame();
  drawDayPlot(day, 40, 90);
  drawDayPlot(day, 120.4, 170.6);
  expect(marks(finishDay(day, 180), "top", "bottom")).toEqual(["40", "171"]);
});

test("a plot has its pauses and the hours of the clock, and a note below the axis", () => {
  const day = frame();
  drawDayPlot(day, 40, 90, { above: 4, below: 6 });
  const svg = finishDay(day, 96, "Left out: trim.");
  const texts = textsOf(svg);
  for (const text of ["breakfast", "07:00", "clock time (h:min)", "Left out: trim."]) expect(texts).toContain(text);
  const pause = [...svg.querySelectorAll("rect")].at(-1)!;
  expect([pause.getAttribute("y"), pause.getAttribute("height")]).toEqual(["36", "60"]);
});

test("strips that fill the plot go without a grid", () => {
  const paths = (grid: boolean) => {
    const day = frame();
    drawDayPlot(day, 40, 90, { grid });
    return day.finish(100).querySelectorAll("path").length;
  };
  expect(paths(false)).toBe(0);
  expect(paths(true)).toBeGreaterThan(2);
});
