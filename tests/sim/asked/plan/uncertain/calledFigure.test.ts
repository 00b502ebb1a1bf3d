import { expect, it } from "vitest";
import { calledFigure } from "../../../../../sim/asked/plan/index.ts";

it("calledFigure names what can be timed as a sentence does, within the letters of a name", () => {
  const called = (figure: Parameters<typeof calledFigure>[0]["figure"], breakdown: string | null = null) =>
    calledFigure({ stage: "skinning", figure, breakdown });
  expect(called("cycle")).toBe("skinning's cycle time");
  expect(called("travel")).toBe("skinning's way to the next stage");
  expect(called("dwell")).toBe("time in skinning");
  expect(called("uptime", "jam")).toBe("time between skinning's jams");
  expect(called("repair", "jam")).toBe("repair of skinning's jams");
  const long = calledFigure({ stage: "s".repeat(80), figure: "cycle", breakdown: null });
  expect([...long]).toHaveLength(60);
});
