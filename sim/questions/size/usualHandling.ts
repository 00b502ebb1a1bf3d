import type { Way } from "../../asked/plan/index.ts";

/** The steps that a crate goes through, each as `crates.handling` of a demand would write it. */
export type UsualHandling = Record<string, Record<string, unknown>>;

const varying = (mean: string, cv: number) => ({ lognormal: { mean, cv } });
const stops = (name: string, uptime: string, repair: string) => ({
  breakdowns: [{ name, uptime: { exponential: { mean: uptime } }, repair: { lognormal: { mean: repair, cv: 0.5 } } }],
});

/** Invented figures, all of them: to be replaced by one's own. */
export const USUAL_HANDLING: Record<Way, UsualHandling> = {
  "hand-slid": {
    unloading: { time: varying("22 s", 0.25), people: 1 },
    feeding: { time: varying("18 s", 0.2), people: 1 },
    washing: { time: varying("30 s", 0.2), people: 1, waterPerCrate: "9 L" },
    restacking: { time: varying("12 s", 0.25), people: 1 },
  },
  lift: {
    unloading: { time: varying("64 s", 0.2), cratesAtOnce: 5, people: 1 },
    feeding: { time: varying("10 s", 0.15), people: 1, power: "1.4 kW", ...stops("lift stands", "70 min", "110 s") },
    washing: { time: "15 s", people: 0, waterPerCrate: "11 L", waterReused: "45 %", power: "5.5 kW" },
    restacking: { time: varying("13 s", 0.2), people: 1 },
  },
  automatic: {
    unloading: { time: varying("105 s", 0.2), cratesAtOnce: 16, people: 1 },
    feeding: {
      time: "21 s",
      cratesAtOnce: 4,
      people: 0,
      power: "4.5 kW",
      ...stops("crate askew", "35 min", "75 s"),
    },
    washing: { time: "8 s", people: 0, waterPerCrate: "12 L", waterReused: "55 %", power: "8 kW" },
    restacking: { time: "22 s", cratesAtOnce: 4, people: 0, power: "3.5 kW" },
    palletsOut: { time: varying("95 s", 0.2), cratesAtOnce: 16, people: 1 },
  },
};

/** A full line's crews on crates. */
export const CRATE_CREWS: Record<string, string> = {
  unloading: "live animals",
  feeding: "live animals",
  washing: "crate return",
  restacking: "crate return",
  palletsOut: "live animals",
};
