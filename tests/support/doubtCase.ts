import { NO_FILES } from "../../sim/asked/plan/index.ts";
import { basePlan, readStudy } from "../../sim/asked/study/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
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
