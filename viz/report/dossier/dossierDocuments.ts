import { formatDecimals } from "../../../sim/text/units/index.ts";
import type { Dossier, KindTold, OwnerRow } from "../../contract.ts";
import { isolated, svgText } from "../../frame/index.ts";
import { layoutSheet } from "../../pictures/index.ts";
import { CAUTIONS, DANGERS } from "../cautions.ts";
import { type Figures, figuresFor } from "../figures.ts";
import { html, type Markup, unbroken, unsplit } from "../html.ts";
import { page } from "../renderReport.ts";
import { serverDocument } from "../serverDocument.ts";
import { areaTable, roomTable, wayTables } from "./builderTables.ts";
import { connectionTables, equipmentTable, siteTable } from "./connectionTables.ts";
import { DOSSIER_STYLE } from "./dossierStyle.ts";
import { nextSteps, ownerSentences, reasonWords, risks, verdictWords } from "./ownerWords.ts";
import { drawing, swingPicture, worthPicture } from "./pictures.ts";
import {
  breakEvenTable,
  capitalTable,
  costTableOf,
  type DossierTable,
  figureTable,
  limitTable,
  ownerTable,
  postTable,
  rampTable,
  runningTables,
  shownKind,
  swingTable,
  tableMarkup,
  yearTable,
} from "./tables.ts";

/** One document of the dossier: an HTML page that prints on A4, landscape. */
export interface DossierDocument {
  /** Of its files, without ending. */
  name: string;
  title: string;
  html: string;
}

/** The owner's document first, then the annexes. */
export function dossierDocuments(dossier: Dossier, document = serverDocument()): DossierDocument[] {
  const figures = figuresFor(document);
  return [
    made("dossier", `What should we build? ${dossier.name}`, ownerParts(dossier, figures)),
    made("annex-builder", `For the builder: ${dossier.name}`, builderParts(dossier, figures)),
    made("annex-bank", `For the bank: ${dossier.name}`, bankParts(dossier)),
    made("annex-veterinarian", `For the official veterinarian: ${dossier.name}`, veterinarianParts(dossier, figures)),
    made("annex-trainer", `For the trainer: ${dossier.name}`, trainerParts(dossier)),
    made("annex-sources", `Every figure and its source: ${dossier.name}`, sourceParts(dossier)),
  ];
}

/** The drawing at 1:100 as a file of its own. */
export function dossierDrawing(
  dossier: Dossier,
  document = serverDocument(),
): { svg: string; widthMillimetres: number; heightMillimetres: number } {
  const { svg, widthMillimetres, heightMillimetres } = layoutSheet(shownKind(dossier).built.layout, document);
  return { svg: svgText(svg), widthMillimetres, heightMillimetres };
}

/** Every table of the dossier, for its workbook. */
export function dossierTables(dossier: Dossier): DossierTable[] {
  const { kinds, currency } = dossier;
  const told = shownKind(dossier);
  const money =
    currency === null
      ? []
      : [
          costTableOf(kinds, currency),
          breakEvenTable(kinds, currency),
          ...kinds.flatMap((each) => [capitalTable(each, currency), yearTable(each, currency)]),
          swingTable(told, currency),
        ];
  return [
    ...[ownerTable(dossier), ...money, limitTable(kinds), postTable(told), rampTable(told)],
    ...[...runningTables(dossier), ...builderTables(told), figureTable(dossier)],
  ];
}

function made(name: string, title: string, parts: readonly Markup[]): DossierDocument {
  return { name, title, html: page(title, parts, DOSSIER_STYLE).markup };
}

function cautions(more: readonly string[] = []): Markup {
  return html`<div class="caution"><h3>Cautions</h3>${[...CAUTIONS, ...more].map((line) => html`<p>${line}</p>`)}</div>`;
}

const DRAWN =
  "A schematic to talk about, not to build from: licensed planners, the law at the site and the official veterinarian decide.";

function ownerParts(dossier: Dossier, figures: Figures): Markup[] {
  const told = shownKind(dossier);
  const pictures = [worthPicture(dossier), swingPicture(dossier)].filter((each) => each !== null);
  return [
    html`<h1>${isolated(dossier.name)}</h1>
<p class="question"><b>Question:</b> What should we build?</p>
${dossier.notes === "" ? "" : html`<p class="small">${isolated(dossier.notes)}</p>`}
<p class="verdict">${unbroken(verdictWords(dossier))}</p>
<div class="answer"><p><b>${unbroken(reasonWords(dossier))}</b></p>${ownerSentences(dossier).map((line) => html`<p>${unbroken(line)}</p>`)}</div>
${cautions()}`,
    html`<h2>The kinds of plant side by side</h2>${ownerMarkup(dossier)}`,
    ...pictures.map((picture) => figures([picture])),
    html`<h2>Drawing: ${isolated(told.row.name)}</h2>${figures([drawing(told)])}`,
    html`<h2>Risks</h2><table class="risks"><thead><tr><th scope="col">What can go wrong</th><th scope="col">How large</th><th scope="col">What to do</th></tr></thead><tbody>${risks(dossier).map(({ what, size, remedy }) => html`<tr><th scope="row">${what}</th><td>${unbroken(isolated(size))}</td><td>${isolated(remedy)}</td></tr>`)}</tbody></table>
<h2>What to do next</h2><ul>${nextSteps(dossier).map((step) => html`<li>${isolated(step)}</li>`)}</ul>`,
    html`<h2>People</h2>${tableMarkup(postTable(told))}${tableMarkup(firstWeeks(dossier))}`,
    html`<h2>How this was found</h2>${methodWords(dossier)}`,
  ];
}

const WEEKS_SHOWN = 8;

/** The owner reads the first weeks; the trainer's annex has all. */
function firstWeeks(dossier: Dossier): DossierTable {
  const table = rampTable(shownKind(dossier));
  const more = table.rows.length - WEEKS_SHOWN;
  return more <= 0
    ? table
    : {
        ...table,
        rows: table.rows.slice(0, WEEKS_SHOWN),
        notes: [`${more} more weeks are in the annex for the trainer.`],
      };
}

interface OwnerColumn {
  head: string;
  cell: (row: OwnerRow) => string | [string, string];
}

function ownerMarkup({ kinds, choice, currency, days, worlds }: Dossier): Markup {
  const money = currency ?? "";
  const number = (value: number, decimals = 0) => unsplit(formatDecimals(value, decimals));
  const million = (value: number) => number(value / 1e6, 2);
  const columns: OwnerColumn[] = [
    { head: `Capital, million ${money}`, cell: ({ capital }) => (capital === null ? "open" : million(capital)) },
    { head: "People in a shift (on the books)", cell: ({ people, employed }) => `${people} (${employed})` },
    { head: "Floor, m2", cell: ({ squareMetres }) => (squareMetres === null ? "open" : number(squareMetres)) },
    { head: "Power, kW", cell: ({ kilowatts }) => number(kilowatts) },
    { head: "Water a day, m3", cell: ({ cubicMetres }) => number(cubicMetres, 1) },
    {
      head: `Full cost, ${money}/kg`,
      cell: ({ costPerKg }) =>
        costPerKg === null
          ? "open"
          : [number(costPerKg.mean, 2), `${number(costPerKg.low, 2)} to ${number(costPerKg.high, 2)}`],
    },
    { head: "Overtime a day, min", cell: ({ overtimeSeconds }) => number(overtimeSeconds.mean / 60) },
    { head: "Limits kept", cell: ({ limits }) => keptWords(limits) },
    {
      head: "Spare rate, %",
      cell: ({ spare }) => [number(100 * spare.mean), `${number(100 * spare.low)} to ${number(100 * spare.high)}`],
    },
    {
      head: "Large enough for, years",
      cell: ({ yearsUntilTooSmall }) => (yearsUntilTooSmall === null ? "all" : String(yearsUntilTooSmall)),
    },
    {
      head: `Net present value, million ${money}`,
      cell: ({ value }) =>
        value === null ? "open" : [million(value.mean), `${million(value.low)} to ${million(value.high)}`],
    },
    { head: "Best of all, %", cell: ({ best }) => (best === null ? "open" : number(100 * best)) },
  ];
  const row = (each: OwnerRow, at: number) =>
    html`<tr${at === choice.row ? BUILT : ""}><th scope="row">${isolated(each.name)}${tags(each, at === choice.row)}</th>${columns.map(({ cell }) => cellMarkup(cell(each)))}</tr>`;
  return html`<div class="scroll"><table class="owner"><thead><tr><th scope="col">Kind of plant</th>${columns.map(({ head }) => html`<th scope="col">${head}</th>`)}</tr></thead><tbody>${kinds.map((each, at) => row(each.row, at))}</tbody></table></div>
<p class="small">Undominated: no other kind is as good in limits, overtime, spare rate, capital and ${kinds.every((each) => each.row.value !== null) ? "value" : "cost"} and better in one of them. Spare rate: heads that the shifts can take over those of the busiest day that it is sized for, by ${days} simulated days with more animals than any kind can take; small figures below are ranges at 95 %. Ranges of money: nineteen of twenty of ${formatDecimals(worlds, 0)} imagined worlds, by the ranges in the demand; luck of the days is not in them. Best of all: share of those worlds in which no other kind that keeps the limits and fits the site is worth more. Full cost: animals not included. Open: a price is missing.</p>`;
}

const BUILT = { markup: ' class="best"' };

function tags({ undominated, obstacles }: OwnerRow, isBuilt: boolean): Markup[] {
  return [
    ...(isBuilt ? [html` <span class="tag">build</span>`] : []),
    ...(undominated ? [html` <span class="tag">undominated</span>`] : []),
    ...obstacles.map((words) => html`<span class="range">against it: ${isolated(words)}</span>`),
  ];
}

function cellMarkup(cell: string | [string, string]): Markup {
  return typeof cell === "string"
    ? html`<td>${cell}</td>`
    : html`<td>${cell[0]}<span class="range">${cell[1]}</span></td>`;
}

function keptWords(limits: OwnerRow["limits"]): string | [string, string] {
  const broken = limits.filter(({ outside }) => outside > 0);
  if (limits.length === 0) return "none watched";
  if (broken.length === 0) return "yes";
  return ["no", broken.map(({ name, outside }) => `${name}: ${formatDecimals(100 * outside, 2)} %`).join(", ")];
}

function methodWords(dossier: Dossier): Markup {
  const { days, seed, figures } = dossier;
  const count = (source: string) => figures.filter((figure) => figure.source === source).length;
  return html`<p>Each kind of plant was sized from the demand (rate, positions, places, people), written as a plan, and simulated for ${days} days on the same chance (seed ${isolated(seed)}), event by event; then ${days} days more with more animals than it can take, which tell its spare rate. Money follows from those days, the markets month by month, and the prices of the demand; nothing that the demand leaves out was invented as a price.</p>
<p>Of ${figures.length} figures ${count("given")} are given by the demand, ${count("published")} published, ${count("common practice")} common practice without a source, and ${count("invented")} invented: the annex of sources lists each.</p>
<p>Not in it: taxes, inflation, subsidies, the ground, building time, what competitors do, and weeks whose days differ. People tire only where a plan says so; an animal's fear and the effect of stunning are not in it.</p>`;
}

function builderParts(dossier: Dossier, figures: Figures): Markup[] {
  const told = shownKind(dossier);
  const { layout, equipment, connections } = told.built;
  return [
    html`<h1>For the builder</h1><p class="question">${isolated(dossier.name)}: ${isolated(told.row.name)}</p>${cautions([DRAWN])}<p>layout.svg and layout.pdf hold the drawing at 1:100.</p>`,
    html`<h2>Drawing</h2>${figures([drawing(told)])}`,
    html`<h2>Rooms</h2>${tableMarkup(roomTable(layout))}${tableMarkup(areaTable(layout))}`,
    html`<h2>Equipment</h2>${tableMarkup(equipmentTable(equipment))}`,
    html`<h2>Connections</h2>${connectionTables(connections).map(tableMarkup)}`,
    html`<h2>Ways and walks</h2>${wayTables(layout).map(tableMarkup)}`,
  ];
}

/** All tables of what is built. */
function builderTables({ built: { layout, equipment, connections } }: KindTold): DossierTable[] {
  return [
    ...[equipmentTable(equipment), ...connectionTables(connections), siteTable(layout)],
    ...[roomTable(layout), areaTable(layout), ...wayTables(layout)],
  ];
}

function bankParts(dossier: Dossier): Markup[] {
  const { kinds, currency } = dossier;
  const told = shownKind(dossier);
  const head = html`<h1>For the bank</h1><p class="question">${isolated(dossier.name)}: ${isolated(told.row.name)}</p><p class="verdict">${unbroken(verdictWords(dossier))}</p><div class="answer"><p>${unbroken(reasonWords(dossier))}</p></div>${cautions(["Tax, inflation and subsidies are left to the accountant. Prices are those of the demand; nobody has offered them."])}`;
  if (currency === null) return [head, html`<h2>Money</h2><p>The demand names no money.</p>`];
  return [
    head,
    html`<h2>Value</h2><p>Net present value = sum of each year's cash flow / (1 + interest)^year, the capital in year 0 (any engineering economy text). Interest ${formatDecimals(100 * (told.kind.demand.capital?.interest ?? 0), 1)} %.</p>${tableMarkup(yearTable(told, currency))}`,
    html`<h2>Capital</h2>${tableMarkup(capitalTable(told, currency))}`,
    html`<h2>Cost and break-even</h2>${tableMarkup(costTableOf(kinds, currency))}${tableMarkup(breakEvenTable(kinds, currency))}`,
    html`<h2>What moves it</h2>${tableMarkup(swingTable(told, currency))}`,
  ];
}

/** Heads a year from which an animal welfare officer is needed. */
const OFFICER_FROM = 150_000;

function veterinarianParts(dossier: Dossier, figures: Figures): Markup[] {
  const told = shownKind(dossier);
  const { kind, trial } = told;
  const { design, demand } = kind;
  const { rate, crates } = design;
  const yearly = rate.headsPerWeek * demand.years.weeks;
  const lot = demand.animals.lot ?? demand.crates.headsPerCrate * crates.cratesPerLorry;
  const facts: [string, string][] = [
    [
      "Heads an hour while hanging goes on",
      `${formatDecimals(rate.headsPerSecond * 3600, 0)}; at most ${formatDecimals(rate.designHeadsPerSecond * 3600, 0)} while the line runs`,
    ],
    ["Heads of the busiest day", formatDecimals(rate.headsPerDay, 0)],
    [
      "Lots a day",
      `${Math.ceil(rate.headsPerDay / lot)} of ${formatDecimals(lot, 0)} heads; a batch is what one holding brings in a day (Regulation (EU) 2019/627, Articles 25 and 26)`,
    ],
    [
      "Lorries",
      `${crates.lorries} a day, ${crates.cratesPerLorry} crates each, one every ${formatDecimals(crates.everySeconds / 60, 0)} min, the first ${formatDecimals(crates.leadSeconds / 60, 0)} min before the shift`,
    ],
    [
      "Places in lairage",
      `${formatDecimals(crates.lairageCrates, 0)} crates. Rabbits not killed within 12 h of arrival must be fed (Regulation (EC) 1099/2009, Annex III 1.2)`,
    ],
    ["Way of live handling", design.way],
    [
      "Inspection",
      `people at it: ${people(design, "inspection")}; ${formatDecimals(100 * demand.animals.condemned, 1)} % condemned, ${formatDecimals(100 * demand.animals.toTrim, 1)} % to trim and back, taken for the plan`,
    ],
    [
      "Animal welfare officer",
      yearly >= OFFICER_FROM
        ? `needed: ${formatDecimals(yearly, -3)} heads a year (Regulation (EC) 1099/2009, Article 17(6): from 150,000 rabbits on, quoted)`
        : `not asked for below 150,000 rabbits a year (Regulation (EC) 1099/2009, Article 17(6), quoted); ${formatDecimals(yearly, -3)} here`,
    ],
    [
      "Blow or neck dislocation",
      "back-up only, and at most 70 animals a person a day (Regulation (EC) 1099/2009, Annex I Chapter II 3)",
    ],
    [
      "Core temperature",
      `${demand.written.chilling === undefined ? "" : (demand.written.chilling as { core: string }).core} at the exit of the chiller; ${design.chiller === null ? "no chiller" : `${formatDecimals(design.chiller.seconds / 60, 0)} min computed for a mean carcass`}`,
    ],
    [
      "Tools",
      "water at not less than 82 degC, or a system of equal effect (Regulation (EC) 853/2004, Annex III Section II)",
    ],
  ];
  return [
    html`<h1>For the official veterinarian</h1><p class="question">${isolated(dossier.name)}: ${isolated(told.row.name)}. Nothing here sets a limit or a setting: you do.</p>${cautions(DANGERS)}`,
    html`<h2>Animals and rates</h2><table><tbody>${facts.map(([what, words]) => html`<tr><th scope="row">${what}</th><td>${isolated(words)}</td></tr>`)}</tbody></table>`,
    html`<h2>Time limits</h2>${tableMarkup(limitTable([told]))}
<p>The plan stuns a head only when it can be stuck and bled at once, by what is known at that moment; it empties the stretch from stunning to bleeding before every break; somebody comes within seconds for a head that a breakdown leaves waiting. ${trial.days} simulated days.</p>`,
    html`<h2>To be settled with you</h2><ul>${[
      "current, voltage, frequency, time and the longest interval from stun to stick (Regulation (EC) 1099/2009, Annex I Table 2); a warning on too short a time; records for one year (Annex II 4.1)",
      "how long a head bleeds before dressing begins: only after no sign of life (Annex III 3.2)",
      "most animals an hour of each line and most in each lairage area, which the operator must tell the authority (Article 14)",
      "certificates of competence of everybody who handles, hangs, stuns or sticks (Article 7)",
      "who inspects, where, and at which speed: no figure for rabbits was found in EU law",
    ].map((line) => html`<li>${line}</li>`)}</ul>`,
    html`<h2>Rooms and ways</h2>${figures([drawing(told)])}${connectionTables(told.built.connections).slice(-1).map(tableMarkup)}`,
  ];
}

function people({ stations }: Dossier["kinds"][number]["kind"]["design"], step: string): number {
  const found = stations.find(({ name }) => name === step);
  return found === undefined ? 0 : found.positions * found.peoplePerPosition;
}

function trainerParts(dossier: Dossier): Markup[] {
  const told = shownKind(dossier);
  return [
    html`<h1>For the trainer</h1><p class="question">${isolated(dossier.name)}: ${isolated(told.row.name)}</p>${cautions(DANGERS)}`,
    html`<h2>People</h2>${tableMarkup(postTable(told))}`,
    html`<h2>Learning</h2>${tableMarkup(rampTable(told))}<p>Whoever handles, hangs, stuns or sticks needs a certificate of competence first; a temporary one lasts three months at most, under supervision (Regulation (EC) 1099/2009, Articles 7 and 21). plans/first-weeks.json has the learning in it: gambrel week plays it.</p>`,
    ...runningTables(dossier).map((table) => html`<h2>${table.name}</h2>${tableMarkup(table)}`),
  ];
}

function sourceParts(dossier: Dossier): Markup[] {
  return [
    html`<h1>Every figure and its source</h1><p class="question">${isolated(dossier.name)}</p>${cautions()}`,
    html`<h2>Figures</h2>${tableMarkup(figureTable(dossier))}`,
    html`<h2>Building and services</h2>${tableMarkup(siteTable(shownKind(dossier).built.layout))}`,
  ];
}
