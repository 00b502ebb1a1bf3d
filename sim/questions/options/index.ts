/** What suppliers' offers are worth: simulated days -> net present value and payback, with intervals. See README.md for the names. */

// The question

export { optionsJsonSchema } from "./optionsJsonSchema.ts";
export { type OptionsQuestion, type OptionsReading, readOptions } from "./readOptions.ts";

// The answer

export { compareOffers, type OptionsResult } from "./compareOffers.ts";
export { type OfferInWorlds, type OffersInWorlds, offersInWorlds, type SimulatedWorlds } from "./offersInWorlds.ts";
export type { OfferWorth, Ranged } from "./offerWorth.ts";
export { readOptionsResult } from "./readOptionsResult.ts";

// What it is made of

export { type Appraisal, appraise, type OfferCost } from "./appraise.ts";
export { CASH_RESPONSES } from "./cashOfDay.ts";
export { type CrewChange, crewChange } from "./crewChange.ts";
export { presentFactor } from "./presentFactor.ts";

// For other files that list offers

export { offer } from "./schema/optionsFile.ts";
