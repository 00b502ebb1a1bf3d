/** What suppliers' options are worth: simulated days -> net present value and payback, with intervals. */

export { type Appraisal, appraise, type OfferCost } from "./appraise.ts";
export { CASH_RESPONSES } from "./cashOfDay.ts";
export { compareOffers, type OfferWorth, type OptionsResult, type Ranged } from "./compareOffers.ts";
export { type CrewChange, crewChange } from "./crewChange.ts";
export { optionsJsonSchema } from "./optionsJsonSchema.ts";
export { presentFactor } from "./presentFactor.ts";
export { type OptionsQuestion, type OptionsReading, readOptions } from "./readOptions.ts";
export { readOptionsResult } from "./readOptionsResult.ts";

// For other files that list offers
export { offer } from "./schema/optionsFile.ts";
