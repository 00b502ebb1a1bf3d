/** A small plan file, every feature of the day in it: two lorries, crate handling, a crew with a break, repairs, limits. Invented. */
export const SMALL_PLAN = {
  name: "Small plant",
  notes: "Invented for tests.",
  target: "300 /h",
  sources: [{ path: "", kind: "invented", note: "no real plant" }],
  day: {
    start: "05:30",
    shifts: [{ name: "early", from: "06:00", to: "08:00" }],
    breaks: [{ name: "coffee", at: "07:00", length: "10 min", crews: ["dressing"] }],
  },
  supply: {
    loads: [
      { name: "first lorry", at: "05:30", crates: 20, headsPerCrate: 12, deadOnArrival: "1 %" },
      { name: "second lorry", at: "06:30", crates: 20, headsPerCrate: 12 },
    ],
  },
  liveHandling: {
    unloading: { positions: 1, perCrate: "30 s" },
    lairageCrates: 60,
    feeding: { positions: 1, perCrate: "20 s" },
    cratesAtHanging: 2,
  },
  crews: [{ name: "dressing", people: { early: 3 } }],
  line: [
    { kind: "station", name: "hanging", section: "kill", rate: "360 /h" },
    {
      kind: "station",
      name: "stunning",
      section: "kill",
      buffer: 3,
      cycle: { lognormal: { mean: "8 s", cv: 0.2 } },
      breakdowns: [
        { name: "jam", uptime: { exponential: { mean: "20 min" } }, repair: { exponential: { mean: "1 min" } } },
      ],
    },
    { kind: "dwell", name: "bleeding", section: "kill", places: 30, dwell: "90 s" },
    {
      kind: "station",
      name: "skinning",
      section: "dressing",
      buffer: 6,
      positions: 3,
      crew: "dressing",
      cycle: { lognormal: { mean: "26 s", cv: 0.3 } },
      removals: [{ as: "condemned", share: "1 %" }],
    },
  ],
  limits: [
    {
      name: "stun to skinning",
      from: "end of stunning",
      to: "start of skinning",
      max: "4 min",
      source: "house rule, invented",
    },
  ],
};
