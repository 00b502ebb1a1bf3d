import type { UnitFamily } from "./unitFamily.ts";

/** Heads, crates or anything else counted per unit of time, read as a number per second. */
export const rate: UnitFamily = {
  name: "a rate",
  si: "/s",
  example: "620 /h",
  units: { "/d": [1, 86400], "/h": [1, 3600], "/min": [1, 60], "/s": [1, 1] },
  otherSpellings: {
    "1/h": "/h",
    "per hour": "/h",
    "/hour": "/h",
    "heads/h": "/h",
    "/m": "/min",
    "per minute": "/min",
    "/minute": "/min",
    "per second": "/s",
    "/sec": "/s",
    "/second": "/s",
    "per day": "/d",
    "/day": "/d",
  },
  least: 0,
  printed: ["/h"],
};
