/** From a plan and its simulated days to what a builder asks for. */

export type * from "./connections.ts";
export type * from "./equipment.ts";
export type * from "./layout.ts";
