/** From a weekly demand to the parts of a plant and a first plan of it. */

// The question

export type { FigureSource } from "./assumed.ts";
export type { Demand, Figure } from "./demand.ts";
export { demandJsonSchema } from "./demandJsonSchema.ts";
export { busiestWeek, headsOfWeek, type Market, MONTHS_OF_YEAR, marketsOf } from "./markets.ts";
export { type DemandReading, readDemand } from "./readDemand.ts";

// The answer

export { ALTERNATIVES, type AlternativeName } from "./alternatives.ts";
export type * from "./design.ts";
export { type GuessEntry, guessesOf } from "./guesses.ts";
export { type Sizing, sizePlant } from "./sizePlant.ts";

// Usual figures, for those who begin with them

export { assumedValue } from "./assumed.ts";
export { USUAL_PRESENTATION } from "./plan/soldOf.ts";
export { STUN_TO_STICK } from "./plan/watchesOf.ts";
export { USUAL_HANDLING, type UsualHandling } from "./usualHandling.ts";
export { USUAL_STEPS, type UsualStep } from "./usualSteps.ts";
