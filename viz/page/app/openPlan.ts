import { batch } from "@preact/signals";
import type { Linked } from "../plan/link.ts";
import type { PlanText } from "../worker/messages.ts";
import * as state from "./state.ts";

/** Puts another plan on the page; what was moved in the one before is forgotten. */
export function openPlan(plan: PlanText, { moves = {}, seed = "1", replication = 0 }: Partial<Linked> = {}): void {
  batch(() => {
    state.clock.pause();
    state.clock.moveTo(0);
    state.plan.value = plan;
    state.moves.value = moves;
    state.seed.value = seed;
    state.replication.value = replication;
    state.picked.value = null;
  });
}
