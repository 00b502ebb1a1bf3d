import type { Plan } from "../../sim/asked/plan/index.ts";
import { breakdown } from "./breakdowns.ts";
import { constant, crew, dwell, exponential, manual, pause, planOf, station, stream } from "./plans.ts";

/** Invented plants of which it is known, by hand, what should be changed first. */

const uneven = (mean: number, cv: number) => ({ family: "lognormal" as const, mean, cv });
const HEADS = 2400;

/**
 * The machine with breakdowns sets the pace: 3.3 s a head, 3.96 s with its jams (60 s of repair for 300 s of work); everything else
 * takes 3.5 s at most, and evisceration works for the longest part of the day.
 */
export const JAMMING: Plan = planOf(
  stream(constant(3), HEADS),
  [
    manual("hanging", uneven(3.3, 0.2), "hangers", { buffer: Infinity }),
    station("stunning", uneven(3.2, 0.1), { buffer: 2 }),
    station("skinning", uneven(3.3, 0.1), { buffer: 3, breakdowns: [breakdown(0, 0, jams(300, 60))] }),
    manual("evisceration", uneven(3.5, 0.2), "cutters", { buffer: 3 }),
    manual("trim", uneven(3.4, 0.2), "trimmers", { buffer: 3 }),
  ],
  { crews: [crew("hangers", 1), crew("cutters", 1), crew("trimmers", 1)] },
);

/** Skinning is quick and stands still now and then for long; four other stages work for more of the day than it stands. */
export const SELDOM: Plan = planOf(
  stream(constant(3), HEADS),
  [
    manual("hanging", uneven(3.3, 0.2), "hangers", { buffer: Infinity }),
    station("stunning", uneven(3.4, 0.1), { buffer: 2 }),
    station("skinning", uneven(2.4, 0.1), { buffer: 2, breakdowns: [breakdown(0, 0, jams(1500, 240))] }),
    manual("evisceration", uneven(3.4, 0.2), "cutters", { buffer: 2 }),
    manual("inspection", uneven(3.3, 0.2), "inspectors", { buffer: 2 }),
    manual("trim", uneven(3.4, 0.2), "trimmers", { buffer: 2 }),
  ],
  { crews: [crew("hangers", 1), crew("cutters", 1), crew("inspectors", 1), crew("trimmers", 1)] },
);

function jams(uptime: number, repair: number) {
  return { uptimeSeconds: exponential(uptime), repairSeconds: exponential(repair) };
}

/**
 * Two stages with the same load. One has two positions and one person, the other one position with its person: a change to either
 * alone leaves the other as slow as it was; both end work half an hour earlier (1,000 heads, 1.8 s each).
 */
export const TWO_ALIKE: Plan = planOf(
  stream(constant(2), 1000),
  [
    station("hanging", 2, { buffer: Infinity }),
    manual("cutting", 4, "cutters", { buffer: 2, positions: 2 }),
    manual("evisceration", 4, "eviscerators", { buffer: 2 }),
    station("rinsing", 2.2, { buffer: 2 }),
  ],
  { crews: [crew("cutters", 1), crew("eviscerators", 1)] },
);

/** More places before skinning let more through, and let heads wait longer than the limit allows. */
export const WAITING: Plan = planOf(
  stream(exponential(3.5), 800),
  [
    station("opening", exponential(4), { buffer: Infinity }),
    station("skinning", exponential(4), { buffer: 1, breakdowns: [breakdown(0, 0, jams(400, 20))] }),
  ],
  {
    limits: [
      {
        name: "open to skinning",
        from: { stage: "opening", moment: "end" },
        to: { stage: "skinning", moment: "start" },
        minSeconds: null,
        maxSeconds: 8,
        source: "invented house rule",
      },
    ],
  },
);

/** Stunning is slowest, then a trough for bleeding. */
export const STUNNING: Plan = planOf(stream(constant(3), 600), [
  station("hanging", 3, { buffer: Infinity }),
  station("stunning", uneven(4, 0.1), { buffer: 2 }),
  station("sticking", uneven(3.8, 0.1), { buffer: 0 }),
  dwell("bleeding", 90, 40),
  station("skinning", uneven(3, 0.1), { buffer: 4 }),
]);

/**
 * The crew behind the trough pauses ten minutes before the crew in front of it: the trough of 12 places fills at once, the kill
 * stands for ten minutes and then takes its own break. Two breaks of 15 min stop the line for about 25 min each.
 */
export const BREAKS: Plan = (() => {
  const plan = planOf(
    stream(constant(3), 1800),
    [
      manual("hanging", 3.6, "kill", { buffer: Infinity }),
      manual("sticking", 3.8, "kill", { buffer: 1 }),
      dwell("bleeding", 40, 12),
      manual("skinning", 3.9, "dressing", { buffer: 2 }),
    ],
    { crews: [crew("kill", 2), crew("dressing", 1)] },
  );
  const breaks = [1800, 4800].map((at, index) =>
    pause(`break ${index + 1}`, at, 900, { crews: ["kill", "dressing"], laterSeconds: { kill: 600 } }),
  );
  return { ...plan, day: { ...plan.day, breaks } };
})();
