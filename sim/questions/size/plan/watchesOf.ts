import type { Demand } from "../demand.ts";
import type { Parts } from "../parts.ts";

/** The limit that a plan with stunning and sticking watches. */
export const STUN_TO_STICK = {
  name: "stun to stick",
  from: "end of stunning",
  to: "start of sticking",
  max: "10 s",
  source:
    "Germany, Tierschutz-Schlachtverordnung 2012, Anlage 2 (10 s lying, 20 s hanging); EFSA 2020 speaks of under 10 s for rabbits. The law at the site and the official veterinarian decide",
};
const TO_CHILL =
  "Assumed house rule; Regulation (EC) 853/2004 asks for chilling as soon as possible. The law at the site and the official veterinarian decide";

/** By what is known at the instant of stunning; for what is not (a breakdown), somebody is at hand who sticks the head where it is. */
const HOLD = {
  from: "stunning",
  to: "sticking",
  hold: true,
  late: { after: "8 s", help: "stick there", takes: "5 s", crew: null },
};

/** Whether heads are both stunned and stuck, so that the time between is watched. */
export function watchesKill(steps: Demand["steps"]): boolean {
  return ["stunning", "sticking"].every((wanted) => steps.some(({ name }) => name === wanted));
}

/**
 * Time limits, and what keeps a stunned head from waiting: the hold, and gates: a head is stunned only when somebody can stick it at once and when there is a place for it to
 * bleed, so that none waits stunned behind a line that stands.
 */
export function watchesOf(
  { steps }: Demand,
  { stations, dwells }: Parts,
): { limits: unknown[]; gates: unknown[]; stunned?: unknown } {
  const has = (name: string): boolean => steps.some((step) => step.name === name);
  const kill = watchesKill(steps);
  const bleeding = dwells.find(({ name }) => name === "bleeding");
  const limits = [
    ...(kill ? [STUN_TO_STICK] : []),
    ...(has("sticking") && has("chilling")
      ? [{ name: "kill to chill", from: "end of sticking", to: "entry to chilling", max: "45 min", source: TO_CHILL }]
      : []),
  ];
  const from = "start of stunning";
  const sticking = stations.find(({ name }) => name === "sticking")?.positions ?? 1;
  const gates = [
    { name: "stun only when sticking has room", from, to: "start of sticking", atMost: sticking },
    ...(bleeding === undefined
      ? []
      : [{ name: "stun only when bleeding has room", from, to: "exit from bleeding", atMost: bleeding.places }]),
  ];
  return kill ? { limits, gates, stunned: HOLD } : { limits, gates: [] };
}
