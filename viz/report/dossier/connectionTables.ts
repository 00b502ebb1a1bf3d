import { capital, formatDecimals } from "../../../sim/text/units/index.ts";
import type { ConnectionSheet, EquipmentRow, PlantLayout } from "../../contract.ts";
import type { DossierTable } from "./tables.ts";

const words = (name: string) => ({ name, unit: "" });
const figure = (name: string, unit: string, decimals = 0) => ({ name, unit, decimals });

/** What has to be bought; prices only where the plan has them. */
export function equipmentTable(rows: readonly EquipmentRow[]): DossierTable {
  return {
    name: "Equipment",
    columns: [
      ...[words("What"), words("Kind"), figure("Number", ""), words("Counted in"), words("Rate needed"), words("Why")],
      ...[
        figure("Places before", ""),
        figure("On the line", "m", 1),
        words("Connected to"),
        words("Stand-by"),
        words("Price"),
      ],
    ],
    rows: rows.map((row) => [
      ...[row.name, `${row.group}: ${row.what}`, row.number, row.unit, row.rateNeeded, row.why],
      ...[row.places, row.metres, row.connectedTo.join(", "), row.standBy],
      row.price === null ? "" : `${formatDecimals(row.price.amount, 0)} ${row.price.currency}`,
    ]),
    notes: [
      "No makers and no brands: ask several for the rate, the number and the connections that stand here. Prices are yours to fill in.",
    ],
  };
}

/** A table for each service, and one of by-products. */
export function connectionTables({ parts, byProducts, open, days }: ConnectionSheet): DossierTable[] {
  return [
    ...parts.map(({ service, rows }) => ({
      name: capital(service),
      columns: [words("What"), words("Figure"), words("How it comes about"), words("Source")],
      rows: rows.map(({ what, value, unit, formula, source }) => [what, amount(value, unit), formula, source]),
      notes: [],
    })),
    {
      name: "By-products",
      columns: [
        ...[words("What"), figure("Category", ""), words("Why"), figure("A day", "kg"), figure("At most", "kg")],
        ...[
          figure("Container", "kg"),
          figure("Containers", ""),
          figure("Fillings a day", ""),
          figure("Collections a day", ""),
        ],
      ],
      rows: byProducts.map((row) => [
        ...[row.name, row.category, row.reason, row.kilograms, row.kilogramsMost],
        ...[row.containerKilograms, row.containers, row.changes, row.collectionsPerDay],
      ]),
      notes: [
        `From ${days} simulated days. Categories are those of Regulation (EC) 1069/2009; the official veterinarian decides.`,
        ...open,
      ],
    },
  ];
}

/** Three digits; whole numbers from 100 on. */
function amount(value: number, unit: string): string {
  const decimals = value === 0 || Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2;
  return `${formatDecimals(value, decimals)}${unit === "" ? "" : ` ${unit}`}`;
}

/** What the drawing and the connections rest on; the key is where the plan changes it. */
export function siteTable({ figures }: Pick<PlantLayout, "figures">): DossierTable {
  return {
    name: "Figures of building and services",
    columns: [words("Key below site"), words("What"), words("Figure"), words("Source"), words("Note")],
    rows: figures.map(({ key, what, value, source, note }) => [key, what, value, source, note]),
    notes: ['Write any of them under "site" of the plan (or of the demand), and everything is worked out anew.'],
  };
}
