import { expect, it } from "vitest";
import { meanOf } from "../../../../sim/maths/random/index.ts";
import { withWalking } from "../../../../sim/questions/size/withWalking.ts";
import { designOf } from "../../../support/demands.ts";

it("withWalking adds a walk to every cycle of a post that has several steps, and to no other", () => {
  const { plan } = designOf({ week: { heads: 2500, days: 5 }, alternative: "compact plant" });
  const walked = withWalking(plan);
  const cycle = ({ line }: typeof plan, name: string) => {
    const stage = line.find((each) => each.name === name)!;
    return stage.kind === "station" ? meanOf(stage.cycleSeconds) : Number.NaN;
  };
  expect(cycle(walked, "evisceration") - cycle(plan, "evisceration")).toBeCloseTo(1, 9);
  expect(cycle(walked, "inspection")).toBe(cycle(plan, "inspection"));
  expect(cycle(walked, "skinning")).toBe(cycle(plan, "skinning"));
  const [before, after] = [plan, walked].map(({ liveHandling }) => meanOf(liveHandling!.back[0]!.secondsPerCycle));
  expect(after! - before!).toBeCloseTo(1, 9);
  expect(withWalking(designOf().plan)).toEqual(designOf().plan);
});
