import {
  density,
  flow,
  length,
  mass,
  power,
  readQuantity,
  readShare,
  speed,
  temperature,
  type UnitFamily,
  volume,
} from "../../text/units/index.ts";

/** Rooms that a stage can stand in, in the order in which heads go through them: dirty to clean, never back. */
export const LINE_ROOMS = [
  "live animals",
  "kill",
  "skinning",
  "evisceration",
  "chilling",
  "cutting and packing",
] as const;
export type LineRoom = (typeof LINE_ROOMS)[number];

/** Legal categories of animal by-products (Regulation (EC) 1069/2009, Articles 8 to 10). */
export const BY_PRODUCT_CATEGORIES = [1, 2, 3] as const;
export type ByProductCategory = (typeof BY_PRODUCT_CATEGORIES)[number];

/** What a plan says of its building and services; figures in SI (metres, cubic metres a second, watts), shares from 0 to 1. */
export interface Site {
  /** Those that the plan gives; for all others their usual value stands. */
  given: Partial<Record<SiteKey, number>>;
  /** By section or stage: the room that it stands in. */
  rooms: Record<string, LineRoom>;
  /** By by-product or way out: its legal category. */
  categories: Record<string, ByProductCategory>;
}

/** A figure about the building or its services, with what stands for it where a plan gives none. */
export interface SiteFigureInfo {
  /** How it is written. */
  family: UnitFamily | "share" | "number";
  usual: string | number;
  what: string;
  source: "assumed" | "common practice" | "published";
  note: string;
}

function row(family: SiteFigureInfo["family"], usual: string | number, what: string, rest: Origin): SiteFigureInfo {
  return { family, usual, what, ...rest };
}

type Origin = Pick<SiteFigureInfo, "source" | "note">;

const ASSUMED: Origin = { source: "assumed", note: "a figure to begin with; replace it by the site's own" };
const common = (note: string): Origin => ({ source: "common practice", note });
const published = (note: string): Origin => ({ source: "published", note });

/**
 * One table for the schema, for what stands where a plan is silent, and for what the answer lists: so the three cannot disagree. Keys are the
 * paths below `site` in a plan.
 */
export const SITE_FIGURES = {
  "line.pitch": row(length, "0.3 m", "from shackle to shackle, and of a place before a station", ASSUMED),
  "line.filled": row(
    "share",
    "92 %",
    "share of the shackles that carry a head, where no chain says its speed",
    ASSUMED,
  ),
  "line.position": row(length, "1.2 m", "rail for a position worked by hand", ASSUMED),
  "line.machine": row(length, "1.8 m", "rail for a machine", ASSUMED),
  "line.depth": row(length, "1 m", "depth of a work place beside the rail", ASSUMED),
  "line.product": row(length, "0.6 m", "width kept free for what hangs on the rail", ASSUMED),
  "line.walking": row(speed, "1.2 m/s", "speed of people on foot", ASSUMED),
  "rooms.height": row(length, "4 m", "clear height of the rooms", ASSUMED),
  "rooms.wall": row(length, "0.2 m", "thickness of walls", ASSUMED),
  "rooms.corridor": row(length, "1.8 m", "clear width of corridors at least", ASSUMED),
  "rooms.crateLength": row(length, "0.8 m", "length of a live crate", {
    ...ASSUMED,
    note: "0.48 m2 of floor; crates of 0.143 to 1 m2 were seen in Spain (Buil et al. 2004)",
  }),
  "rooms.crateWidth": row(length, "0.6 m", "width of a live crate", ASSUMED),
  "rooms.cratesInStack": row("number", 5, "crates in a stack", ASSUMED),
  "rooms.stackAisle": row(length, "1.2 m", "aisle between rows of crate stacks", ASSUMED),
  "rooms.lorryLength": row(length, "12 m", "length of a lorry's place", ASSUMED),
  "rooms.lorryWidth": row(length, "4 m", "width of a lorry's place", ASSUMED),
  "rooms.hookPitch": row(length, "0.25 m", "from hook to hook in the chiller", {
    ...ASSUMED,
    note: "a cold carcass is 12.4 cm wide at the loin and 9.0 cm at the chest (Pinna et al. 2004), two on a hook side by side",
  }),
  "rooms.hookRails": row(length, "0.6 m", "from rail to rail in the chiller", ASSUMED),
  "rooms.railsTogether": row("number", 6, "rails of the chiller between two aisles", ASSUMED),
  "rooms.changing": row(
    "number",
    1.5,
    "square metres of changing room for a person, showers and toilets counted",
    ASSUMED,
  ),
  "rooms.canteen": row("number", 1.2, "square metres of break room for a person", {
    ...ASSUMED,
    note: "ASR A4.2 asks for at least 1 m2 (from memory)",
  }),
  "rooms.office": row("number", 14, "square metres of an office", ASSUMED),
  "rooms.container": row("number", 4, "square metres for a container of by-products, the way to it counted", ASSUMED),
  "rooms.washer": row("number", 24, "square metres for a crate washer with its conveyors", ASSUMED),
  "rooms.packing": row("number", 10, "square metres for a packing or cutting place", ASSUMED),
  "rooms.dispatchHeld": row("share", "30 %", "share of a day's carcasses that stand in dispatch", ASSUMED),
  "rooms.dispatchLoad": row(
    "number",
    150,
    "kilograms of carcasses on a square metre of dispatch, aisles counted",
    ASSUMED,
  ),
  "rooms.machineRoom": row("share", "6 %", "machine rooms by the floor of the rooms that they serve", ASSUMED),
  "water.cold": row(temperature, "10 degC", "fresh water as it comes", ASSUMED),
  "water.tools": row(flow, "15 L/h", "hot water for each tool steriliser while the line works", ASSUMED),
  "water.toolsAt": row(
    temperature,
    "82 degC",
    "temperature of the water for tools",
    published(
      "Regulation (EC) 853/2004, Annex III, Section II, Chapter II 3: not less than 82 degC, or a system of equal effect",
    ),
  ),
  "water.hands": row(volume, "25 L", "warm water for a person's hands, boots and apron a day", ASSUMED),
  "water.handsAt": row(temperature, "40 degC", "its temperature", ASSUMED),
  "water.staff": row(volume, "40 L", "warm water for a person's shower and toilet a day", ASSUMED),
  "water.cleaning": row(
    volume,
    "10 L",
    "cleaning water for a square metre of production floor a day",
    common("5 to 15 L/m2; no published figure was found"),
  ),
  "water.cleaningHot": row("share", "60 %", "share of the cleaning water that is hot", ASSUMED),
  "water.cleaningAt": row(temperature, "60 degC", "temperature of hot cleaning water", ASSUMED),
  "water.heater": row("share", "90 %", "heat in the water by fuel used", ASSUMED),
  "water.cod": row(density, "5 g/L", "oxygen demand (COD) of the waste water before any treatment", {
    ...ASSUMED,
    note: "up to 9 g/L is published (South African review 2022, Water Practice and Technology 17); no figure for rabbits was found",
  }),
  "water.minutes": row("number", 5, "minutes over which the busiest flow is taken", ASSUMED),
  "air.tools": row(flow, "6 m3/h", "free air for each machine or pneumatic tool", ASSUMED),
  "air.perCubicMetre": row(
    "number",
    0.11,
    "electricity for a cubic metre of free air, kWh",
    common("0.10 to 0.12 at a pressure ratio of 7 to 8; the ideal one-stage compressor takes 0.080 at 8"),
  ),
  "air.live": row("number", 12, "air changes an hour with live animals", ASSUMED),
  "air.work": row("number", 8, "air changes an hour in rooms where people work", ASSUMED),
  "air.stores": row("number", 2, "air changes an hour in stores, cold rooms and corridors", ASSUMED),
  "air.byProducts": row("number", 10, "air changes an hour with by-products", ASSUMED),
  "air.fan": row(power, "0.4 W", "fans, for each cubic metre of air an hour", ASSUMED),
  "power.lighting": row(power, "10 W", "lighting, for each square metre of floor", ASSUMED),
  "power.drive": row(power, "1.1 kW", "a drive of the rail, for each 60 m begun", ASSUMED),
  "power.stunning": row(power, "0.5 kW", "a stunning position", ASSUMED),
  "power.rated": row("number", 1.25, "rated power by the power drawn", ASSUMED),
  "power.reserve": row("share", "15 %", "spare in the connection", ASSUMED),
  "cold.evaporating": row(temperature, "-8 degC", "refrigerant evaporates at, where the plan says nothing", ASSUMED),
  "cold.condensing": row(temperature, "35 degC", "refrigerant condenses at, where the plan says nothing", ASSUMED),
  "cold.shareOfIdeal": row(
    "share",
    "65 %",
    "coefficient of performance by that of the ideal cycle",
    common("60 to 75 % is usual"),
  ),
  "cold.walls": row("number", 0.25, "heat through walls and ceiling of cold rooms, W/(m2 K)", ASSUMED),
  "cold.outside": row(temperature, "25 degC", "air around cold rooms on a hot day", ASSUMED),
  "cold.stores": row(power, "60 W", "heat of cutting, dispatch and cold stores, for each square metre", ASSUMED),
  "byProducts.container": row(mass, "500 kg", "capacity of a container, where the plan has no vessel", ASSUMED),
  "byProducts.collection": row(mass, "8 t", "what is collected at once, of one legal category", ASSUMED),
  "byProducts.filled": row("share", "80 %", "how full a container is when it is changed", ASSUMED),
} as const satisfies Record<string, SiteFigureInfo>;

export type SiteKey = keyof typeof SITE_FIGURES;

const USUAL = new Map(
  Object.entries(SITE_FIGURES).map(([key, { family, usual }]): [string, number] => [key, usualValue(family, usual)]),
);

function usualValue(family: SiteFigureInfo["family"], usual: string | number): number {
  if (family === "number") return Number(usual);
  const { value, fault } = family === "share" ? readShare(usual) : readQuantity(family, usual);
  if (fault !== null) throw new Error(`SITE_FIGURES: ${String(usual)} cannot be read`);
  return value;
}

/** The figure in SI: as the plan gives it, else its usual value. */
export function siteFigure({ site }: { site?: Site }, key: SiteKey): number {
  return site?.given[key] ?? USUAL.get(key)!;
}

/** The keys by what stands before their point: `line`, `rooms`, `water` and so on. */
export function siteGroups(): Record<string, SiteKey[]> {
  const groups: Record<string, SiteKey[]> = {};
  for (const key of Object.keys(SITE_FIGURES) as SiteKey[]) {
    const name = key.split(".")[0]!;
    groups[name] = [...(groups[name] ?? []), key];
  }
  return groups;
}
