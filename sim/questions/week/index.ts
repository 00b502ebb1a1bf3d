/** A plan's week, day by day. */

export { weekStudy } from "./weekStudy.ts";
