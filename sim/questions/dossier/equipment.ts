import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import type { PlantLayout } from "./layout.ts";

export const EQUIPMENT_GROUPS = [
  "live animals",
  "line",
  "rail",
  "chiller",
  "by-products",
  "hygiene",
  "services",
  "people",
] as const;
export type EquipmentGroup = (typeof EQUIPMENT_GROUPS)[number];

/** A machine, a place of work or another thing to buy; no makers, no brands. */
export interface EquipmentRow {
  group: EquipmentGroup;
  name: string;
  /** What it is: "place of work", "machine", "overhead rail" ... */
  what: string;
  /** "672 heads/h"; "" where nothing goes through it. */
  rateNeeded: string;
  /** Why this rate and this number, with the figures of it. */
  why: string;
  number: number;
  /** What one of them is counted in: "positions", "hooks", "m". */
  unit: string;
  /** Places before it; null where there are none to count. */
  places: number | null;
  /** On the line or on the floor; null where it has none. */
  metres: number | null;
  /** "electricity 3 kW", "cold water", "drain" ... */
  connectedTo: string[];
  /** What happens while one of them stands, and what to keep ready. */
  standBy: string;
  /** As the plan gives it; null for the user to fill in. */
  price: { amount: number; currency: string } | null;
}

/** What has to be bought, from live animals to people's lockers, for a plan; rates by what the plan wants of it, or by what came on its busiest simulated day. */
export declare function equipmentList(plan: Plan, layout: PlantLayout, days: readonly DayRecord[]): EquipmentRow[];
