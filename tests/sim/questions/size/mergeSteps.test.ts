import { describe, expect, it } from "vitest";
import { demandOf } from "../../../support/demands.ts";

const names = (changes: Record<string, unknown>) => demandOf(changes).steps.map(({ name }) => name);
const stepOf = (changes: Record<string, unknown>, name: string) =>
  demandOf(changes).steps.find((step) => step.name === name)!;

describe("mergeSteps", () => {
  it("keeps what a demand does not speak of, and puts its times in place of the usual ones", () => {
    const skinning = stepOf({ steps: { skinning: { rate: "900 /h" } } }, "skinning");
    expect(skinning.written).toMatchObject({ work: "machine", rate: "900 /h", travel: "5 s" });
    expect(skinning.written.cycle).toBeUndefined();
    expect(skinning.figures.rate).toBeCloseTo(0.25, 12);
  });

  it("puts a step of the demand's own where it says, in the section of the one before", () => {
    const changes = { steps: { rinsing: { work: "manual", cycle: "3 s", after: "evisceration" } } };
    expect(names(changes).indexOf("rinsing")).toBe(names(changes).indexOf("evisceration") + 1);
    expect(stepOf(changes, "rinsing").section).toBe("evisceration");
  });

  it("leaves out what the plant does without", () => {
    expect(names({ steps: { "final trim": { leftOut: true } } })).not.toContain("final trim");
  });
});
