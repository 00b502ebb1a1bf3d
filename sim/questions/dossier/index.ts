/** From a demand to the answer to "what should we build?": kinds of plant side by side, their money, people and running. */

// The question

export { type KindsReading, type SizedKind, sizeKinds } from "./kinds.ts";
export { PRESSED, trialStudy } from "./trial.ts";

// The answer

export type { Bought, CapitalSheet } from "./capital.ts";
export { type KindChoice, type OwnerRow, outsideOf } from "./choose.ts";
export { type Dossier, dossierOf, type KindMoney, type KindTold } from "./dossier.ts";
export { firstWeeksPlan } from "./firstWeeksPlan.ts";
export type { Factors, FullCost, LoanPlan, YearMoney } from "./money.ts";
export type { RampWeek, StaffingPlan, StaffPost } from "./people.ts";
export type { CleaningRow, MaintenanceTask, MeasureRow, SpareRow } from "./running.ts";
export type { KindTrial, LimitKept } from "./trial.ts";
export { type Swing, WORLDS } from "./worlds.ts";

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
