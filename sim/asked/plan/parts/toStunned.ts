import type { Stunned } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

export function toStunned({ from, to, hold, late }: NonNullable<PlanFile["stunned"]>): Stunned {
  return {
    from,
    to,
    hold,
    late: late && { afterSeconds: late.after, help: late.help, takesSeconds: late.takes, crew: late.crew },
  };
}
