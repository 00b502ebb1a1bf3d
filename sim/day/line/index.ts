// From a checked plan to flat arrays

export * from "./compiledLine.ts";
export { compileLine } from "./compileLine.ts";
export { CARCASS, DEAD_ON_ARRIVAL, destinationsOf, sectionsOf } from "./compileStages.ts";
export { besideOf, waysOn } from "./headWays.ts";
export { type KillLine, killLineOf, stunToStickLimits } from "./killLine.ts";
export { byProductsOf, carrierOf, fileSteps, ownTime, type Step, stageOf, steps, workplace } from "./steps.ts";
