import type { KindTold } from "../../contract.ts";
import type { DossierTable } from "./tables.ts";

const words = (name: string) => ({ name, unit: "" });
const figure = (name: string, unit: string, decimals = 0) => ({ name, unit, decimals });

type Layout = KindTold["built"]["layout"];
type Equipment = KindTold["built"]["equipment"];
type Connections = KindTold["built"]["connections"];

/** What has to be bought; no makers, no brands. */
export function equipmentTable(equipment: Equipment): DossierTable {
  return {
    name: "Equipment",
    columns: [
      ...[words("Part"), words("Name"), words("What"), figure("Number", "", 1), words("of"), words("Rate needed")],
      ...[
        figure("Places before", ""),
        figure("Length", "m", 1),
        words("Connected to"),
        words("Why"),
        words("Stand-by"),
      ],
    ],
    rows: equipment.map((each) => [
      ...[each.group, each.name, each.what, each.number, each.unit, each.rateNeeded],
      ...[each.places, each.metres, each.connectedTo.join(", "), each.why, each.standBy],
    ]),
    notes: ["No makers and no brands. Prices are those of the demand: the annex for the bank."],
  };
}

/** Every service with its figures, formulas and sources. */
export function connectionTables({ parts, days }: Connections): DossierTable[] {
  return parts.map(({ service, rows }) => ({
    name: `${service[0]!.toUpperCase()}${service.slice(1)}`,
    columns: [words("What"), figure("Figure", "", 1), words("Unit"), words("How it comes about"), words("Source")],
    rows: rows.map(({ what, value, unit, formula, source }) => [what, value, unit, formula, source]),
    notes: [`By ${days} simulated ${days === 1 ? "day" : "days"}.`],
  }));
}

/** By-products by legal category, with containers and collections. */
export function byProductTable({ byProducts }: Connections): DossierTable {
  return {
    name: "By-products",
    columns: [
      ...[
        words("What"),
        figure("Category", ""),
        figure("A day", "kg"),
        figure("Most", "kg"),
        figure("A container", "kg"),
      ],
      ...[figure("Containers", ""), figure("Changes a day", ""), figure("Collections a day", ""), words("Why")],
    ],
    rows: byProducts.map((each) => [
      ...[each.name, each.category, each.kilograms, each.kilogramsMost, each.containerKilograms],
      ...[each.containers, each.changes, each.collectionsPerDay, each.reason],
    ]),
    notes: ["Categories of Regulation (EC) 1069/2009. What is mixed with category 2 is category 2."],
  };
}

/** Rooms with their floor; numbers are those of the drawing. */
export function roomTable({ rooms }: Layout): DossierTable {
  return {
    name: "Rooms",
    columns: [
      ...[figure("Number", ""), words("Room"), words("Zone"), figure("Floor", "m2"), figure("Width", "m", 1)],
      ...[figure("Depth", "m", 1), figure("People", ""), words("Worked out from")],
    ],
    rows: rooms.map(({ name, kind, squareMetres, width, depth, people, why }, at) => [
      ...[at + 1, name, kind, squareMetres, width, depth],
      ...[people === 0 ? null : people, why],
    ]),
    notes: [],
  };
}

/** The floor of all kinds of rooms, and of the building. */
export function areaTable({ areas }: Layout): DossierTable {
  return {
    name: "Floor by zone",
    columns: [words("Zone"), figure("Rooms", ""), figure("Floor", "m2")],
    rows: areas.map(({ kind, rooms, squareMetres }) => [kind, rooms, squareMetres]),
    notes: [],
  };
}

/** Walks of crews beside the time that the plan has for them, and ways of heads that are drawn longer than the plan has them. */
export function wayTables({ walks, ways, findings }: Layout): DossierTable[] {
  return [
    {
      name: "Walks of the crews",
      columns: [
        ...[words("Crew"), words("From"), words("To"), figure("Farthest", "m"), figure("Mean", "m")],
        ...[figure("Farthest", "s", 1), figure("In the plan", "s", 1), words("Time in the plan")],
      ],
      rows: walks.map((each) => [
        ...[each.crew, each.from, each.to, each.farthestMetres, each.meanMetres],
        ...[each.farthestSeconds, each.plannedSeconds, each.verdict],
      ]),
      notes: findings,
    },
    {
      name: "Ways from step to step",
      columns: [
        ...[words("From"), words("To"), figure("In the plan", "m", 1), figure("Drawn", "m", 1)],
        ...[figure("In the plan", "s", 1), figure("Drawn", "s", 1)],
      ],
      rows: ways.map((each) => [
        ...[each.from, each.to, each.plannedMetres, each.drawnMetres],
        ...[each.plannedSeconds, each.drawnSeconds],
      ]),
      notes: ["Drawn: with what joins the rail round bends and through walls, for which no head has time in the plan."],
    },
  ];
}
