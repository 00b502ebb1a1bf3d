import { describe, expect, it } from "vitest";
import { type ColumnFit, fitColumn, fitPicture, readTimes } from "../../../sim/questions/fit/index.ts";
import { fitChartFiles, histogramView, probabilityView } from "../../../viz/index.ts";
import { CYCLES } from "../../support/timeStudies.ts";

function fitOf(cells: readonly (number | string)[], heading = "skinning (s)"): ColumnFit {
  const { columns } = readTimes(`${heading}\n${cells.join("\n")}\n`, { unit: null, by: null });
  return fitColumn(columns![0]!, { seed: "1", samples: 99 });
}

const draw = (fit: ColumnFit) => ({ fit, picture: fitPicture(fit, "1") });

describe("the views of a fit", () => {
  it("put every time into one bar, no time on an edge", () => {
    const { fit, picture } = draw(fitOf(CYCLES));
    const { bins, subtitle } = histogramView(fit, picture);
    expect(bins.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    for (const { from } of bins) expect(CYCLES.every((time) => Math.abs(time - from) > 0.01)).toBe(true);
    expect(subtitle).toBe("20 times. Curves: the best first; a lower AIC (Akaike 1974) is a better fit");
  });

  it("say what becomes of open times and of zeros", () => {
    const open = draw(fitOf([10, 12, 9, 14, 11, 8, 13, 15, 0, "20+"], "a: uptime (min)"));
    expect(histogramView(open.fit, open.picture).subtitle).toMatch(/8 times, 1 of 0 left out; 1 still open count as longer times/);
    expect(probabilityView(open.fit, open.picture)!.subtitle).toMatch(/No band with open times/);
  });

  it("keep the area of a curve that of the bars", () => {
    const { fit, picture } = draw(fitOf(CYCLES));
    const { bins, curves } = histogramView(fit, picture);
    const width = bins[0]!.to - bins[0]!.from;
    const [{ points }] = curves as [(typeof curves)[number]];
    const area = points.slice(1).reduce((sum, { x, share }, i) => sum + share * (x - points[i]!.x), 0);
    expect(area / width).toBeGreaterThan(0.95);
    expect(area / width).toBeLessThan(1.02);
  });
});

describe("fitChartFiles", () => {
  it("draws two pictures of a fitted column and one of a column that was not, under safe names", () => {
    const files = fitChartFiles([draw(fitOf(CYCLES)), draw(fitOf([4, 5], "../ü/../x (s)"))]);
    expect(files.map(({ name }) => name)).toEqual(["times-1-skinning", "probability-1-skinning", "times-2-u-x"]);
    for (const { svg } of files) expect(svg).toMatch(/^<svg[\s\S]*<\/svg>\n$/);
  });

  it("draws columns of one time, of none that ended, and of equal ones", () => {
    const columns = [fitOf([4]), fitOf(["4+"], "a: uptime (s)"), fitOf([3, 3, 3, 3, 3, 3, 3, 3, 3])].map(draw);
    expect(fitChartFiles(columns)).toHaveLength(3);
  });
});
