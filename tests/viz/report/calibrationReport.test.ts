import { describe, expect, it } from "vitest";
import { type Calibration, calibrationVerdict, type Explanation } from "../../../sim/questions/calibrate/index.ts";
import { renderCalibrationReport } from "../../../viz/report/index.ts";

const FINISH = { key: "finish", label: "End of work", unit: "s", format: "clock", better: "less" } as const;

/** Ten observed days whose end differs so much from the simulated one at 14:20, with a range of 60 s either way. */
function calibration(difference: number, noticeable: number, explanations: Explanation[] = []): Calibration {
  const side = (mean: number) => ({
    days: 10,
    mean,
    low: null,
    high: null,
    min: mean,
    max: mean,
    p025: mean,
    p975: mean,
  });
  const shown = Math.abs(difference) > 60;
  const comparison = {
    ...{ observed: side(30_000 + difference), simulated: side(30_000), difference, p: 0.5, standardError: 1 },
    ...{ low: difference - 60, high: difference + 60, shown, noticeable },
  };
  return {
    ...{ days: 40, observedDays: 10, confidence: 0.95, countedAt: "trim", startClockSeconds: 21_600, gap: shown },
    ...{
      quantities: [{ info: FINISH, stretch: null, values: [], comparison }],
      explanations,
      noticeable: shown ? null : [],
    },
  };
}

function told(found: Calibration): string {
  const page = renderCalibrationReport({
    ...{ ...found, ...calibrationVerdict(found) },
    ...{ plan: "Invented", observedFile: "observed.csv", seed: "1" },
  });
  return page
    .replace(/<(style|script|svg)[^>]*>.*?<\/\1>/gs, "")
    .replace(/<[^>]+>/g, " ")
    .replace(/\s+/g, " ");
}

describe("the report of a comparison with observed days", () => {
  it("begins with the question and the verdict, then the table, then the method", () => {
    const text = told(calibration(20, 240));
    expect(text).toMatch(
      /Question: Does the plan behave as the line does on observed days\? Answer Yes: the plan fits the 10 observed days/,
    );
    const at = [
      "Answer Yes",
      "Result Observed Simulated Observed less simulated Found from",
      "Cautions",
      "What could hide",
      "Method",
    ].map((piece) => text.indexOf(piece));
    expect(at.every((place) => place >= 0)).toBe(true);
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  it("has in the table what was observed and simulated, and the size from which a difference would be found", () => {
    expect(told(calibration(20, 240))).toMatch(/End of work 14:20 14:20 \+20 s .*? to .*? 4 min /);
    expect(told(calibration(720, 240))).toMatch(/End of work 14:32 14:20 \+12(\.0)? min .*? to .*? 4 min /);
  });

  it("says no with what would explain the gap, and to measure it first", () => {
    const cause: Explanation = {
      ...{ kind: "repair", label: "mean repair time of jam", path: "", from: 65, to: 88, removed: 0.974 },
      ...{ left: [], closes: true, plausible: true, doubt: "" },
    };
    const text = told(calibration(720, 240, [cause]));
    expect(text).toMatch(
      /Answer No: the plan does not fit the 10 observed days .*mean repair time of jam would explain 97 %/,
    );
    expect(text).toMatch(/What to do next Measure mean repair time of jam/);
    expect(text).toMatch(/What would explain the gap .*mean repair time of jam 1 min 5 s 1 min 28 s 97 % nothing yes/);
    expect(told(calibration(720, 240))).toMatch(/No single figure of the plan .* explains a tenth of it/);
  });
});
