import type { Study } from "../../asked/study/index.ts";
import { usualResponses } from "../../day/observations/index.ts";
import { singleDayStudy } from "../../days/run/index.ts";
import { type CandidateDesign, variantOf } from "./designs.ts";
import { comparisonSeed } from "./improve.ts";
import type { Improvement } from "./improvement.ts";
import type { ImproveQuestion } from "./question.ts";
import { isMoved } from "./space.ts";

/**
 * The study that a report of what `improve` found rests on: the plan as it is and, where it is another one, the design
 * recommended, on as many days as the recommendation rests on. Example:
 *
 *     const results = await runStudy(improvementStudy(question, found), { gambrel: "my program 1.0", command: "" });
 *     renderReport(results, { improvement: found.improvement });
 */
export function improvementStudy(
  question: ImproveQuestion,
  { improvement, recommended }: { improvement: Improvement; recommended: CandidateDesign | null },
): Study {
  const { base, name, confidence, firstStage } = question;
  const single = singleDayStudy(base.plan, comparisonSeed(question));
  const asItIs = { ...single.variants[0]!, name: base.name };
  const isNew = recommended !== null && improvement.recommended?.isBase === false;
  return {
    ...single,
    ...{
      name,
      confidence,
      question: question.question || questionWords(question),
      reader: "process engineer",
      why: base.plan.week === undefined,
    },
    replications: improvement.recommended?.goal?.n ?? firstStage,
    responses: [...new Set([question.response.key, ...usualResponses(base.plan)])],
    variants: isNew ? [asItIs, variantOf(recommended)] : [asItIs],
  };
}

function questionWords({ space, response }: ImproveQuestion): string {
  if (isMoved(space)) return `What is best moved? Looked at: ${response.label}.`;
  return `How are ${space.most} ${space.unit} best shared out? Looked at: ${response.label}.`;
}
