import { describe, expect, it } from "vitest";
import { ASSUMPTIONS } from "../../../../sim/questions/size/assumed.ts";
import { demandOf } from "../../../support/demands.ts";

const find = (changes: Record<string, unknown>, path: string) =>
  demandOf(changes).figures.find((figure) => figure.path === path);

describe("figuresOf", () => {
  it("says of every figure whether it was given or where it comes from", () => {
    expect(find({}, "animals.condemned")).toMatchObject({ value: "0.8 %", source: "invented" });
    expect(find({ animals: { condemned: "2 %" } }, "animals.condemned")).toMatchObject({
      value: "2 %",
      source: "given",
      note: "",
    });
    expect(find({}, "chilling.core")).toMatchObject({ source: "published" });
    expect(find({}, "week.heads")).toMatchObject({ value: "20000", source: "given" });
    expect(find({}, 'steps["four-leg cutting"].cycle')).toMatchObject({ source: "invented", value: "2.7 s" });
  });

  it("does not list a usual time that a given one replaces, nor a step that is left out", () => {
    const changes = { steps: { skinning: { rate: "900 /h" }, trim: { leftOut: true } } };
    expect(find(changes, "steps.skinning.cycle")).toBeUndefined();
    expect(find(changes, "steps.skinning.rate")).toMatchObject({ source: "given" });
    expect(demandOf(changes).figures.some(({ path }) => path.startsWith("steps.trim."))).toBe(false);
  });

  it("lists a step of the demand's own as given", () => {
    const changes = {
      steps: { rinsing: { work: "manual", cycle: { uniform: { min: "2 s", max: "4 s" } }, after: "skinning" } },
    };
    expect(find(changes, "steps.rinsing.cycle")).toMatchObject({ value: "uniform, min 2 s, max 4 s", source: "given" });
  });

  it("never lets an invented number inherit the source of a published one", () => {
    expect(find({}, "animals.liveWeight.normal.mean")).toMatchObject({ value: "2.5 kg", source: "published" });
    expect(find({}, "animals.liveWeight.normal.sd")).toMatchObject({ value: "0.18 kg", source: "invented" });
    expect(find({}, "animals.liveWeight")).toBeUndefined();
    const published = demandOf({}).figures.filter(({ source }) => source === "published");
    // One number each, and a name in the note.
    for (const { path, value, note } of published) {
      expect(value.match(/\d+(\.\d+)?/g), path).toHaveLength(1);
      expect(note, path).toMatch(/Lebas|Regulation/);
    }
  });

  it("lists the crate steps of each way of live handling", () => {
    const path = "crates.handling.lift.unloading.time";
    expect(find({}, path)).toMatchObject({ what: "unloading: time", source: "invented" });
    const handling = { lift: { unloading: { time: "50 s" } } };
    expect(find({ crates: { handling } }, path)).toMatchObject({ value: "50 s", source: "given" });
  });

  it("gives every assumption a note", () => {
    for (const { path, note } of ASSUMPTIONS) expect(note.length, path).toBeGreaterThan(10);
  });
});
