import { expect, it } from "vitest";
import type { LateHelp, Plan } from "../../../../sim/asked/plan/index.ts";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const plan = (help: LateHelp["help"]): Plan => ({
  ...WHOLE_PLAN,
  stunned: {
    from: "stunning",
    to: "skinning",
    hold: false,
    late: { afterSeconds: 8, help, takesSeconds: 3, crew: null },
  },
});
const day = { ...wholeDay(), stunned: { stunnedAgain: 4, stuckThere: 2 } };

it("counts second stuns, or heads stuck where they were, whichever the plan provides for; less is better", () => {
  expect(measure(day, plan("stun again"))).toMatchObject({ stunnedAgain: 4 });
  expect(measure(day, plan("stick there"))).toMatchObject({ stuckThere: 2 });
  const keys = (help: LateHelp["help"]) =>
    responsesOf(plan(help)).flatMap(({ key, better }) => (/^(stunned|stuck)/.test(key) ? [[key, better]] : []));
  expect(keys("stun again")).toEqual([["stunnedAgain", "less"]]);
  expect(keys("stick there")).toEqual([["stuckThere", "less"]]);
});

it("has no such response without help, and no value on a day that was stored before there was any", () => {
  expect(Object.keys(measure(day, WHOLE_PLAN))).not.toContain("stunnedAgain");
  expect(measure({ ...day, stunned: null }, plan("stun again")).stunnedAgain).toBeNull();
});
