import { expect, it } from "vitest";
import { DaysFailed } from "../../../../sim/days/run/index.ts";

it("names the first three days and counts the rest", () => {
  const failed = [0, 1, 2, 3, 4].map((replication) => ({ variant: 0, replication, message: `reason ${replication}` }));
  const [one, two, three] = [0, 1, 2].map((n) => `variant "base", day ${n + 1}: reason ${n}`);
  expect(new DaysFailed(failed, ["base"]).message).toBe(
    `5 days could not be simulated: ${one}; ${two}; ${three}; and 2 more`,
  );
});
