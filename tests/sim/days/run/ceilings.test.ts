import { expect, it } from "vitest";
import { runStudy, TooManyDays } from "../../../../sim/days/run/index.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const ABOUT = { gambrel: "1", command: "c" };

it("stops a study that asks for more days than it may, before the first is simulated", async () => {
  let progress = 0;
  const running = runStudy(threeVariants(), { ...ABOUT, mostDays: 11, progress: () => progress++ });
  await expect(running).rejects.toThrow(TooManyDays);
  await expect(running).rejects.toThrow(/asks for 12 days, more than 11; ask for fewer, or raise the ceiling/);
  expect(progress).toBe(0);
  expect((await runStudy(threeVariants(), { ...ABOUT, mostDays: 12 })).study.replications).toBe(4);
});

it("lets a day with too many events fail alone, named", async () => {
  const running = runStudy(threeVariants({ replications: 1 }), { ...ABOUT, mostEvents: 100 });
  await expect(running).rejects.toThrow(/^3 days could not be simulated: variant "base", day 1: .*100 events/);
});
