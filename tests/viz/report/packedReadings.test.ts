import { expect, test } from "vitest";
import { packedReadings } from "../../../viz/report/packedReadings.ts";

const DAY = { startClockSeconds: 21_600, endSeconds: 7200.4, spans: [] };
const series = { group: "", name: "a", unit: "heads" };

test("bins keep mean, lowest and highest to a tenth; means alone are kept once", () => {
  const trace = { kind: "binned", binSeconds: 60, low: [0, 1], high: [2.26, 3], mean: [1.04, 2] } as const;
  const values = [1.234, 5];
  const means = { kind: "binned", binSeconds: 60, low: values, high: values, mean: values } as const;
  const packed = packedReadings({
    ...DAY,
    series: [
      { ...series, trace },
      { ...series, trace: means },
    ],
  });
  expect(packed).toEqual({
    start: 21_600,
    end: 7200,
    series: [
      { g: "", n: "a", u: "heads", b: 60, m: [1, 2], l: [0, 1], h: [2.3, 3] },
      { g: "", n: "a", u: "heads", b: 60, m: [1.2, 5] },
    ],
    spans: [],
  });
});

test("steps keep their times to the second; spans their words", () => {
  const trace = { kind: "exact", times: [0, 12.6], values: [0, 3] } as const;
  const spans = [{ name: "lorry", spans: [{ from: 0.4, to: 9.6, text: "here" }] }];
  const packed = packedReadings({ ...DAY, series: [{ ...series, trace }], spans });
  expect(packed.series).toEqual([{ g: "", n: "a", u: "heads", t: [0, 13], v: [0, 3] }]);
  expect(packed.spans).toEqual([{ name: "lorry", spans: [[0, 10, "here"]] }]);
});
