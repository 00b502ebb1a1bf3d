import type { Assumption } from "./assumed.ts";
import type { Zone } from "./zones.ts";

/** A step of the usual way of a rabbit, as the `steps` of a demand would write it. */
export interface UsualStep {
  name: string;
  section: string;
  /** Off the line: only what inspection sends there comes. */
  offLine: boolean;
  json: Record<string, unknown>;
  /** By key, where it is not `TO_BEGIN_WITH`. */
  origins: Record<string, Origin>;
}

export type Origin = Pick<Assumption, "source" | "note">;

export const TO_BEGIN_WITH: Origin = {
  source: "invented",
  note: "a figure to begin with; take your own by the stopwatch and from the makers",
};
const SHARES: Origin = {
  source: "invented",
  note: "share of live weight to begin with; weigh your own",
};
const STUNNING: Origin = {
  source: "invented",
  note: "a figure to begin with; the maker's manual and the official veterinarian decide",
};
const BLEEDING: Origin = {
  source: "invented",
  note: "a figure to begin with; the law at the site and the official veterinarian say how long",
};

const hand = (mean: string, cv: number) => ({ work: "manual", cycle: { lognormal: { mean, cv } } });
const takesOff = (name: string, share: string) => ({ takesOff: [{ name, share }] });
const jam = (uptime: string, repair: string) => ({
  breakdowns: [
    { name: "jam", uptime: { exponential: { mean: uptime } }, repair: { lognormal: { mean: repair, cv: 0.6 } } },
  ],
});

function step(
  [section, zone]: [string, Zone],
  name: string,
  json: Record<string, unknown>,
  origins: Record<string, Origin> = {},
): UsualStep {
  return { name, section, offLine: false, json: { zone, ...json }, origins };
}

const LIVE: [string, Zone] = ["live animals", "live side"];
const KILL: [string, Zone] = ["kill", "kill"];
const SKINNING: [string, Zone] = ["skinning", "unclean side"];
const EVISCERATION: [string, Zone] = ["evisceration", "clean side"];
const CHILLING: [string, Zone] = ["chilling", "clean side"];

/** In the order in which heads pass them. */
export const USUAL_STEPS: readonly UsualStep[] = [
  step(LIVE, "hanging", { ...hand("14 s", 0.3), travel: "8 s" }),
  step(KILL, "stunning", hand("4.6 s", 0.12), { cycle: STUNNING }),
  step(KILL, "sticking", { ...hand("4.2 s", 0.15), travel: "3 s", ...takesOff("blood", "3 %") }, { takesOff: SHARES }),
  step(KILL, "bleeding", { work: "dwell", dwell: "150 s", travel: "4 s" }, { dwell: BLEEDING }),
  step(
    SKINNING,
    "hind-leg cutting",
    { ...hand("4.8 s", 0.2), travel: "4 s", ...takesOff("hind paws", "2 %") },
    { takesOff: SHARES },
  ),
  step(SKINNING, "pre-loosening", { ...hand("10.2 s", 0.25), travel: "4 s" }),
  step(
    SKINNING,
    "skinning",
    {
      work: "machine",
      cycle: { triangular: { min: "4.2 s", mode: "4.6 s", max: "5.4 s" } },
      travel: "5 s",
      ...jam("16 min", "65 s"),
      ...takesOff("skins", "15 %"),
      waterPerHead: "0.4 L",
      power: "3 kW",
    },
    { takesOff: SHARES },
  ),
  step(
    SKINNING,
    "four-leg cutting",
    {
      work: "machine",
      cycle: "2.7 s",
      travel: "4 s",
      ...jam("40 min", "45 s"),
      ...takesOff("fore paws and head", "6.4 %"),
      power: "1.1 kW",
    },
    { takesOff: SHARES },
  ),
  step(EVISCERATION, "abdomen opening", hand("4.7 s", 0.2)),
  step(
    EVISCERATION,
    "evisceration",
    {
      ...hand("16.8 s", 0.28),
      travel: "5 s",
      ...takesOff("viscera", "20 %"),
      waterPerHead: "1.2 L",
      waterPerHour: "150 L/h",
    },
    { takesOff: SHARES },
  ),
  step(["evisceration", "inspection"], "inspection", { ...hand("4.6 s", 0.3), travel: "4 s" }),
  step(EVISCERATION, "final trim", { ...hand("9.5 s", 0.35), travel: "10 s", waterPerHead: "0.8 L" }),
  step(CHILLING, "chiller loading", hand("4.4 s", 0.2)),
  step(CHILLING, "chilling", { work: "chilling" }),
  { ...step(EVISCERATION, "trim", hand("25 s", 0.4)), offLine: true },
];
