// What a plan says about variation. Apart from sim/maths/random, so that a plan is read without loading any generator.

export { unknownFamily, type Varying } from "./varying.ts";
export { writtenMeanOf } from "./writtenMeanOf.ts";
