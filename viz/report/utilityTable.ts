import { formatDecimals } from "../../sim/text/units/index.ts";
import type { UtilitySheet, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { html, type Markup, unsplit } from "./html.ts";

/**
 * Plants for chickens, by analogy: none is published for rabbits. Waste water: French order of 31 March 2025, Art. 5.5, its
 * lower end and the energy from memory (Decision (EU) 2023/2749). Yearly means, for a tonne of carcass.
 */
const CHICKENS = { litres: [1450, 6300], kilowattHours: [170, 490] } as const;

/** Who takes water, heat, air and electricity; null where results have none. */
export function utilityTable({ utilitySheet: sheet }: VariantResults): Markup | null {
  if (sheet === undefined || sheet === null) return null;
  return html`<h3>Water, heat, air and electricity</h3>
${sheet.consumers.length === 0 ? html`<p>The plan names no consumers besides the stages, so these figures leave out hot water, cleaning, compressed air and ventilation.</p>` : ""}
<div class="scroll"><table class="wide"><caption>What each consumer takes on the day. Peak: its average while it runs.</caption><thead><tr><th scope="col">Consumer</th><th scope="col">Runs</th><th scope="col">Water</th><th scope="col">At</th><th scope="col">Heat</th><th scope="col">Free air</th><th scope="col">Electricity</th><th scope="col">Peak</th></tr></thead><tbody>${stageRows(sheet)}${consumerRows(sheet)}${totalRow(sheet)}</tbody></table></div>
${peakWords(sheet)}
${perTonneTable(sheet)}
${coldTable(sheet)}`;
}

const RUNS = { work: "in working hours", cleaning: "while cleaning", "all day": "all day" } as const;

function stageRows({ stages }: UtilitySheet): Markup[] {
  return stages.map(
    ({ name, litres, electricKilowattHours }) =>
      html`<tr><th scope="row"><bdi>${isolated(name)}</bdi></th><td>as a stage</td><td>${amount(litres, "L")}</td><td>${litres > 0 ? "cold" : NONE}</td><td>${NONE}</td><td>${NONE}</td><td>${amount(electricKilowattHours, "kWh")}</td><td>${NONE}</td></tr>`,
  );
}

function consumerRows({ consumers }: UtilitySheet): Markup[] {
  return consumers.map((use) => {
    const peaks = [
      amount(use.litresPerHour, "L/h"),
      amount(use.heatKilowatts, "kW heat"),
      amount(use.electricKilowatts, "kW"),
    ];
    const at =
      use.litres === 0 ? NONE : use.celsius === null ? "cold" : unsplit(`${formatDecimals(use.celsius, 0)} °C`);
    return html`<tr><th scope="row"><bdi>${isolated(use.name)}</bdi></th><td>${RUNS[use.during]}</td><td>${amount(use.litres, "L")}</td><td>${at}</td><td>${amount(use.heatKilowattHours, "kWh")}</td><td>${amount(use.airCubicMetres, "m³")}</td><td>${amount(use.electricKilowattHours, "kWh")}</td><td>${peaks.filter((words) => words !== NONE).join(", ")}</td></tr>`;
  });
}

function totalRow({ total, services }: UtilitySheet): Markup {
  return html`<tr><th scope="row">Plant</th><td></td><td>${amount(total.freshLitres, "L")}</td><td></td><td>${amount(services.heatKilowattHours, "kWh")}</td><td>${amount(services.airCubicMetres, "m³")}</td><td>${amount(total.kilowattHours, "kWh")}</td><td></td></tr>`;
}

function peakWords({ services, total, codKilograms }: UtilitySheet): Markup {
  const hot =
    services.hotLitres > 0
      ? `Most hot water at once: ${amount(services.hotLitresPerHour, "L/h")}, ${amount(services.heatKilowatts, "kW")} of heat. Fuel for it: ${amount(total.fuelKilowattHours, "kWh")} a day. `
      : "";
  const drains = `Waste water: ${amount(total.freshLitres, "L")}, all fresh water${codKilograms === null ? "; the plan gives no oxygen demand (COD)" : `, with ${amount(codKilograms, "kg")} of oxygen demand (COD)`}.`;
  return html`<p>${hot}${drains}</p>`;
}

function perTonneTable({ litresPerTonne, kilowattHoursPerTonne }: UtilitySheet): Markup | "" {
  if (litresPerTonne === null || kilowattHoursPerTonne === null) return "";
  const rows: [string, number, readonly [number, number], string][] = [
    ["fresh water", litresPerTonne, CHICKENS.litres, "L"],
    ["electricity and fuel", kilowattHoursPerTonne, CHICKENS.kilowattHours, "kWh"],
  ];
  const body = rows.map(
    ([what, value, [low, high], unit]) =>
      html`<tr><th scope="row">${what}</th><td>${amount(value, unit)}</td><td>${formatDecimals(low, 0)} to ${formatDecimals(high, 0)} ${unit}</td><td>${rangeWords(value, low, high)}</td></tr>`,
  );
  return html`<div class="scroll"><table><caption>Per tonne of carcass. No published value for rabbits was found; plants for chickens are shown as an analogy only (Decision (EU) 2023/2749, yearly means; lower water and both energy figures from memory).</caption><thead><tr><th scope="col">What</th><th scope="col">This day</th><th scope="col">Plants for chickens</th><th scope="col">Compared</th></tr></thead><tbody>${body}</tbody></table></div>`;
}

function rangeWords(value: number, low: number, high: number): string {
  if (value < low)
    return "below this range: check which consumers the plan leaves out (cleaning, hot water, ventilation, offices)";
  return value > high ? "above this range: check the largest consumers" : "inside this range";
}

function coldTable({ coldRooms }: UtilitySheet): Markup | "" {
  if (coldRooms.length === 0) return "";
  const body = coldRooms.map(
    (room) =>
      html`<tr><th scope="row"><bdi>${isolated(room.name)}</bdi></th>${[room.carcasses, room.doors, room.people, room.walls, room.fans + room.lights, room.peakHeatKilowatts, room.peakElectricKilowatts].map((kilowatts) => html`<td>${amount(kilowatts, "kW")}</td>`)}<td>${amount(room.electricKilowattHours, "kWh")}</td></tr>`,
  );
  return html`<div class="scroll"><table class="wide"><caption>Cold rooms: heat to take out, on average while the room is kept cold, and the electricity for it.</caption><thead><tr><th scope="col">Room</th><th scope="col">Carcasses</th><th scope="col">Doors</th><th scope="col">People</th><th scope="col">Walls</th><th scope="col">Fans and lights</th><th scope="col">Peak heat</th><th scope="col">Peak electricity</th><th scope="col">Electricity, day</th></tr></thead><tbody>${body}</tbody></table></div>`;
}

const NONE = "–";

function amount(value: number, unit: string): string {
  if (value === 0) return NONE;
  return unsplit(`${formatDecimals(value, value < 100 ? 1 : 0)} ${unit}`);
}
