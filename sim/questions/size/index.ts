/** From a weekly demand to the parts of a plant and a first plan of it. */

// The question

export type { FigureSource } from "./assumed.ts";
export type { Demand, Figure } from "./demand.ts";
export { demandJsonSchema } from "./demandJsonSchema.ts";
export { type DemandReading, readDemand } from "./readDemand.ts";

// The answer

export { ALTERNATIVES, type AlternativeName } from "./alternatives.ts";
export type * from "./design.ts";
export { type Sizing, sizePlant } from "./sizePlant.ts";
