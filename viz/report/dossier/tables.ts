import { formatClock, formatDecimals } from "../../../sim/text/units/index.ts";
import type { Dossier, KindTold } from "../../contract.ts";
import { isolated } from "../../frame/index.ts";
import { html, type Markup, unsplit } from "../html.ts";

/** A cell: a number as it is, words, or nothing known. */
export type DossierCell = number | string | null;

/** One table of the dossier: for the page, written with `decimals`; for the workbook, the numbers themselves. Shares are in "%". */
export interface DossierTable {
  /** Of the sheet, and above the table. */
  name: string;
  columns: { name: string; unit: string; decimals?: number }[];
  rows: DossierCell[][];
  /** What stands below it: formulas, sources. */
  notes: string[];
}

export function tableMarkup({ name, columns, rows, notes }: DossierTable): Markup {
  const heads = columns.map(
    (column) =>
      html`<th scope="col">${column.name}${column.unit === "" ? "" : html` <span class="unit">${column.unit}</span>`}</th>`,
  );
  const cell = (value: DossierCell, decimals = 0): string =>
    value === null
      ? "–"
      : typeof value === "number"
        ? unsplit(formatDecimals(value, Number.isInteger(value) ? 0 : decimals))
        : isolated(value);
  const body = rows.map(
    (row) =>
      html`<tr>${row.map((value, at) =>
        at === 0
          ? html`<th scope="row">${cell(value, columns[at]!.decimals)}</th>`
          : html`<td${typeof value === "number" ? NUMBER : ""}>${cell(value, columns[at]!.decimals)}</td>`,
      )}</tr>`,
  );
  return html`<h3>${name}</h3>
<div class="scroll"><table><thead><tr>${heads}</tr></thead><tbody>${body}</tbody></table></div>
${notes.map((note) => html`<p class="small">${isolated(note)}</p>`)}`;
}

const NUMBER = { markup: ' class="number"' };

const words = (name: string) => ({ name, unit: "" });
const figure = (name: string, unit: string, decimals = 0) => ({ name, unit, decimals });

/** The kind that the dossier speaks of: the one to build, or the first where none may be built. */
export function shownKind({ kinds, choice }: Dossier): KindTold {
  return kinds[choice.row ?? 0]!;
}

/** Every figure of the owner's table, a row for each kind. */
export function ownerTable({ kinds, currency, choice }: Dossier): DossierTable {
  const money = currency ?? "";
  return {
    name: "Kinds of plant",
    columns: [
      ...[words("Kind"), words("Build"), words("Undominated")],
      ...[figure("Capital", money), figure("People in a shift", ""), figure("Employed", "")],
      ...[figure("Floor", "m2"), figure("Electricity", "kW"), figure("Water a day", "m3", 1)],
      ...[figure("Full cost", `${money}/kg`, 2), figure("low", `${money}/kg`, 2), figure("high", `${money}/kg`, 2)],
      ...[figure("Overtime", "min"), figure("Heads outside a limit", "%", 2), figure("Spare rate", "%", 1)],
      ...[figure("spare, low", "%", 1), figure("spare, high", "%", 1), figure("Full years until too small", "")],
      ...[figure("Net present value", money), figure("value, low", money), figure("value, high", money)],
      ...[figure("Best of all", "%"), figure("Loses money", "%"), words("Against it")],
    ],
    rows: kinds.map(({ row }, at) => [
      ...[row.name, at === choice.row ? "yes" : "", row.undominated ? "yes" : ""],
      ...[row.capital, row.people, row.employed, row.squareMetres, row.kilowatts, row.cubicMetres],
      ...[row.costPerKg?.mean ?? null, row.costPerKg?.low ?? null, row.costPerKg?.high ?? null],
      ...[row.overtimeSeconds.mean / 60, outsidePercent(row.limits), 100 * row.spare.mean],
      ...[100 * row.spare.low, 100 * row.spare.high, row.yearsUntilTooSmall],
      ...[row.value?.mean ?? null, row.value?.low ?? null, row.value?.high ?? null],
      ...[row.best === null ? null : 100 * row.best, row.loss === null ? null : 100 * row.loss],
      [...row.obstacles, ...row.open.map((path) => `no price: ${path}`)].join("; "),
    ]),
    notes: [],
  };
}

function outsidePercent(limits: KindTold["row"]["limits"]): number {
  return 100 * limits.reduce((sum, { outside }) => sum + outside, 0);
}

export function capitalTable({ kind, money }: KindTold, currency: string): DossierTable {
  const items = money?.capital.items ?? [];
  return {
    name: `What is bought: ${kind.name}`,
    columns: [
      words("What"),
      figure("Number", ""),
      words("of"),
      figure("Price of one", currency, 0),
      figure("Together", currency),
    ],
    rows: items.map(({ what, number, unit, price }) => [
      what,
      number,
      unit,
      price,
      price === null ? null : price * number,
    ]),
    notes: [
      "Together = number x price. A dash: the demand names no price, and the capital is open.",
      "Refrigeration, hot water, compressed air, rail, basins and lockers of the builder's list are in it only as far as capital.other in the demand names them.",
    ],
  };
}

export function yearTable({ kind, money }: KindTold, currency: string): DossierTable {
  const years = money?.years ?? [];
  return {
    name: `Money by year: ${kind.name}`,
    columns: [
      ...[figure("Year", ""), figure("Heads asked", ""), figure("Heads sold", ""), figure("Revenue", currency)],
      ...["Animals", "Pay", "Energy and water", "Packing, fees, waste", "Overhead", "Upkeep", "Cash"].map((name) =>
        figure(name, currency),
      ),
      figure("Cash flow with capital", currency),
    ],
    rows: [
      ...(money?.flows == null ? [] : [[0, ...new Array<null>(10).fill(null), money.flows[0]!]]),
      ...years.map((year, at) => [
        ...[year.year, money!.asked[at]!, year.heads, year.revenue, year.animals, year.pay, year.energy, year.packing],
        ...[year.overhead, year.upkeep, year.cash, money!.flows?.[year.year] ?? null],
      ]),
    ],
    notes: [
      "Sold is what is asked for, no more than the shifts can take, month by month; in the first year less what the learning costs. Pay counts everybody on the books. No taxes, no inflation: those are for the accountant.",
      "Cash flow with capital: what is bought and the training in year 0, machines anew when their life is over, at the end the rest of the price by the straight line.",
    ],
  };
}

export function costTableOf(kinds: readonly KindTold[], currency: string): DossierTable {
  const year = kinds[0]!.money?.year ?? 1;
  const parts = ["pay", "energy", "packing", "overhead", "upkeep", "capital"] as const;
  const names = ["Pay", "Energy and water", "Packing, fees, waste", "Overhead", "Upkeep", "Capital"];
  return {
    name: `Full cost of year ${year}`,
    columns: [
      words("Kind"),
      ...names.map((name) => figure(name, currency)),
      ...[figure("Together", currency), figure("A head", currency, 2), figure("A kilogram", currency, 3)],
    ],
    rows: kinds.flatMap(({ kind, money }) =>
      money === null
        ? []
        : [
            [
              kind.name,
              ...parts.map((part) => money.cost.parts[part]),
              money.cost.total,
              money.cost.perHead,
              money.cost.perKg,
            ],
          ],
    ),
    notes: [
      "Animals are not in it. Capital: the price over its life as an equal yearly amount, price x i(1 + i)^n / ((1 + i)^n - 1) (capital recovery; any engineering economy text).",
    ],
  };
}

export function breakEvenTable(kinds: readonly KindTold[], currency: string): DossierTable {
  return {
    name: "Break-even, standstill, loan",
    columns: [
      ...[words("Kind"), figure("Break-even", "heads a day"), figure("A week's standstill", currency)],
      ...[figure("Borrowed", currency), figure("To the bank a month", currency), figure("Interest in all", currency)],
      figure("Least cash over payments", "times", 2),
    ],
    rows: kinds.map(({ kind, money }) => [
      kind.name,
      finite(money?.breakEvenHeads ?? null),
      ...[money?.standstillWeek ?? null, money?.loan?.amount ?? null, money?.loan?.perMonth ?? null],
      ...[money?.loan?.interestPaid ?? null, money?.loan == null ? null : Math.min(...money.loan.cover)],
    ]),
    notes: [
      "Break-even = (pay + overhead + upkeep + capital) / what a head brings beyond animals, energy, packing / days a year. A dash: a price is missing, or a head brings nothing.",
      "Standstill: what the heads of a mean week would have brought; pay goes on. The animals must go elsewhere: agree with whom before the first day.",
      "Loan: equal payments every month, amount x i / (1 - (1 + i)^-n). The bank looks for cash over payments well above 1.",
    ],
  };
}

function finite(value: number | null): number | null {
  return value === null || !Number.isFinite(value) ? null : value;
}

/** What a range is of. */
export const RANGE_WORDS: Record<string, string> = {
  volume: "what is sold",
  price: "price of what is sold",
  animals: "price of animals",
  pay: "pay",
  energy: "prices of energy and water",
  capital: "what is bought",
};

export function swingTable({ kind, money }: KindTold, currency: string): DossierTable {
  const isValue = money?.swingOf === "value";
  const unit = isValue ? currency : `${currency}/kg`;
  const decimals = isValue ? 0 : 3;
  return {
    name: `What moves the ${isValue ? "value" : "cost"}: ${kind.name}`,
    columns: [
      words("Figure"),
      figure("Range", "%"),
      figure("at its low end", unit, decimals),
      figure("at its high end", unit, decimals),
    ],
    rows: (money?.swings ?? []).map(({ key, range, atLow, atHigh }) => [RANGE_WORDS[key]!, 100 * range, atLow, atHigh]),
    notes: ["One figure at a time, the others as written. Nineteen times of twenty a figure lies between its ends."],
  };
}

export function postTable({ kind, staffing }: KindTold): DossierTable {
  return {
    name: `People by post: ${kind.name}`,
    columns: [words("StaffPost"), words("Zone"), figure("In each shift", ""), figure("Load", "%"), words("Must know")],
    rows: staffing.posts.map(({ name, zone, people, load, skills }) => [
      name,
      zone,
      people,
      100 * load,
      skills.join(", "),
    ]),
    notes: [
      `At posts ${staffing.atPosts}, relief ${staffing.relief}, due in a shift so that enough come ${staffing.due}, shifts ${staffing.shifts}, on the books ${staffing.employed} (leave covered).`,
      "Relief = posts / (1 - time relieved / shift), rounded up. Due: the fewest of whom enough come on the wanted share of days (binomial). Nobody works in two hygiene zones.",
    ],
  };
}

export function rampTable({ kind, ramp }: KindTold): DossierTable {
  return {
    name: `The first weeks: ${kind.name}`,
    columns: [figure("Week", ""), figure("Of the rated speed", "%"), figure("Heads a week", ""), words("Set by")],
    rows: ramp.map(({ week, share, heads, slowest }) => [week, 100 * share, heads, slowest]),
    notes: [
      "The time for a head falls with each doubling of the heads done (Wright 1936, Journal of the Aeronautical Sciences 3, read for units). The line goes at the pace of the post that learns longest for its load. Never hang faster than the slowest can stun, stick and bleed.",
    ],
  };
}

export function runningTables({ cleaning, maintenance, spares, measures }: Dossier): DossierTable[] {
  return [
    {
      name: "Cleaning after the last work",
      columns: [
        words("Section"),
        figure("Minutes", ""),
        figure("People", ""),
        figure("Floor", "m2"),
        figure("Water", "L"),
      ],
      rows: cleaning.map(({ section, minutes, people, squareMetres, litres }) => [
        section,
        minutes,
        people,
        squareMetres,
        litres,
      ]),
      notes: [
        "Water: 10 L for each square metre; 5 to 15 L is common practice, no source. Sections are cleaned at once, from clean to unclean.",
      ],
    },
    {
      name: "Maintenance",
      columns: [words("What"), words("Task"), words("Every"), words("Who says so")],
      rows: maintenance.map(({ what, task, every, source }) => [what, task, every, source]),
      notes: [],
    },
    {
      name: "Stops and spare parts",
      columns: [
        ...[
          words("Station"),
          words("Stop"),
          figure("Machines", ""),
          figure("Stops a year", ""),
          figure("Hours a year", "", 1),
        ],
        ...[words("Takes a part"), figure("In stock", "")],
      ],
      rows: spares.map((each) => [
        ...[each.station, each.breakdown, each.machines, each.stopsPerYear, each.hoursPerYear],
        ...[each.takesPart ? "yes" : "no, cleared by hand", each.stock],
      ]),
      notes: [
        "Stops = running time / mean uptime. A stop of five minutes or more is taken to need a part (our own rule); in stock: what is enough on 95 % of occasions within ten days of delivery (Poisson). The makers' lists come first. Lock the power off before a jam is cleared.",
      ],
    },
    {
      name: "What to measure in the first month",
      columns: [words("What"), figure("Times", ""), words("Why")],
      rows: measures.map(({ what, observations, why }) => [what, observations, why]),
      notes: [
        "Times of heads: (1.96 x cv / 0.05)^2, so that the mean is known within 5 %. Then: gambrel fit, gambrel calibrate.",
      ],
    },
  ];
}

export function limitTable(kinds: readonly KindTold[]): DossierTable {
  const limits = kinds[0]!.trial.limits;
  return {
    name: "Time limits in the simulated days",
    columns: [words("Limit"), words("Source"), ...kinds.map(({ kind }) => figure(kind.name, "% outside", 2))],
    rows: limits.map(({ name, source }, at) => [
      name,
      source,
      ...kinds.map(({ trial }) => 100 * trial.limits[at]!.outside),
    ]),
    notes: [
      "No share of 0 is a proof: the law at the site and the official veterinarian decide, and the real line is to be measured.",
    ],
  };
}

export function figureTable({ figures }: Dossier): DossierTable {
  return {
    name: "Every figure and where it comes from",
    columns: [words("Figure"), words("Value"), words("Source"), words("Note"), words("In the demand")],
    rows: figures.map(({ what, value, source, note, path }) => [what, value, source, note, path]),
    notes: ["Given: by the demand. Invented: to be replaced by figures of the site before money is spent."],
  };
}

/** "14:05", of seconds of the clock. */
export const clockOf = (seconds: number): string => formatClock(seconds);
