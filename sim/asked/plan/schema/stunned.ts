import { z } from "zod";
import { time } from "../../../text/units/index.ts";
import { LATE_HELP } from "../plan.ts";
import { crewName } from "./crewNames.ts";
import { quantity, quantityAboveZero } from "./readBy.ts";
import { record } from "./record.ts";
import { reference } from "./text.ts";

/** What is done so that no stunned animal waits for its sticking. */
export function stunned() {
  return record({
    from: reference().describe("Station that stuns; on a chain or not."),
    to: reference().describe("Station that sticks; further down the line, on a chain or not."),
    hold: z
      .boolean()
      .default(true)
      .describe(
        "Stun a head only when, by all that is known at that instant, it can be stuck and begin to bleed without a wait (default).",
      ),
    late: late()
      .nullable()
      .default(null)
      .describe("What is done for a head that waits all the same. Default: null, nothing."),
  });
}

function late() {
  return record({
    after: quantityAboveZero(time).describe(
      "Time from the end of stunning after which somebody is called to the head.",
    ),
    help: z
      .enum(LATE_HELP)
      .describe(
        'What is done: "stun again", after which the time counts anew, or "stick there", where the head is: it goes on as stuck.',
      ),
    takes: quantity(time).describe("How long it takes, from when somebody is there."),
    crew: crewName("Crew of which one person does it, before other work. Default: null, somebody is always at hand."),
  });
}
