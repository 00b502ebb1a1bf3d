/** Conduction and convection for one carcass: pure physics, knows no other room but that of roots. */

// A body in air

export type { CoolingBody, Material } from "./coolingBody.ts";
export { coolingSeconds } from "./coolingSeconds.ts";
export { equivalentRadius } from "./equivalentRadius.ts";
export { meanTemperature, temperatureAt } from "./temperatureAt.ts";

// The series behind it

export { type BodyPlace, excessShare } from "./excessShare.ts";
export { fourierUntil } from "./fourierUntil.ts";
export { type SeriesTerm, type Shape, seriesTerms } from "./seriesTerms.ts";

// The air

export { type AirProperties, airProperties } from "./airProperties.ts";
export { crossflowNusselt } from "./crossflowNusselt.ts";
export { type MoistAir, moistAir } from "./moistAir.ts";
export { surfaceCoefficient } from "./surfaceCoefficient.ts";

// The cold room around it

export { carnotCop, idealCop, REFRIGERANTS, type Refrigerant } from "./coefficientOfPerformance.ts";
export { type ColdDoor, openDoorKilowatts, openShare, personWatts } from "./doorHeat.ts";

// For the engine

export { buildChillingCurve, type ChillingConditions, type ChillingCurve, chillingOf } from "./buildChillingCurve.ts";
