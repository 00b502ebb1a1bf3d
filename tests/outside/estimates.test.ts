import { describe, it } from "vitest";
import { serialThroughput } from "../../sim/questions/estimate/estimateLine.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { failing, serial } from "../support/serialStations.ts";
import { ESTIMATES } from "./register/estimates.ts";

const checks = new OutsideChecks(ESTIMATES);

/** Equal exponential stations of mean 1. */
const EQUAL: [stations: number, places: number, exact: number][] = [
  [3, 0, 22 / 39],
  [3, 1, 0.6704662],
  [3, 2, 0.7340167],
  [3, 4, 0.8074859],
  [4, 0, 0.5147755],
  [4, 2, 0.7007129],
  [5, 0, 0.4857981],
  [5, 1, 0.6075833],
  [5, 3, 0.729948],
  [6, 0, 0.4667133],
  [6, 1, 0.5918258],
  [6, 3, 0.7179083],
];

describe("the analytic estimate", () => {
  it(checks.title("E.1"), () => {
    for (const [stations, places, exact] of EQUAL) {
      const line = Array.from({ length: stations }, () => serial(1, places));
      checks.exact("E.1", `${stations} stations, ${places} places`, serialThroughput(line), exact, 0.06);
    }
  });

  it(checks.title("E.2"), () => {
    const two = { positions: 2 };
    const lines: [string, ReturnType<typeof serial>[], number][] = [
      ["2.20", [serial(1, 0, two), serial(1, 0, two)], 1.5],
      ["2.21", [serial(1 / 0.6, 0, two), serial(2, 1, { positions: 3 })], 1.072512],
      ["2.22", [serial(2, 0, two), serial(1, 1), serial(2, 1, two)], 0.706387],
      [
        "2.23",
        [serial(1, 0, { positions: 3 }), serial(1 / 1.5, 2, two), serial(1 / 0.7, 3, { positions: 4 })],
        2.368775,
      ],
    ];
    for (const [what, line, exact] of lines) checks.exact("E.2", what, serialThroughput(line), exact, 0.01);
  });

  it(checks.title("E.3"), () => {
    const equal = (places: number) => failing(1, places, 1, 0.01, 10);
    const lines: [string, ReturnType<typeof serial>[], number][] = [
      ["4.1", [equal(0), equal(0)], 0.589955],
      ["4.2", [equal(0), equal(5)], 0.756197],
      ["4.3", [equal(0), equal(20)], 0.834997],
      ["4.4", [failing(0.5, 0, 1, 0.1, 2), failing(0.5, 4, 1, 0.05, 5)], 1.285302],
      ["4.5", [0, 3, 3].map((places) => failing(1, places, 1, 0.02, 5)), 0.658382],
    ];
    for (const [what, line, exact] of lines) checks.exact("E.3", what, serialThroughput(line), exact, 0.015);
  });

  it(checks.title("E.4"), () => {
    const rows = [
      [0, 0.833679],
      [1, 0.83764],
      [5, 0.84916],
      [10, 0.8592],
      [20, 0.87175],
      [50, 0.88787],
      [100, 0.89672],
    ] as const;
    for (const [places, throughput] of rows) {
      const found = serialThroughput([failing(1, 0, 0, 0.01, 10), failing(1, places, 0, 0.01, 10)]);
      checks.exact("E.4", `${places} places`, found, throughput, 0.03);
    }
  });
});

checks.close();
