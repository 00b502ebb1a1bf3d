/** What is not known: a study in many worlds, each with other figures. */

export { analyse } from "./analyse.ts";
export type {
  Doubt,
  DoubtContender,
  DoubtDecision,
  DoubtEstimate,
  DoubtFigure,
  DoubtJoint,
  DoubtPrecision,
  DoubtQuestion,
  FigureEffect,
  FigureReadings,
  MoreReadings,
  ReadingAdvice,
  WorldCounts,
} from "./doubt.ts";
export { type DoubtReading, type DoubtSource, doubtQuestion, plansOfWorlds } from "./doubtQuestion.ts";
export { type DoubtWords, doubtWords } from "./doubtWords.ts";
export { doubtInRounds, type RoundsOptions } from "./inRounds.ts";
export { planStudy } from "./planStudy.ts";
