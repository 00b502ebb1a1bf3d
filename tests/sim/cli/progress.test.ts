import { describe, expect, it } from "vitest";
import { progress } from "../../../sim/cli/progress.ts";
import { fakeTerminal } from "../../support/fakeTerminal.ts";

describe("progress", () => {
  it("rewrites one line on a terminal, with share, time gone and time left", () => {
    const { terminal, drawn, said } = fakeTerminal(true);
    let now = 5000;
    const shown = progress(terminal, () => now);
    shown.update(0, 100);
    now += 30_000;
    shown.update(25, 100);
    expect(drawn.at(-1)).toBe("======..................  25 %  25 of 100 days, 30 s, about 1 min 30 s left");
    shown.end();
    expect(drawn.at(-1)).toBe("");
    expect(said).toEqual([]);
  });

  it("reckons the time left from the days of this run, not from those an earlier one did", () => {
    const { terminal, drawn } = fakeTerminal(true);
    let now = 0;
    const shown = progress(terminal, () => now);
    shown.update(90, 200);
    now += 7_200_000;
    shown.update(100, 200);
    expect(drawn.at(-1)).toMatch(/100 of 200 days, 2 h 0 min, about 20 h 0 min left$/);
  });

  it("does not rewrite more than ten times a second, but always shows the end", () => {
    const { terminal, drawn } = fakeTerminal(true);
    const shown = progress(terminal, () => 0);
    for (let done = 0; done <= 1000; done++) shown.update(done, 1000);
    expect(drawn).toHaveLength(2);
    expect(drawn.at(-1)).toMatch(/^={24} 100 %/);
  });

  it("says a plain line at each quarter where no line can be rewritten", () => {
    const { terminal, said, drawn } = fakeTerminal(false);
    let now = 0;
    const shown = progress(terminal, () => now);
    for (let done = 0; done <= 40; done++) {
      now = done * 1000;
      shown.update(done, 40);
    }
    shown.end();
    expect(said).toEqual([
      "10 of 40 days simulated (25 %), 10 s, about 30 s left",
      "20 of 40 days simulated (50 %), 20 s, about 20 s left",
      "30 of 40 days simulated (75 %), 30 s, about 10 s left",
      "40 of 40 days simulated (100 %), 40 s",
    ]);
    expect(drawn).toEqual([]);
  });

  it("says a plain line after a minute without one", () => {
    const { terminal, said } = fakeTerminal(false);
    let now = 0;
    const shown = progress(terminal, () => now);
    for (let done = 0; done <= 7; done++) {
      now = done * 10_000;
      shown.update(done, 1000);
    }
    expect(said).toEqual(["6 of 1000 days simulated (0 %), 1 min 0 s, about 2 h 45 left"]);
  });

  it("says no more lines than there are days", () => {
    const { terminal, said } = fakeTerminal(false);
    const shown = progress(terminal, () => 0);
    shown.update(0, 1);
    shown.update(1, 1);
    expect(said).toHaveLength(1);
  });
});
