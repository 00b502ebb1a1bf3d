import {
  type Consumer,
  type Cooling,
  type Dwell,
  type Plan,
  type PlantUtilities,
  siteFigure,
} from "../../asked/plan/index.ts";
import { idealCop } from "../../maths/chilling/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { LayoutRoom, PlantLayout, RoomKind } from "./layout.ts";

const LITRES = 1000;
const HOUR = 3600;
const WATTS = 1000;
/** Metres of rail that one drive pulls. */
const METRES_A_DRIVE = 60;

/** A consumer with the words of how it was worked out. */
export interface AssumedConsumer extends Consumer {
  formula: string;
  /** Keys below `site` that it rests on. */
  keys: string[];
}

/** A plan in which everything is filled in that its connections need, and what was filled in. */
export interface ServicedPlan {
  plan: Plan;
  /** Empty where the plan names its own consumers. */
  assumed: AssumedConsumer[];
  /** Chillers whose cooling was assumed. */
  cooled: string[];
}

/**
 * The plan with consumers and cooling: its own where it has any, else those of the usual figures and of the floor that was drawn. Nothing of the
 * plan is changed, only added.
 */
export function servicedPlan(plan: Plan, layout: PlantLayout): ServicedPlan {
  const cooled: string[] = [];
  const line = plan.line.map((stage) => {
    if (!does(stage, "hold heads") || stage.dwell.kind !== "chilling") return stage;
    if (stage.cooling !== undefined || stage.utilities.powerKilowatts > 0) return stage;
    cooled.push(stage.name);
    return { ...stage, cooling: assumedCooling(stage, plan, layout) };
  });
  if (plan.utilities !== null && plan.utilities.consumers.length > 0)
    return { plan: { ...plan, line }, assumed: [], cooled };
  const assumed = assumedConsumers(plan, layout);
  return {
    plan: { ...plan, line, utilities: { ...(plan.utilities ?? servicesOf(plan)), consumers: assumed } },
    assumed,
    cooled,
  };
}

function servicesOf(plan: Plan): PlantUtilities {
  return {
    coldCelsius: siteFigure(plan, "water.cold"),
    fuelPerHeat: 1 / siteFigure(plan, "water.heater"),
    kilowattHoursPerAir: siteFigure(plan, "air.perCubicMetre"),
    codPerLitre: siteFigure(plan, "water.cod") / LITRES,
    codRemovedShare: 0,
    consumers: [],
  };
}

/** Heat taken out for each unit of electricity by the temperatures of the site. */
export function assumedCop(plan: Plan): number {
  const [evaporating, condensing] = [siteFigure(plan, "cold.evaporating"), siteFigure(plan, "cold.condensing")];
  return siteFigure(plan, "cold.shareOfIdeal") * idealCop("ammonia", evaporating, condensing);
}

/** Walls and ceiling of the room as drawn; doors, people and fans are for the plan to say. */
function assumedCooling(stage: Dwell, plan: Plan, layout: PlantLayout): Cooling {
  const room = layout.rooms.find(({ name }) => name === stage.name);
  const air = stage.dwell.kind === "chilling" ? stage.dwell.chilling.airCelsius : 0;
  return {
    ...{ cop: assumedCop(plan), fanKilowatts: 0, lightKilowatts: 0, peopleKilowatts: 0, doorKilowatts: 0 },
    wallKilowatts: room === undefined ? 0 : wallWatts(room, air, plan) / WATTS,
  };
}

/** Surface of four walls and the ceiling x U x difference of temperature; the floor is taken as insulated against the ground. */
export function wallWatts({ width, depth }: LayoutRoom, celsius: number, plan: Plan): number {
  const surface = 2 * (width + depth) * siteFigure(plan, "rooms.height") + width * depth;
  return surface * siteFigure(plan, "cold.walls") * (siteFigure(plan, "cold.outside") - celsius);
}

/** Square metres of rooms of these kinds. */
export function floorOf(layout: PlantLayout, kinds: readonly RoomKind[]): number {
  return layout.rooms
    .filter(({ kind }) => kinds.includes(kind))
    .reduce((sum, { squareMetres }) => sum + squareMetres, 0);
}

/** Rooms that are washed down every day. */
const WASHED: readonly RoomKind[] = ["live side", "unclean side", "clean side", "by-products"];

function assumedConsumers(plan: Plan, layout: PlantLayout): AssumedConsumer[] {
  const figure = (key: Parameters<typeof siteFigure>[1]) => siteFigure(plan, key);
  const knives = layout.workPlaces.filter(({ machine, room }) => !machine && room !== "hanging").length;
  const machines = layout.workPlaces.filter(({ machine }) => machine).length;
  const people = plan.crews.reduce((sum, crew) => sum + crew.people.reduce((all, each) => all + each, 0), 0);
  const washed = floorOf(layout, WASHED);
  const cleaning = washed * figure("water.cleaning") * LITRES;
  const hot = cleaning * figure("water.cleaningHot");
  const [tools, hands, staff] = [
    knives * figure("water.tools") * LITRES * HOUR,
    people * figure("water.hands") * LITRES,
    people * figure("water.staff") * LITRES,
  ];
  const air = airPerHour(plan, layout).reduce((sum, room) => sum + room.cubicMetresPerHour, 0);
  const floor = layout.areas.at(-1)!.squareMetres;
  const rail = layout.rail.reduce((sum, { metres }) => sum + metres, 0);
  const drives = plan.line.some((stage) => does(stage, "carry stations") && stage.utilities.powerKilowatts > 0)
    ? 0
    : Math.ceil(rail / METRES_A_DRIVE);
  const cold = coldStores(layout);
  const stores = (cold * figure("cold.stores")) / WATTS / assumedCop(plan);
  return [
    consumer(
      "tool sterilisers",
      "work",
      { waterPerHour: tools, celsius: figure("water.toolsAt") },
      {
        formula: `${knives} places with a knife x ${show(figure("water.tools") * LITRES * HOUR)} L/h`,
        keys: ["water.tools", "water.toolsAt"],
      },
    ),
    consumer(
      "hands, boots, aprons",
      "work",
      { waterPerDay: hands, celsius: figure("water.handsAt") },
      {
        formula: `${people} people x ${show(figure("water.hands") * LITRES)} L`,
        keys: ["water.hands", "water.handsAt"],
      },
    ),
    consumer(
      "showers and toilets",
      "all day",
      { waterPerDay: staff, celsius: figure("water.handsAt") },
      {
        formula: `${people} people x ${show(figure("water.staff") * LITRES)} L`,
        keys: ["water.staff"],
      },
    ),
    consumer(
      "cleaning, hot",
      "cleaning",
      { waterPerDay: hot, celsius: figure("water.cleaningAt") },
      {
        formula: `${show(washed)} m² washed down x ${show(figure("water.cleaning") * LITRES)} L x ${show(100 * figure("water.cleaningHot"))} %`,
        keys: ["water.cleaning", "water.cleaningHot", "water.cleaningAt"],
      },
    ),
    consumer(
      "cleaning, cold",
      "cleaning",
      { waterPerDay: cleaning - hot },
      {
        formula: `the rest of ${show(cleaning)} L`,
        keys: ["water.cleaning", "water.cleaningHot"],
      },
    ),
    consumer(
      "machines and tools, air",
      "work",
      { airPerHour: machines * figure("air.tools") * HOUR },
      {
        formula: `${machines} machines x ${show(figure("air.tools") * HOUR)} m³/h of free air`,
        keys: ["air.tools", "air.perCubicMetre"],
      },
    ),
    consumer(
      "ventilation",
      "work",
      { powerKilowatts: (air * figure("air.fan")) / WATTS },
      {
        formula: `${show(air)} m³/h x ${show(figure("air.fan"))} W`,
        keys: ["air.fan", "air.live", "air.work", "air.stores", "air.byProducts"],
      },
    ),
    consumer(
      "lighting",
      "work",
      { powerKilowatts: (floor * figure("power.lighting")) / WATTS },
      {
        formula: `${show(floor)} m² x ${show(figure("power.lighting"))} W`,
        keys: ["power.lighting"],
      },
    ),
    consumer(
      "drives of the rail",
      "work",
      { powerKilowatts: (drives * figure("power.drive")) / WATTS },
      {
        formula: `${drives} drives, one for each ${METRES_A_DRIVE} m begun of ${show(rail)} m, x ${show(figure("power.drive") / WATTS)} kW`,
        keys: ["power.drive"],
      },
    ),
    consumer(
      "cold stores",
      "all day",
      { powerKilowatts: stores },
      {
        formula: `${show(cold)} m² x ${show(figure("cold.stores"))} W / ${show(assumedCop(plan))}`,
        keys: ["cold.stores", "cold.evaporating", "cold.condensing", "cold.shareOfIdeal"],
      },
    ),
  ];
}

function consumer(
  name: string,
  during: Consumer["during"],
  used: Partial<Consumer>,
  told: Pick<AssumedConsumer, "formula" | "keys">,
): AssumedConsumer {
  const nothing = { waterPerHead: 0, waterPerHour: 0, waterPerDay: 0, celsius: null, airPerHour: 0, powerKilowatts: 0 };
  return { name, during, ...nothing, ...used, ...told };
}

/** Rooms that are kept cold and are no chiller of the plan: their floor. */
export function coldStores(layout: PlantLayout): number {
  return layout.rooms
    .filter(
      ({ kind, lineRoom }) =>
        (kind === "cold room" && lineRoom === null) || kind === "by-products" || lineRoom === "cutting and packing",
    )
    .reduce((sum, { squareMetres }) => sum + squareMetres, 0);
}

export interface AirOfRooms {
  what: string;
  squareMetres: number;
  changes: number;
  key: "air.live" | "air.work" | "air.stores" | "air.byProducts";
  cubicMetresPerHour: number;
}

const AIRED: readonly [what: string, key: AirOfRooms["key"], kinds: readonly RoomKind[]][] = [
  ["live animals", "air.live", ["live side"]],
  ["rooms where people work", "air.work", ["unclean side", "clean side", "people"]],
  ["by-products", "air.byProducts", ["by-products"]],
  ["stores, cold rooms, corridors", "air.stores", ["cold room", "corridor", "services"]],
];

/** Floor x height x air changes. */
export function airPerHour(plan: Plan, layout: PlantLayout): AirOfRooms[] {
  return AIRED.map(([what, key, kinds]) => {
    const squareMetres = floorOf(layout, kinds);
    const changes = siteFigure(plan, key);
    return {
      what,
      squareMetres,
      changes,
      key,
      cubicMetresPerHour: squareMetres * siteFigure(plan, "rooms.height") * changes,
    };
  });
}

/** Three digits, whole numbers from 100 on. */
export function show(value: number): string {
  return Math.abs(value) >= 100 ? String(Math.round(value)) : String(Number(value.toPrecision(3)));
}
