/** From a plan and its simulated days to what a builder asks for. */

// The drawing

export type * from "./layout.ts";
export { DOOR_USES, RAIL_USES, ROOM_KINDS } from "./layout.ts";
export { plantLayout } from "./plantLayout.ts";

// What has to be bought, and what it is connected to

export type { ByProductRow } from "./byProducts.ts";
export type * from "./connections.ts";
export { connectionSheet, SERVICES } from "./connections.ts";
export type * from "./equipment.ts";
export { EQUIPMENT_GROUPS, equipmentList } from "./equipment.ts";
