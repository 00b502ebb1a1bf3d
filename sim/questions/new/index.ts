/** A dozen questions, and the plan that their answers make. */

export { type AnswerFault, askNew, type NewAnswerer, type NewAsked } from "./askNew.ts";
export { newPlan } from "./newPlan.ts";
export type { AnswerKey, NewAnswers, NewQuestion } from "./question.ts";
export { NEW_QUESTIONS } from "./questions.ts";
