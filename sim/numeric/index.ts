/** Small numerical methods: leaf, imports nothing. */

export { digamma, trigamma } from "./digamma.ts";
export { type Minimum, nelderMead } from "./nelderMead.ts";
export { safeRoot } from "./safeRoot.ts";
