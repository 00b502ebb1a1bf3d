import type { Demand, PlantDesign } from "../size/index.ts";

/** One line of what is bought. */
export interface Bought {
  what: string;
  number: number;
  unit: string;
  /** Of one; null where the demand gives none. */
  price: number | null;
  kind: "machines" | "building" | "once";
}

export interface CapitalSheet {
  items: Bought[];
  /** What has no price yet, by its path in the demand. */
  open: string[];
  /** Sums of those that have one. */
  machines: number;
  building: number;
  once: number;
}

/** What the drawing and the connections of a kind of plant come to. */
export interface Surroundings {
  squareMetres: number;
  /** Drawn together at the busiest minute, reserve included. */
  kilowatts: number;
  /** Fresh water of a day, and what can flow in its busiest minutes. */
  cubicMetres: number;
  litresPerMinute: number;
  /** Of a day; fuel is what heats water. */
  kilowattHours: number;
  fuelKilowattHours: number;
  /** Floor by section of the line. */
  sections: ReadonlyMap<string, number>;
}

/** What has to be bought: positions, places, crates, vessels, building, installation, and what is paid once. Price x number. */
export function capitalSheet(
  demand: Demand,
  design: PlantDesign,
  { squareMetres, kilowatts }: Pick<Surroundings, "squareMetres" | "kilowatts">,
): CapitalSheet {
  const prices = demand.capital;
  const line = (
    what: string,
    number: number,
    unit: string,
    key: string,
    price: number | undefined,
    kind: Bought["kind"],
  ) => ({
    ...{ what, number, unit, kind, path: `capital.${key}`, price: price ?? null },
  });
  const station = (what: string, number: number, unit: string) =>
    line(what, number, unit, `stations.${what}`, prices?.stations[what]?.amount, "machines");
  const { dwells, chiller, crates, byProducts } = design;
  const vessels = byProducts.reduce((sum, each) => sum + each.vessels, 0);
  const all = [
    ...design.stations.map(({ name, positions }) => station(name, positions, "positions")),
    ...dwells.map(({ name, places }) => station(name, places, "places")),
    ...(chiller === null ? [] : [station(chiller.name, chiller.places, "places")]),
    line("crates", crates.fleet, "crates", "crate", prices?.crate?.amount, "machines"),
    line("vessels for by-products", vessels, "vessels", "vessel", prices?.vessel?.amount, "machines"),
    line("electrical installation", kilowatts, "kW", "power", perKilowatt(prices?.power?.amount), "building"),
    ...(squareMetres === null
      ? []
      : [line("building", squareMetres, "m2", "floor", prices?.floor?.amount, "building")]),
    ...Object.entries(prices?.other ?? {}).map(([name, { amount }]) =>
      line(name, 1, "", `other.${name}`, amount, "once"),
    ),
  ];
  const sum = (kind: Bought["kind"]) =>
    all.reduce((total, item) => total + (item.kind === kind && item.price !== null ? item.price * item.number : 0), 0);
  return {
    items: all.map(({ path: _, ...item }) => item),
    open: all.filter(({ price, number }) => price === null && number > 0).map(({ path }) => path),
    machines: sum("machines"),
    building: sum("building"),
    once: sum("once"),
  };
}

function perKilowatt(perWatt: number | undefined): number | undefined {
  return perWatt === undefined ? undefined : perWatt * 1000;
}

export function wholeCapital({ machines, building, once }: CapitalSheet): number {
  return machines + building + once;
}
