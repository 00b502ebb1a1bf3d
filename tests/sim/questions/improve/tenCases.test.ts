import { describe, expect, it } from "vitest";
import { pairedDifference } from "../../../../sim/maths/statistics/index.ts";
import { Designs } from "../../../../sim/questions/improve/designs.ts";
import {
  type CandidateDesign,
  countDesigns,
  type ImproveQuestion,
  improve,
} from "../../../../sim/questions/improve/index.ts";
import { ranked, scoreOf } from "../../../../sim/questions/improve/score.ts";
import { type Counts, isAllowed, type Space } from "../../../../sim/questions/improve/space.ts";
import { type Trial, Trials } from "../../../../sim/questions/improve/trials.ts";
import { everyDay } from "../../../support/everyDay.ts";
import { IMPROVE_CASES } from "../../../support/improveCases.ts";
import { improveQuestion, simulateHere } from "../../../support/improving.ts";

const PATIENCE = { timeout: 120_000 };
/** Days of each design in the full enumeration. */
const DAYS = 10;
/** Of each finalist: search and choice together are then held to a tenth of the enumeration's days in every case. */
const AT_MOST = 14;
/** Days, seen by neither, that the two picks are compared on. */
const FRESH = 40;
/** Of each of the ten comparisons; the chance that any of ten picks as good as the enumerated one fails is 1 % at most. */
const CONFIDENCE = 0.998;

function everyDesign(space: Space, counts: Counts = []): Counts[] {
  if (counts.length === space.elements.length) return isAllowed(space, counts) ? [counts] : [];
  const { from, to } = space.elements[counts.length]!;
  const values = Array.from({ length: to - from + 1 }, (_, step) => from + step);
  return values.flatMap((value) => everyDesign(space, [...counts, value]));
}

/** Without what a search does besides: straight from the simulator. */
async function enumerated(question: ImproveQuestion, all: readonly CandidateDesign[]): Promise<Trial[]> {
  const keys = [question.response.key, ...question.limits.map(({ key }) => key)];
  const plans = all.map(({ plan }) => plan);
  const found = await simulateAll(plans, keys, DAYS);
  return all.map((design, index) => {
    const columns = keys.map((_, column) => found[index]!.map((values) => values[column]!));
    const values = columns[0]!.map((value) => value - design.chargePerDay);
    return { design, values, responses: Object.fromEntries(keys.map((key, at) => [key, columns[at]!])), why: null };
  });
}

const simulateAll = everyDay();

describe("improve, against simulating every design", PATIENCE, () => {
  it.each(IMPROVE_CASES)(
    "finds the best one, or one that is not shown to be worse, in a tenth of the days: $title",
    async ({ json }) => {
      const question = improveQuestion({ ...json, atMost: AT_MOST });
      const designs = new Designs(question);
      const all = everyDesign(question.space).map((counts) => designs.of(counts)!);
      const enumeration = enumerated(question, all);
      const { improvement, recommended } = await improve(question, { simulate: simulateHere });
      expect(all).toHaveLength(countDesigns(question.space));
      expect(improvement.effort.searchDays + improvement.effort.choiceDays).toBeLessThanOrEqual(
        (all.length * DAYS) / 10,
      );
      const order = ranked(await enumeration, question);
      const pick = designs.of(recommended!.counts!)!;
      // By chance alone a design would be among these in one case of twenty.
      expect(order.findIndex(({ design }) => design === pick)).toBeLessThan(all.length / 20);
      const fresh = new Trials(question, simulateHere, "fresh days", false);
      const [best, found] = await fresh.of([order[0]!.design, pick], FRESH);
      const gap = pairedDifference(found!.values, best!.values, CONFIDENCE)!;
      const isWorse = question.response.better === "less" ? gap.low! > 0 : gap.high! < 0;
      expect(isWorse).toBe(false);
      expect(scoreOf(found!, question).excess).toBe(0);
    },
  );
});
