/** An invented plant that uses every key of the plan file at least once; its figures mean nothing. */
export function samplePlan() {
  return {
    $schema: "../../sim/asked/plan/plan.schema.json",
    name: "sample",
    notes: "Invented figures.",
    target: "600 /h",
    sources: [
      { path: "", kind: "invented", note: "made up for the tests" },
      { path: "line.skinning.cycle", kind: "measured", note: "stopwatch" },
    ],
    day: {
      start: "05:00",
      shifts: [
        { name: "early", from: "06:00", to: "14:00" },
        { name: "late", from: "14:00", to: "25:30" },
      ],
      breaks: [
        { name: "first break", at: "09:00", length: "15 min" },
        { name: "second break", at: "12:00", length: "30 min", crews: ["hanging"], stages: ["stunning"] },
      ],
      closing: { stopHangingAt: "24:30" } as Record<string, unknown>,
      ceiling: "36 h",
    },
    supply: {
      loads: [
        {
          name: "lorry",
          at: "05:30",
          delay: { triangular: { min: "0 min", mode: "5 min", max: "30 min" } },
          crates: 60,
          headsPerCrate: 12,
          deadOnArrival: "0.2 %",
          liveWeight: { normal: { mean: "2.5 kg", sd: "200 g" } },
          repeat: { every: "45 min", times: 3 },
        },
        { name: "late lorry", at: "12:00", crates: 50, headsPerCrate: 12 },
      ],
    } as Record<string, unknown>,
    liveHandling: {
      unloading: { positions: 2, perCrate: { uniform: { min: "10 s", max: "14 s" } }, crew: "hanging" },
      lairageCrates: 120,
      feeding: {
        perCrate: "20 s",
        breakdowns: [{ name: "roller jam", uptime: { exponential: { mean: "3 h" } }, repair: "2 min" }],
      },
    } as Record<string, unknown> | null,
    crews: [
      { name: "hanging", people: 6, rule: "longest queue" },
      { name: "skinning", people: { early: 3, late: 2 } },
    ] as Record<string, unknown>[],
    line: [
      {
        name: "hanging",
        section: "live",
        kind: "station",
        work: "manual",
        positions: 3,
        buffer: 0,
        cycle: { lognormal: { mean: "5.5 s", cv: 0.3 } },
        crew: "hanging",
        travel: "8 s",
      },
      { name: "stunning", kind: "station", rate: "720 /h", removals: [{ as: "condemned", share: "0.8 %" }] },
      { name: "bleeding", kind: "dwell", places: 40, dwell: "150 s", travel: { gamma: { mean: "10 s", cv: 0.2 } } },
      {
        name: "skinning",
        section: "dressing",
        kind: "station",
        positions: 2,
        buffer: null,
        cycle: { empirical: { csv: "times.csv", column: "seconds", unit: "s" } },
        crew: "skinning",
        breakdowns: [
          {
            name: "blade",
            clock: "calendar",
            scope: "station",
            uptime: { weibull: { mean: "4 h", cv: 0.5 } },
            repair: { erlang: { mean: "5 min", k: 3 } },
          },
        ],
      },
      { name: "chilling", kind: "dwell", places: null, dwell: { pert: { min: "80 min", mode: "90 min", max: "2 h" } } },
    ] as Record<string, unknown>[],
    limits: [
      {
        name: "stun to stick",
        from: "end of stunning",
        to: "entry to bleeding",
        max: "10 s",
        source: "example of a house rule",
      },
      { name: "kill to chill", from: "arrival", to: "leaving the line", min: "1 min", max: "9 h", source: "invented" },
    ] as Record<string, unknown>[],
  };
}

export const sampleFiles = {
  readText(path: string): string {
    if (path === "times.csv") return "head,seconds\n1,4.6\n2,4.1\n3,5.2\n";
    throw new Error("no such file");
  },
};
