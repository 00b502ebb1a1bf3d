import { formatDecimals } from "../../sim/text/units/index.ts";
import type { ConnectionSheet, EquipmentRow, PlantLayout } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { LAYOUT_CAUTION, layoutChart, layoutTable } from "../pictures/index.ts";
import { DANGERS_IN_SHORT } from "./cautions.ts";
import { areaTable, wayTables } from "./dossier/builderTables.ts";
import { connectionTables, equipmentTable, siteTable } from "./dossier/connectionTables.ts";
import { tableMarkup } from "./dossier/tables.ts";
import { figuresFor } from "./figures.ts";
import { cautionBox } from "./firstPages.ts";
import { html, unbroken } from "./html.ts";
import { page } from "./renderReport.ts";
import { serverDocument } from "./serverDocument.ts";

/** What a builder asks for: the drawing, what to buy, what to connect. */
export interface LayoutReport {
  layout: PlantLayout;
  equipment: readonly EquipmentRow[];
  connections: ConnectionSheet;
}

const MAX_FINDINGS = 6;

/** The layout of a plan with its equipment and connections as one self-contained page. */
export function renderLayoutReport(found: LayoutReport, document: Document = serverDocument()): string {
  const { layout, equipment, connections } = found;
  const { title, description } = { title: `Layout of ${layout.name}`, description: LAYOUT_CAUTION };
  const drawing = {
    ...{ name: "layout", title, description, readings: null },
    draw: (context: Parameters<typeof layoutChart>[1]) => layoutChart(layout, context),
    table: () => layoutTable(layout),
  };
  const findings = layout.findings.slice(0, MAX_FINDINGS);
  const first = html`<h1><bdi>${isolated(title)}</bdi></h1>
<p class="question"><b>Question:</b> What has to be built, bought and connected for this plan?</p>
<p class="verdict">${unbroken(layoutVerdict(found))}</p>
${figuresFor(document)([drawing])}
${findings.length === 0 ? "" : html`<h2>What does not fit the plan</h2><ul>${findings.map((words) => html`<li>${isolated(words)}</li>`)}</ul>`}
${cautionBox()}
${DANGERS_IN_SHORT.map((line) => html`<p class="small">${line}</p>`)}`;
  const parts = [
    html`<h2>What has to be bought</h2>${tableMarkup(equipmentTable(equipment))}`,
    html`<h2>What has to be connected</h2>${connectionTables(connections).map(tableMarkup)}`,
    html`<h2>Floor, walks and ways</h2>${[areaTable(layout), ...wayTables(layout)].map(tableMarkup)}`,
    html`<h2>What it rests on</h2>${tableMarkup(siteTable(layout))}`,
  ];
  return page(title, [first, ...parts]).markup;
}

/** The answer in one sentence. */
export function layoutVerdict({ layout, connections }: LayoutReport): string {
  const { width, depth } = layout.building;
  const floor = layout.areas.at(-1)!.squareMetres;
  const rows = connections.parts.flatMap(({ rows }) => rows);
  const of = (what: string) => rows.find((row) => row.what === what);
  const [power, water] = [of("to ask for"), of("fresh water a day")];
  const services =
    power === undefined || water === undefined
      ? ""
      : ` It needs a connection of ${formatDecimals(power.value, 0)} kW and takes ${formatDecimals(water.value, 0)} m³ of fresh water a day.`;
  return `The plant takes about ${formatDecimals(floor, 0)} m² in a building of ${formatDecimals(width, 0)} x ${formatDecimals(depth, 0)} m.${services}`;
}
