/** What suppliers' options are worth: simulated days -> net present value and payback, with intervals. */

export { type Appraisal, appraise, type Purchase } from "./appraise.ts";
export { CASH_RESPONSES } from "./cashOfDay.ts";
export { type CrewChange, crewChange } from "./crewChange.ts";
export { type LineUp, lineUp, type OptionWorth, type Ranged } from "./lineUp.ts";
export { optionsJsonSchema } from "./optionsJsonSchema.ts";
export { presentFactor } from "./presentFactor.ts";
export { readLineUp } from "./readLineUp.ts";
export { type LineUpQuestion, type OptionsReading, readOptions } from "./readOptions.ts";

// For other files that list offers
export { offer } from "./schema/optionsFile.ts";
