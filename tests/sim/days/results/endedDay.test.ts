import { expect, it } from "vitest";
import { dayRecordShape, endedDay } from "../../../../sim/days/results/index.ts";
import { handMadeDay } from "../../../support/handMadeDay.ts";

it("keeps how a day ended and its heads, takes out what is long, and is still a day record", () => {
  const day = handMadeDay();
  const ended = endedDay(day);
  const { status, stuckAt, left, heads, finishSeconds, workFinishSeconds } = day;
  expect(ended).toMatchObject({ status, stuckAt, left, heads, finishSeconds, workFinishSeconds });
  expect(Object.keys(ended).sort()).toEqual(Object.keys(day).sort());
  expect([ended.stages, ended.limits, ended.traces]).toEqual([[], [], null]);
  expect(JSON.stringify(ended).length).toBeLessThan(2000);
  expect(dayRecordShape().safeParse(ended).success).toBe(true);
});
