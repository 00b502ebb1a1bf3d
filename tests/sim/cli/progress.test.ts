import { describe, expect, it } from "vitest";
import { progress } from "../../../sim/cli/progress.ts";
import { fakeTerminal } from "../../support/fakeTerminal.ts";

describe("progress", () => {
  it("rewrites one line on a terminal, with share, time gone and time left", () => {
    const { terminal, drawn, said } = fakeTerminal(true);
    let now = 5000;
    const shown = progress(terminal, () => now);
    now += 30_000;
    shown.update(25, 100);
    expect(drawn).toEqual(["======..................  25 %  25 of 100 days, 30 s, about 1 min 30 s left"]);
    shown.end();
    expect(drawn.at(-1)).toBe("");
    expect(said).toEqual([]);
  });

  it("does not rewrite more than ten times a second, but always shows the end", () => {
    const { terminal, drawn } = fakeTerminal(true);
    const shown = progress(terminal, () => 0);
    for (let done = 1; done <= 1000; done++) shown.update(done, 1000);
    expect(drawn).toHaveLength(2);
    expect(drawn.at(-1)).toMatch(/^={24} 100 %/);
  });

  it("says a plain line at each quarter where no line can be rewritten", () => {
    const { terminal, said, drawn } = fakeTerminal(false);
    const shown = progress(terminal, () => 0);
    for (let done = 1; done <= 40; done++) shown.update(done, 40);
    shown.end();
    expect(said).toEqual([
      "10 of 40 days simulated (25 %)",
      "20 of 40 days simulated (50 %)",
      "30 of 40 days simulated (75 %)",
      "40 of 40 days simulated (100 %)",
    ]);
    expect(drawn).toEqual([]);
  });

  it("says no more lines than there are days", () => {
    const { terminal, said } = fakeTerminal(false);
    progress(terminal, () => 0).update(1, 1);
    expect(said).toHaveLength(1);
  });
});
