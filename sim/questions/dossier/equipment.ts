import { type Breakdown, type Plan, siteFigure } from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import { type Step, steps, workplace } from "../../day/line/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import { byKind, does } from "../../text/kinds/index.ts";
import { headFlow } from "../estimate/index.ts";
import { servicedPlan, show } from "./assumedServices.ts";
import { byProductRows } from "./byProducts.ts";
import type { PlantLayout } from "./layout.ts";
import { layoutNeeds } from "./layoutNeeds.ts";
import { isMachine, wantedRate } from "./railLine.ts";

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

/**
 * What has to be bought for a plan, from live crates to lockers: number, rate and why, room on the line, connections, stand-by. Rates are those
 * that the plan wants (its target, else what comes over the shifts); no makers, no brands, and prices only where the plan has them. Throws a
 * RangeError without a day, by which by-products and crates are counted.
 */
export function equipmentList(plan: Plan, layout: PlantLayout, days: readonly DayRecord[]): EquipmentRow[] {
  if (days.length === 0) throw new RangeError("equipmentList: an equipment list needs a simulated day at least");
  const listing: Listing = { plan, layout, days, perHour: wantedRate(plan) * HOUR, visits: headFlow(plan).visits };
  return [
    ...steps(plan)
      .filter((step) => does(step, "handle crates"))
      .map((step) => crateStep(step, listing)),
    ...crates(listing),
    ...steps(plan)
      .filter((step) => !does(step, "handle crates"))
      .map((step) => lineStep(step, listing)),
    ...rail(listing),
    ...byProducts(listing),
    ...hygiene(listing),
    ...services(listing),
    ...people(listing),
  ]
    .filter(({ number }) => number > 0)
    .map((each) => ({ ...each, unit: each.number === 1 ? each.unit.replace(/s$/u, "") : each.unit }));
}

const HOUR = 3600;

interface Listing {
  plan: Plan;
  layout: PlantLayout;
  days: readonly DayRecord[];
  /** Heads hung an hour. */
  perHour: number;
  /** By stage: how often a head hung comes there. */
  visits: Map<string, number>;
}

function row(group: EquipmentGroup, name: string, what: string, rest: Partial<EquipmentRow>): EquipmentRow {
  const nothing = {
    rateNeeded: "",
    why: "",
    number: 1,
    unit: "",
    places: null,
    metres: null,
    standBy: "",
    price: null,
  };
  return { group, name, what, ...nothing, connectedTo: [], ...rest };
}

function crateStep(step: Step, { plan, days, perHour }: Listing): EquipmentRow {
  const { positions, crews, peoplePerPosition, breakdowns } = workplace(step);
  if (!does(step, "handle crates")) return row("live animals", step.name, "", {});
  const { supply } = plan;
  const heads =
    supply.kind === "loads" ? supply.loads.reduce((sum, load) => sum + load.crates * load.headsPerCrate, 0) : 0;
  const all = supply.kind === "loads" ? supply.loads.reduce((sum, load) => sum + load.crates, 0) : 0;
  const needed = heads === 0 ? 0 : (perHour * all) / heads;
  const { cratesPerCycle, secondsPerCycle, places } = step.of;
  const able = (positions * cratesPerCycle * HOUR) / meanOf(secondsPerCycle);
  const most = days.map((day) => day.stages.find(({ name }) => name === step.name)?.queue.max ?? 0);
  return row("live animals", step.name, crews.length === 0 ? "machine" : "place of work", {
    rateNeeded: `${show(needed)} crates/h`,
    why: `${show(perHour)} heads/h in crates of ${show(heads / Math.max(1, all))}; it can do ${show(able)} crates/h, ${cratesPerCycle} at once`,
    ...{ number: positions, unit: "positions" },
    places: Number.isFinite(places) ? places : Math.max(0, ...most),
    connectedTo: connectionsOf(step, plan, peoplePerPosition * (crews.length === 0 ? 0 : positions)),
    standBy: standByOf({ breakdowns, positions, able, needed, unit: "crates/h" }),
  });
}

function crates({ plan, layout }: Listing): EquipmentRow[] {
  const { liveHandling } = plan;
  if (liveHandling === null) return [];
  const stacks = layout.items.filter(({ what }) => what === "crate stack");
  const fleet = liveHandling.fleet;
  return [
    row("live animals", "lairage", "floor with crates in stacks", {
      why: "places of the plan's lairage; light, air and shelter are for the law at the site",
      ...{ number: stacks.reduce((sum, { holds }) => sum + holds, 0), unit: "crates" },
      connectedTo: ["ventilation", "drain", "lighting that can be dimmed"],
      standBy:
        "fans on a supply of their own or an alarm: animals die of heat before anything else fails (common practice)",
    }),
    ...(fleet === null
      ? []
      : [
          row("live animals", "live crates", "crates in circulation", {
            why: `at the plant, on the road and at the farm, away for ${show(fleet.awaySeconds / HOUR)} h`,
            ...{ number: fleet.crates, unit: "crates" },
            standBy: "some more for those that break",
          }),
        ]),
  ];
}

function lineStep(step: Step, listing: Listing): EquipmentRow {
  const { plan, layout } = listing;
  const length = layout.stages.find(({ stage }) => stage === step.name);
  const price = priceOf(step, plan);
  const metres = length === undefined || length.plannedMetres === 0 ? null : length.plannedMetres;
  return byKind(step, {
    crates: () => row("live animals", step.name, "", {}),
    station: ({ of }) => station(step, of.buffer, { listing, metres, price }),
    "chain station": ({ chain }) => station(step, null, { listing, metres, price, on: chain.name }),
    dwell: ({ of }) => {
      const hooks = layout.chiller !== null && layout.rooms.some(({ name }) => name === of.name);
      const seen = Math.max(
        0,
        ...listing.days.map((day) => day.stages.find(({ name }) => name === of.name)?.queue.max ?? 0),
      );
      const places = Number.isFinite(of.places) ? of.places : seen;
      return row(hooks ? "chiller" : "line", step.name, hooks ? "cold room with hooks" : "places where heads stay", {
        rateNeeded: rate(listing, step.name),
        why: `${places} heads at once by the plan; ${seen} at most in the simulated days (rate x stay: Little 1961)`,
        ...{
          number: Math.ceil(places / of.headsPerHook),
          unit: hooks ? `hooks of ${of.headsPerHook}` : "places",
          metres,
          price,
        },
        connectedTo: hooks ? ["refrigeration", "electricity", "drain"] : connectionsOf(step, plan, 0),
        standBy: hooks
          ? "two refrigeration circuits, so that one keeps the meat at 4 °C while the other is repaired; a temperature recorder with alarm"
          : "",
      });
    },
    chain: ({ of }) => {
      const perHour = HOUR / of.secondsPerShackle;
      return row("rail", step.name, "overhead chain", {
        rateNeeded: `${show(perHour)} shackles/h`,
        why: `${of.places} shackles of ${show(of.pitchMetres ?? siteFigure(plan, "line.pitch"))} m; while any station on it stands, all of it stands`,
        ...{
          number: of.shackles?.count ?? of.places,
          unit: "shackles",
          metres: of.places * (of.pitchMetres ?? siteFigure(plan, "line.pitch")),
          price,
        },
        connectedTo: ["electricity", ...(of.shackles === null ? [] : ["shackle washer"])],
        standBy: "an emergency stop within reach of everyone on it; a spare drive",
      });
    },
  });
}

function station(
  step: Step,
  buffer: number | null,
  {
    listing,
    metres,
    price,
    on,
  }: { listing: Listing; metres: number | null; price: EquipmentRow["price"]; on?: string },
): EquipmentRow {
  if (!does(step, "work") || does(step, "handle crates")) return row("line", step.name, "", {});
  const { plan, perHour, visits } = listing;
  const { positions, crews, peoplePerPosition, breakdowns } = workplace(step);
  const machine = isMachine({ crews });
  const cycle = meanOf(step.of.cycleSeconds);
  const able = (positions * HOUR) / cycle;
  const share = visits.get(on ?? step.name) ?? seenShare(step.name, listing.days);
  const repairs = repairShare(breakdowns);
  const needed = perHour * share;
  const load = (needed * cycle * (1 + repairs)) / (positions * HOUR);
  const words = repairs === 0 ? "" : ` x (1 + ${show(100 * repairs)} % repairs)`;
  const stunning = /\bstun/iu.test(step.name);
  return row("line", step.name, machine ? "machine" : "place of work", {
    rateNeeded: `${show(needed)} heads/h`,
    why: `${show(perHour)} heads/h hung${share === 1 ? "" : ` x ${show(share)}`}, ${show(cycle)} s each${words}, over ${positions}: busy ${Math.round(100 * load)} % of the time`,
    ...{ number: positions, unit: "positions", metres, price },
    places: buffer !== null && Number.isFinite(buffer) ? buffer : null,
    connectedTo: connectionsOf(step, plan, machine || isHanging(step, listing) ? 0 : positions * peoplePerPosition),
    standBy: stunning
      ? "a second way of stunning at hand at once (Regulation (EC) 1099/2009, from memory); the stunner shows and records its values for every animal (Annex II 4.1)"
      : standByOf({ breakdowns, positions, able, needed, unit: "heads/h" }),
  });
}

/** Where animals are hung nobody has a knife. */
function isHanging({ name }: Step, { layout }: Listing): boolean {
  return layout.workPlaces.find(({ stage }) => stage === name)?.room === "hanging";
}

function rate({ perHour, visits }: Listing, stage: string): string {
  return `${show(perHour * (visits.get(stage) ?? 1))} heads/h`;
}

/** Of the heads hung: those that were worked on there in the simulated days, where only the animal's weight sends them. */
function seenShare(stage: string, days: readonly DayRecord[]): number {
  const hung = days.reduce((sum, { heads }) => sum + heads.hung, 0);
  const worked = days.reduce((sum, day) => sum + (day.stages.find(({ name }) => name === stage)?.processed ?? 0), 0);
  return hung === 0 ? 0 : worked / hung;
}

/** Repair time for each second of running. */
function repairShare(breakdowns: readonly Breakdown[]): number {
  return breakdowns.reduce(
    (sum, { repairSeconds, uptimeSeconds }) => sum + meanOf(repairSeconds) / meanOf(uptimeSeconds),
    0,
  );
}

/** What becomes of the rate while one of them stands. */
function standByOf({
  breakdowns,
  positions,
  able,
  needed,
  unit,
}: {
  breakdowns: readonly Breakdown[];
  positions: number;
  able: number;
  needed: number;
  unit: string;
}): string {
  if (breakdowns.length === 0) return "";
  const named = breakdowns
    .map(({ name, repairSeconds }) => `${name} ${show(meanOf(repairSeconds) / 60)} min`)
    .join(", ");
  const left = (able * (positions - 1)) / positions;
  if (positions === 1) return `one stands, all stand (${named}): keep the parts that wear, and a way to work by hand`;
  const enough = left >= needed ? "enough" : `${Math.round((100 * left) / needed)} % of what is needed`;
  return `with one standing (${named}) the others do ${show(left)} ${unit}: ${enough}`;
}

/** What a step is joined to, by what the plan says that it uses. */
function connectionsOf(step: Step, { utilities }: Plan, hands: number): string[] {
  const { waterPerHead, waterPerHour, powerKilowatts, energyPerHead } = step.of.utilities;
  const byProducts = "byProducts" in step.of ? step.of.byProducts : [];
  const machine = does(step, "work") && isMachine({ crews: workplace(step).crews });
  return [
    ...(powerKilowatts > 0 ? [`electricity ${show(powerKilowatts)} kW`] : energyPerHead > 0 ? ["electricity"] : []),
    ...(powerKilowatts === 0 && machine ? ["electricity, power not given"] : []),
    ...(waterPerHead > 0 ? [`cold water ${show(waterPerHead)} L each`] : []),
    ...(waterPerHour > 0 ? [`cold water ${show(waterPerHour)} L/h`] : []),
    ...(waterPerHead > 0 || waterPerHour > 0 || byProducts.length > 0 ? ["drain"] : []),
    ...(machine && utilities === null ? ["compressed air, assumed"] : []),
    ...(hands > 0 && !does(step, "handle crates") ? ["hot water for tools"] : []),
    ...byProducts.map(({ name, vessel }) => `${name} into ${vessel ?? "a container"}`),
  ];
}

function priceOf(step: Step, { money }: Plan): EquipmentRow["price"] {
  const capital = "capital" in step.of ? step.of.capital : null;
  return capital === null || money === null ? null : { amount: capital.price, currency: money.currency };
}

function rail({ plan, layout }: Listing): EquipmentRow[] {
  const metres = layout.rail.reduce((sum, stretch) => sum + stretch.metres, 0);
  if (metres === 0) return [];
  const joins = layout.rail.filter(({ use }) => use === "joins").reduce((sum, stretch) => sum + stretch.metres, 0);
  const bends = layout.rail.reduce((sum, { points }) => sum + Math.max(0, points.length - 2), 0);
  const pitch = siteFigure(plan, "line.pitch");
  return [
    row("rail", "overhead rail", "rail over the whole line, chains included", {
      why: `as drawn: ${show(metres - joins)} m for places, positions and ways, ${show(joins)} m round ${bends} bends and through walls`,
      ...{ number: Math.ceil(metres), unit: "m", metres },
      connectedTo: ["electricity for its drives"],
    }),
    row("rail", "shackles", "on the rail", {
      why: `${show(metres)} m / ${show(pitch)} m; more for those that are washed`,
      ...{ number: Math.ceil(metres / pitch), unit: "shackles" },
      connectedTo: ["shackle washer"],
    }),
  ];
}

function byProducts({ plan, days }: Listing): EquipmentRow[] {
  return byProductRows(plan, days).map((each) =>
    row("by-products", each.name, `containers, category ${each.category}, marked so`, {
      rateNeeded: `${show(each.kilogramsMost)} kg a day`,
      why: `${each.changes} fillings of ${show(each.containerKilograms)} kg, collected ${each.collectionsPerDay} times a day, one more to be filled`,
      ...{ number: each.containers, unit: "containers" },
      connectedTo: ["drain", "cold store"],
    }),
  );
}

function hygiene({ plan, layout, days }: Listing): EquipmentRow[] {
  const knives = layout.workPlaces.filter(({ machine, room }) => !machine && room !== "hanging").length;
  const rooms = new Set(layout.workPlaces.map(({ room }) => room)).size;
  const washers = layoutNeeds(plan, days).crates?.washers ?? 0;
  return [
    row("hygiene", "tool sterilisers", "at the places with a knife", {
      why: "one at each; water at not less than 82 °C or a system of equal effect (Regulation (EC) 853/2004, Annex III, Section II, Chapter II 3)",
      ...{ number: knives, unit: "sterilisers" },
      connectedTo: ["hot water 82 °C", "drain"],
    }),
    row("hygiene", "hand wash basins", "worked without hands", {
      why: "one in each room where people work and in each hygiene lock (common practice)",
      ...{ number: rooms + layout.rooms.filter(({ name }) => name.startsWith("hygiene lock")).length, unit: "basins" },
      connectedTo: ["warm water", "cold water", "drain"],
    }),
    ...(washers === 0 && plan.liveHandling !== null
      ? [
          row("hygiene", "crate washing", "not in the plan", {
            why: "crates are cleaned, washed and disinfected when they are empty (Regulation (EC) 853/2004, Annex III, Section II, Chapter I 3)",
            connectedTo: ["hot water", "drain"],
          }),
        ]
      : []),
  ];
}

function services({ plan, layout }: Listing): EquipmentRow[] {
  const { plan: served } = servicedPlan(plan, layout);
  const air = served.utilities!.consumers.reduce((sum, { airPerHour }) => sum + airPerHour, 0);
  const hot = served.utilities!.consumers.some(({ celsius }) => celsius !== null);
  return [
    ...(layout.chiller === null
      ? []
      : [
          row("services", "refrigeration", "compressors, condensers, coolers", {
            number: 2,
            unit: "circuits",
            why: "heat and coefficient of performance stand on the connection sheet",
            connectedTo: ["electricity", "drain"],
            standBy: "each circuit for more than half of the mean heat",
          }),
        ]),
    ...(hot
      ? [
          row("services", "hot water", "heater with a store", {
            why: "heat at once and litres stand on the connection sheet",
            connectedTo: ["fuel or electricity", "cold water"],
            standBy: "without hot water for tools no work: two heaters, or a store for an hour",
          }),
        ]
      : []),
    ...(air > 0
      ? [
          row("services", "compressor", "with dryer and receiver", {
            rateNeeded: `${show(air)} m³/h of free air`,
            why: "all machines and tools at once",
            connectedTo: ["electricity"],
            standBy: "a second one where machines stand without air",
          }),
        ]
      : []),
  ];
}

function people({ plan, days }: Listing): EquipmentRow[] {
  const { lockers, shiftPeople } = layoutNeeds(plan, days);
  return [
    row("people", "lockers, unclean side", "street and work clothes apart", {
      number: lockers.unclean,
      unit: "lockers",
      why: "people of all shifts whose places are not on the clean side alone",
    }),
    row("people", "lockers, clean side", "street and work clothes apart", {
      number: lockers.clean,
      unit: "lockers",
      why: "people of all shifts who work on the clean side alone",
    }),
    row("people", "seats in the break room", "", {
      number: shiftPeople,
      unit: "seats",
      why: "everybody of the largest shift at once",
    }),
  ].filter(({ number }) => number > 0);
}
