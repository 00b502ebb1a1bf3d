import { describe, expect, it } from "vitest";
import { dueFor, rampUp, speedShare, staffingOf, withRelief } from "../../../../sim/questions/dossier/people.ts";
import { demandOf, designOf } from "../../../support/demands.ts";

describe("people", () => {
  it("twelve posts always manned, each person off 15 minutes in 120, take fourteen (12 / (1 - 0.125) = 13.7)", () => {
    expect(withRelief(12, 15 / 120)).toBe(14);
    expect(withRelief(12, 0)).toBe(12);
  });

  it("eighteen who have to come, each there by 94 %, ask for 21 on 95 % of days (binomial: 20 give 88.5, 21 give 96.6 %)", () => {
    expect(dueFor(18, 0.94, 0.95)).toBe(21);
    expect(dueFor(18, 0.94, 0.885)).toBe(20);
    expect(dueFor(18, 0.94, 0.3)).toBe(18);
    expect(dueFor(18, 1, 0.95)).toBe(18);
  });

  it("are employed for their leave beyond the weeks without work", () => {
    const { design } = designOf();
    const employed = (weeks: number) =>
      staffingOf(demandOf({ staff: { absence: 0, relief: "0 min", leave: 4 }, years: { weeks } }), design).employed;
    expect(employed(48)).toBe(design.people);
    expect(employed(52)).toBe(Math.ceil(design.people / (1 - 4 / 52)));
  });
});

describe("the first weeks", () => {
  it("learn as Wright's curve read for units: at 80 % the second head of a hundred takes 80 % of the first, the tenth 47.65 %", () => {
    const b = Math.log2(0.8);
    const first = 1 / speedShare(1, 100, b);
    expect(1 / speedShare(2, 100, b) / first).toBeCloseTo(0.8, 12);
    expect(1 / speedShare(10, 100, b) / first).toBeCloseTo(0.47650987, 7);
    expect(speedShare(100, 100, b)).toBe(1);
  });

  it("rise week by week to the rated speed, the first day at the pace of the post that is slowest for its load", () => {
    const { design } = designOf();
    const demand = demandOf({
      week: { heads: 20_000, days: 1 },
      staff: { learning: "90 %", known: 30_000, done: 500 },
    });
    const weeks = rampUp(demand, design);
    const speed = (500 / 30_000) ** -Math.log2(0.9);
    const loads = design.crews.flatMap(({ name, load }) =>
      design.stations
        .filter(({ crew, work }) => crew === name && work === "manual")
        .map((station) => Math.max(station.load, load)),
    );
    expect(weeks[0]!.share).toBeCloseTo(Math.min(1, speed / Math.max(...loads)), 9);
    expect(weeks.map(({ share }) => share)).toEqual(weeks.map(({ share }) => share).toSorted((a, b) => a - b));
    expect(weeks.at(-1)!.share).toBe(1);
    expect(weeks.at(-1)!.heads).toBeCloseTo(design.rate.headsPerWeek, 6);
  });

  it("are at the rated speed at once where everybody knows the work", () => {
    const { design } = designOf();
    expect(rampUp(demandOf({ staff: { known: 100, done: 100 } }), design)).toHaveLength(1);
  });
});
