import { expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { guessesOf } from "../../../../sim/questions/size/index.ts";
import { demandFile, designOf, NO_FILES } from "../../../support/demands.ts";

it("guessesOf calls every assumed cycle time and breakdown a guess, not what the demand gives; the plan stays sound", () => {
  const changes = { steps: { evisceration: { cycle: { lognormal: { mean: "17.5 s", cv: 0.3 } } } } };
  const plan = designOf(changes).design.plan as Record<string, unknown>;
  const guesses = guessesOf(plan, demandFile(changes), NO_FILES);
  const names = guesses.map(({ name }) => name);
  expect(names).toContain("skinning's cycle time");
  expect(names).not.toContain("evisceration's cycle time");
  expect(new Set(names).size).toBe(names.length);
  const { plan: read, faults } = readPlan({ ...plan, uncertain: guesses }, NO_FILES);
  expect(faults).toEqual([]);
  expect(read!.uncertain!.every(({ kind, factor }) => kind === "guess" && factor.family === "uniform")).toBe(true);
  // Every path is a time of a station or of its breakdowns.
  for (const { paths } of guesses) expect(paths[0]).toMatch(/^line(\.|\[).*(cycle|uptime|repair)$/);
  const all = guessesOf(designOf().design.plan as Record<string, unknown>, demandFile(), NO_FILES);
  expect(all.map(({ name }) => name)).toContain("evisceration's cycle time");
});
