// What a plan says about variation

export type { Varying } from "../varying/index.ts";
export { meanOf } from "./meanOf.ts";
export { squaredCvOf } from "./squaredCvOf.ts";
export { timesAsLong } from "./timesAsLong.ts";

// Quantile functions behind it

export { pertBeta, standardNormalBelow, type TabledShape, unitQuantile, weibullShape } from "./quantile.ts";
export { QuantileTable, quantileTable } from "./quantileTable.ts";

// Draws

export { Sampler } from "./sampler.ts";
export { uniformStream } from "./uniformStream.ts";
export type { UniformStream } from "./uniforms.ts";
