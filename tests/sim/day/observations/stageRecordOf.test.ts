import { expect, it } from "vitest";
import { stageRecordOf } from "../../../../sim/day/observations/stageRecordOf.ts";
import { handMadeDay } from "../../../support/handMadeDay.ts";

it("tells a crate step from a stage of the same name, and knows no other name", () => {
  const day = handMadeDay();
  const crates = { ...day.stages[0]!, name: "skinning" };
  const both = { ...day, stages: [crates, ...day.stages] };
  expect(stageRecordOf(both, "skinning")?.kind).toBe("station");
  expect(stageRecordOf(both, "skinning", true)?.kind).toBe("crates");
  expect(stageRecordOf(both, "washing")).toBeUndefined();
});
