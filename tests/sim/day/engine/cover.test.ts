import { describe, expect, it } from "vitest";
import type { Crew } from "../../../../sim/asked/plan/plan.ts";
import { dayNotes } from "../../../../sim/day/observations/index.ts";
import { constant, crew, manual, planOf, stream } from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

// Heads at 10, 20, 30, 40. Rinsed in 8 s, packed in 20 s at two places.
function plan(rinsing: Partial<Crew>, packing: Partial<Crew> = {}) {
  const line = [
    manual("rinsing", 8, "rinsing", { buffer: 9 }),
    manual("packing", 20, "packing", { buffer: 9, positions: 2 }),
  ];
  const crews = [crew("rinsing", 1, rinsing), crew("packing", 2, packing)];
  return planOf(stream(constant(10), 4), line, { crews });
}
const cover = { by: [{ crew: "packing", keeps: 1 }], atLeast: [1] };
const alwaysAbsent = { absentShare: 1 };

describe("a crew for which others step in", () => {
  it("works with a person of theirs where its own is missing, and they are one fewer all day", () => {
    const covered = plan({ ...alwaysAbsent, cover });
    const day = runChecked(covered);
    expect(day.status).toBe("finished");
    expect(passes(day, "rinsing", "end")).toEqual([18, 28, 38, 48]);
    // One of two packs: 18 to 38, then one after another.
    expect(passes(day, "packing", "end")).toEqual([38, 58, 78, 98]);
    expect(day.crews[0]).toMatchObject({ people: [1], absent: [1], helpers: [{ crew: "packing", people: [1] }] });
    expect(day.crews[1]).toMatchObject({ people: [1], absent: [0], presentSeconds: 98 });
    expect(dayNotes(covered, day)).toEqual([
      "Absent today: 'rinsing' 1 of 1.",
      "Who steps in today: 1 of 'packing' with 'rinsing'.",
    ]);
  });

  it("needs nobody while its own are there: the day is the same as without cover", () => {
    const { helpers, ...alone } = runChecked(plan({ cover })).crews[0]!;
    expect(helpers).toBeUndefined();
    expect(runChecked(plan({ cover }))).toEqual(runChecked(plan({})));
    expect(alone.people).toEqual([1]);
  });

  it("steps in for one who is ill, where the plan has nobody left", () => {
    const day = runChecked(plan({ people: [0], cover }));
    expect(passes(day, "rinsing", "end")).toEqual([18, 28, 38, 48]);
    expect(passes(day, "packing", "end")).toEqual([38, 58, 78, 98]);
  });

  it("has nobody where those who should step in need their own people, and the day says so", () => {
    const helpless = plan({ ...alwaysAbsent, cover: { ...cover, by: [{ crew: "packing", keeps: 2 }] } });
    const day = runChecked(helpless);
    expect(day.status).toBe("stuck");
    expect(dayNotes(helpless, day).at(-1)).toBe(
      "4 heads at 'rinsing' stay unworked: nobody of 'rinsing' came today (1 absent), and 'packing' had nobody to spare.",
    );
  });

  it("is helped by the first crew of its list that can spare somebody, shift by shift", () => {
    const shifts = [
      { name: "early", fromSeconds: 0, toSeconds: 25 },
      { name: "late", fromSeconds: 25, toSeconds: 100 },
    ];
    const both = {
      by: [
        { crew: "packing", keeps: 1 },
        { crew: "relief", keeps: 0 },
      ],
      atLeast: [1, 1],
    };
    const base = plan({ people: [1, 1], ...alwaysAbsent, cover: both }, { people: [1, 2] });
    const day = runChecked({
      ...base,
      crews: [...base.crews, crew("relief", [2, 2])],
      day: { ...base.day, shifts },
    });
    expect(day.crews[0]!.helpers).toEqual([
      { crew: "packing", people: [0, 1] },
      { crew: "relief", people: [1, 0] },
    ]);
    expect(day.crews.map(({ people }) => people)).toEqual([
      [1, 1],
      [1, 1],
      [1, 2],
    ]);
    // The relief worker finishes the head in hand at 25, the packer goes on with the next.
    expect(passes(day, "rinsing", "end")).toEqual([18, 28, 38, 48]);
  });
});
