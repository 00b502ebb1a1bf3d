import { factorsAt, NO_FILES, readPlan } from "../../sim/asked/plan/index.ts";
import { basePlan, latinHypercube, readStudy } from "../../sim/asked/study/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { uniformStream } from "../../sim/maths/random/index.ts";
import { normalQuantile } from "../../sim/maths/statistics/index.ts";
import {
  analyse,
  type Doubt,
  type DoubtQuestion,
  doubtQuestion,
  type WorldCounts,
} from "../../sim/questions/doubt/index.ts";
import { exampleFile } from "./readExample.ts";

type Loose = Record<string, unknown>;

/** The plan that shows uncertain figures, with some of them or with others. Invented. */
export function doubtPlan(...uncertain: Loose[]): Loose {
  const plan = exampleFile("parts/uncertain") as Loose;
  return uncertain.length === 0 ? plan : { ...plan, uncertain };
}

/** A study of that plan with these variants. */
export function doubtStudy(plan: Loose, list: Loose[] = [], more: Loose = {}): Loose {
  return {
    ...{ name: "Doubts", plan, responses: ["finish", "headsPerHour"], seed: "7" },
    ...(list.length === 0 ? {} : { design: { list } }),
    ...more,
  };
}

export function readDoubt(study: Loose, counts: Partial<WorldCounts> = {}) {
  const reading = readStudy(study, NO_FILES, { knownResponses: responsesOf });
  if (reading.study === null) throw new Error(JSON.stringify(reading.faults));
  const { json, files } = basePlan(study, NO_FILES)!;
  const source = { study: reading.study, base: { json, files: files! }, studyFiles: NO_FILES };
  return doubtQuestion(source, { worlds: 40, days: 4, seed: "7", ...counts });
}

/** What a day comes to: by variant, the first factor of each figure, and a row of the day. */
export type Response = (variant: number, factors: readonly number[], day: number) => number | null;

/** The analysis of days that were not simulated but reckoned, so that everything about them is known. */
export function reckonedDoubt(question: DoubtQuestion, value: Response, others: Record<string, Response> = {}): Doubt {
  const { study, variants, figures, counts, plan } = question;
  const infos = responsesOf(plan);
  const all: Record<string, Response> = { ...others, [question.responses[0]!]: value };
  const valuesOf = (respond: Response, index: number) => {
    const [world, variant] = [Math.floor(index / variants.length), index % variants.length];
    const factors = figures.map((figure) => figure.factors[0]![world]!);
    return Array.from({ length: counts.days }, (_, day) => respond(variant, factors, world * counts.days + day));
  };
  const found = study.variants.map((_, index) => ({
    values: Object.fromEntries(Object.entries(all).map(([key, respond]) => [key, valuesOf(respond, index)])),
  }));
  const results = { responses: study.responses.map((key) => infos.find((info) => info.key === key)!), variants: found };
  return analyse(
    {
      ...question,
      responses: Object.keys(all)
        .filter((key) => question.responses.includes(key))
        .reverse(),
    },
    results as never,
  );
}

/** A standard normal for each of so many days, always the same ones. */
export function luckOf(seed: string, days: number): number[] {
  const uniforms = uniformStream(seed, 0, "test", "luck");
  return Array.from({ length: days }, () => normalQuantile(uniforms.next()));
}

const UNSURE = [
  { name: "skinning's jams", paths: ["line.skinning.breakdowns.jam.repair"], guess: "a third" },
  {
    name: "cutter's cycle time",
    paths: ["line.cutting.cycle"],
    factor: { uniform: { min: 0.9, max: 1.1 } },
    kind: "measured",
    note: "Forty readings",
  },
  { name: "hanging's cycle time", paths: ["line.hanging.cycle"], guess: "a third" },
];
const COUNTS = { worlds: 60, days: 6, seed: "seen" };

/** Reading a plan for each of so many worlds takes long, and what is reckoned asks for none: a few are read. */
const FEW = { worlds: 6, days: 2, seed: "seen" };

function manyWorlds(question: DoubtQuestion): DoubtQuestion {
  const { study, figures, variants } = question;
  const shares = latinHypercube(figures.length, COUNTS.worlds, COUNTS.seed);
  const known = doubtPlan(...UNSURE);
  const { uncertain } = readPlan(known, NO_FILES).plan!;
  return {
    ...question,
    counts: COUNTS,
    figures: figures.map((figure, at) => ({
      ...figure,
      factors: [shares[at]!.map((share) => factorsAt(uncertain![at]!, share)[0]!)],
    })),
    study: {
      ...study,
      variants: Array.from(
        { length: COUNTS.worlds * variants.length },
        (_, index) => study.variants[index % variants.length]!,
      ),
    },
  };
}

/**
 * Reckoned, so that all of it is known: work ends at 13:30, sd of luck 8 min; jams and cutter are uniform with sd 12 and 5
 * min, hanging does nothing. With `choice` a machine is 4 min earlier on average, by the jams (sd 5 min); more places are 9
 * min later; a shortcut is earlier, and does harm.
 */
export function seenDoubt({
  choice = false,
  names = ["a machine that jams less", "more places", "a shortcut"],
} = {}): Doubt {
  const list = choice ? names.map((name) => ({ name, set: { "line.skinning.buffer": 9 } })) : [];
  const question = manyWorlds(readDoubt(doubtStudy(doubtPlan(...UNSURE), list), FEW).question!);
  const luck = luckOf("seen", 360);
  const sd = (of: number) => of / Math.sqrt(3);
  const gains = (jams: number) => [0, 240 + (300 * (jams - 1)) / sd(1 / 3), -540, 1200];
  const finish: Response = (variant, [jams, cutter], day) =>
    27_000 +
    (720 * (jams! - 1)) / sd(1 / 3) +
    (300 * (cutter! - 1)) / sd(0.1) +
    480 * luck[day]! -
    (gains(jams!)[variant] ?? -600 - 60 * variant);
  const carcasses: Response = (variant) => (variant === 3 ? 900 : 1000);
  const headsPerHour: Response = (_, [jams], day) => 560 - 30 * (jams! - 1) + 4 * luck[day]!;
  return reckonedDoubt(question, finish, { carcasses, headsPerHour });
}
