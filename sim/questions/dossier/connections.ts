import type { ByProductCategory, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import type { PlantLayout, SiteFigureUsed } from "./layout.ts";

/** One figure of the sheet. */
export interface ConnectionRow {
  what: string;
  value: number;
  unit: string;
  /** How it comes about, with its numbers: "(19.4 + 7.6 + 4.5) kW / 3.36 + 4.5 kW". */
  formula: string;
  /** "the plan", "assumed", or a published source by name. */
  source: string;
}

export const SERVICES = [
  "electricity",
  "refrigeration",
  "cold water",
  "hot water",
  "compressed air",
  "drains",
  "ventilation",
] as const;
export type Service = (typeof SERVICES)[number];

export interface ConnectionPart {
  service: Service;
  rows: ConnectionRow[];
}

/** A by-product or a way out of the plant that is not food. */
export interface ByProductRow {
  name: string;
  category: ByProductCategory;
  /** The article that it falls under, or why the safe side was taken. */
  reason: string;
  /** Means over the simulated days, and the most of one. */
  kilograms: number;
  kilogramsMost: number;
  containerKilograms: number;
  /** In use at once: those that fill up, and one to change. */
  containers: number;
  /** Changed or emptied on the busiest day. */
  changes: number;
  collectionsPerDay: number;
}

/** What the plant must be connected to. Every figure with its formula and source. */
export interface ConnectionSheet {
  /** Days that it rests on. */
  days: number;
  parts: ConnectionPart[];
  byProducts: ByProductRow[];
  /** Electric load and water flow over the busiest simulated day; seconds after the day's start at which each minute begins. */
  profile: { seconds: number[]; kilowatts: number[]; coldLitresPerMinute: number[]; hotLitresPerMinute: number[] };
  figures: SiteFigureUsed[];
  /** What no figure stands for: to be asked of who builds. */
  open: string[];
}

/**
 * Connections of a plan by its simulated days, which have to be recorded with traces ("binned" or "exact"), since peaks are read off them.
 * What the plan says of water, power, cooling and consumers is taken as it stands; what it leaves out is reckoned from `site` figures.
 */
export declare function connectionSheet(plan: Plan, layout: PlantLayout, days: readonly DayRecord[]): ConnectionSheet;
