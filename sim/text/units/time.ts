import type { UnitFamily } from "./unitFamily.ts";

/** Lengths of time, read as seconds. A day (d) is 86,400 s (SI Brochure, 9th edition, Table 8). */
export const time: UnitFamily = {
  name: "a time",
  si: "s",
  example: "4.2 s",
  units: { ms: [1, 1000], s: [1, 1], min: [60, 1], h: [3600, 1], d: [86400, 1] },
  otherSpellings: {
    sec: "s",
    secs: "s",
    second: "s",
    seconds: "s",
    m: "min",
    mins: "min",
    minute: "min",
    minutes: "min",
    hr: "h",
    hrs: "h",
    hour: "h",
    hours: "h",
    day: "d",
    days: "d",
  },
  least: 0,
  printed: ["ms", "s", "min", "h", "d"],
};
