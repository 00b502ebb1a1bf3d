import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults, wholeWarnings } from "../wholeMessages.ts";

const withPace = (name: string, pace: object[]) => (plan: Loose) => {
  stageOf(plan, name).pace = pace;
};

describe("speeds by the hour", () => {
  it("come in the order of their hours, each once", () => {
    const parts = [{ from: "07:00", speed: 0.8 }, { from: "06:30" }];
    expect(wholeFaults(withPace("hanging", parts))).toEqual([
      'line[0].pace[1].from: "06:30" is not after "07:00"; allowed: hours in their order, each once; put the entries in order',
    ]);
    expect(wholeFaults(withPace("kill chain", [{ from: "07:00" }, { from: "07:00" }]))[0]).toMatch(
      /is not after "07:00"/,
    );
  });

  it("are no faster than ten times and no slower than a hundredth, with rates above 0", () => {
    expect(wholeFaults(withPace("hanging", [{ from: "07:00", speed: 0 }]))[0]).toMatch(
      /^line\[0\]\.pace\[0\]\.speed: /,
    );
    expect(wholeFaults(withPace("hanging", [{ from: "07:00", atMost: "0 /h" }]))[0]).toMatch(/0 \/h.*more than 0/);
  });

  it("are warned of where an upper rate is below the target", () => {
    const [found] = wholeWarnings(withPace("hanging", [{ from: "07:00", atMost: "10 /h" }])).filter((words) =>
      words.includes("pace"),
    );
    expect(found).toMatch(
      /^line\[0\]\.pace\[0\]\.atMost: from 07:00 on 'hanging' lets through at most 10 \/h, less than the target/,
    );
    expect(wholeWarnings(withPace("hanging", [{ from: "07:00", atMost: "5000 /h" }])).join()).not.toContain("pace");
  });
});
