import { type Plan, type SiteKey, siteFigure } from "../../asked/plan/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import { steps } from "../../day/line/index.ts";
import { type UtilitySheet, utilitySheet } from "../../day/observations/index.ts";
import { formatClock } from "../../text/units/index.ts";
import { airPerHour, assumedCop, coldStores, type ServicedPlan, servicedPlan, show } from "./assumedServices.ts";
import { type ByProductRow, byProductRows } from "./byProducts.ts";
import { busiest, type DayProfile, dayProfile } from "./dayProfile.ts";
import type { PlantLayout, SiteFigureUsed } from "./layout.ts";

/** One figure of the sheet. */
export interface ConnectionRow {
  what: string;
  value: number;
  unit: string;
  /** How it comes about, with its numbers: "(19.4 + 7.6 + 4.5) kW / 3.36 + 4.5 kW". */
  formula: string;
  /** "the plan", "assumed", or a published source by name. */
  source: string;
}

export const SERVICES = [
  "electricity",
  "refrigeration",
  "cold water",
  "hot water",
  "compressed air",
  "drains",
  "ventilation",
] as const;
export type Service = (typeof SERVICES)[number];

export interface ConnectionPart {
  service: Service;
  rows: ConnectionRow[];
}

/** What the plant must be connected to. Every figure with its formula and source. */
export interface ConnectionSheet {
  /** Days that it rests on. */
  days: number;
  parts: ConnectionPart[];
  byProducts: ByProductRow[];
  /** Electric load and water flow over the busiest simulated day; seconds after the day's start at which each minute begins. */
  profile: { seconds: number[]; kilowatts: number[]; coldLitresPerMinute: number[]; hotLitresPerMinute: number[] };
  figures: SiteFigureUsed[];
  /** What no figure stands for: to be asked of who builds. */
  open: string[];
}

/**
 * Connections of a plan by its simulated days, which have to be recorded with traces ("binned" or "exact"), since peaks are read off them.
 * What the plan says of water, power, cooling and consumers is taken as it stands; what it leaves out is reckoned from `site` figures. Amounts of
 * a day are means over the days, peaks those of the worst of them. Throws a RangeError without a day, or without traces.
 *
 * @example connectionSheet(plan, plantLayout(plan, days), days).parts[0].rows // electricity
 */
export function connectionSheet(plan: Plan, layout: PlantLayout, days: readonly DayRecord[]): ConnectionSheet {
  const served = servicedPlan(plan, layout);
  const profiles = days.map((day) => dayProfile(served.plan, day));
  const sheets = days.flatMap((day) => utilitySheet(day, served.plan) ?? []);
  const byMinute = { minutes: siteFigure(plan, "water.minutes"), startSeconds: days[0]?.startClockSeconds ?? 0 };
  const all: Sheets = { plan, layout, served, days, sheets, profiles, ...byMinute };
  const worst = profiles.reduce((best, each) => (sumOf(each.kilowatts) > sumOf(best.kilowatts) ? each : best));
  const minutes = Array.from(worst.kilowatts, (_, minute) => minute);
  return {
    days: days.length,
    parts: sheets.length === 0 ? [] : PARTS.map(([service, rows]) => ({ service, rows: rows(all) })),
    byProducts: byProductRows(plan, days),
    profile: {
      seconds: minutes.map((minute) => minute * SECONDS_PER_MINUTE),
      kilowatts: Array.from(worst.kilowatts),
      coldLitresPerMinute: Array.from(worst.coldLitres),
      hotLitresPerMinute: Array.from(worst.hotLitres),
    },
    figures: layout.figures,
    open: openQuestions(served),
  };
}

interface Sheets {
  plan: Plan;
  layout: PlantLayout;
  served: ServicedPlan;
  days: readonly DayRecord[];
  sheets: readonly UtilitySheet[];
  profiles: readonly DayProfile[];
  minutes: number;
  startSeconds: number;
}

const PARTS: readonly [Service, (all: Sheets) => ConnectionRow[]][] = [
  ["electricity", electricity],
  ["refrigeration", refrigeration],
  ["cold water", coldWater],
  ["hot water", hotWater],
  ["compressed air", compressedAir],
  ["drains", drains],
  ["ventilation", ventilation],
];

const SECONDS_PER_MINUTE = 60;
const THE_PLAN = "the plan";
const SIMULATED = "the simulated days";

function assumed(...keys: SiteKey[]): string {
  return `assumed: ${keys.map((key) => `site.${key}`).join(", ")}`;
}

function sumOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function mean(sheets: readonly UtilitySheet[], of: (sheet: UtilitySheet) => number): number {
  return sheets.reduce((sum, sheet) => sum + of(sheet), 0) / sheets.length;
}

function electricity(all: Sheets): ConnectionRow[] {
  const { plan, served, sheets } = all;
  const rated = siteFigure(plan, "power.rated");
  const reserve = siteFigure(plan, "power.reserve");
  const consumers = drawing(all);
  const drawn = consumers.reduce((sum, { kilowatts }) => sum + kilowatts, 0);
  const peak = busiestOf(all, ({ kilowatts }) => kilowatts);
  const perTonne = meanOrNull(sheets.map(({ kilowattHoursPerTonne }) => kilowattHoursPerTonne));
  return [
    ...consumers.map(({ name, kilowatts, formula, source }) => row(name, kilowatts, "kW", formula, source)),
    row(
      "connected",
      drawn * rated,
      "kW",
      `${show(drawn)} kW drawn if all ran at once x ${rated} (rated by drawn)`,
      assumed("power.rated"),
    ),
    row("peak together", peak.value, "kW", peak.words, SIMULATED),
    row(
      "to ask for",
      peak.value * (1 + reserve),
      "kW",
      `${show(peak.value)} kW + ${show(100 * reserve)} % spare`,
      assumed("power.reserve"),
    ),
    row(
      "a day",
      mean(sheets, ({ total }) => total.kilowattHours),
      "kWh",
      "sum over the day, mean of the days",
      SIMULATED,
    ),
    ...(perTonne === null
      ? []
      : [
          row(
            "electricity and fuel for a tonne of carcass",
            perTonne,
            "kWh/t",
            "kWh a day / tonnes of carcass; plants for chickens 170 to 490, by analogy",
            "Decision (EU) 2023/2749, from memory; no figure for rabbits was found",
          ),
        ]),
    ...(served.assumed.length === 0
      ? []
      : [
          row(
            "fuel for hot water",
            mean(sheets, ({ total }) => total.fuelKilowattHours),
            "kWh a day",
            "heat a day / heat by fuel",
            assumed("water.heater"),
          ),
        ]),
  ];
}

interface Draw {
  name: string;
  kilowatts: number;
  formula: string;
  source: string;
}

/** What draws electricity, by name: steps of the plan, consumers, cold rooms at their peak. */
function drawing({ plan, served, sheets }: Sheets): Draw[] {
  const ofPlan = steps(plan)
    .filter((step) => step.of.utilities.powerKilowatts > 0)
    .map(({ name, of }) => ({ name, kilowatts: of.utilities.powerKilowatts, formula: "as given", source: THE_PLAN }));
  const stunning = stunningOf(plan);
  const consumers = sheets[0]!.consumers
    .filter(({ electricKilowatts }) => electricKilowatts > 0)
    .map(({ name, electricKilowatts }) => {
      const own = served.assumed.find((each) => each.name === name);
      const source = own === undefined ? THE_PLAN : assumed(...(own.keys as SiteKey[]));
      return { name, kilowatts: electricKilowatts, formula: own?.formula ?? "as given", source };
    });
  const rooms = sheets[0]!.coldRooms.map(({ name }) => {
    const own = sheets.flatMap(({ coldRooms }) => coldRooms.filter((room) => room.name === name));
    const worst = own.reduce((best, each) => (each.peakElectricKilowatts > best.peakElectricKilowatts ? each : best));
    const motors = worst.fans + worst.lights;
    const kilowatts = worst.peakElectricKilowatts;
    const formula = `${show(worst.peakHeatKilowatts)} kW of heat at most / ${show(worst.peakHeatKilowatts / (kilowatts - motors))} + ${show(motors)} kW of fans and lights`;
    return { name: `refrigeration of ${name}`, kilowatts, formula, source: SIMULATED };
  });
  return [...ofPlan, ...stunning, ...consumers, ...rooms];
}

/** Stunners draw little, and plans leave them out. */
function stunningOf(plan: Plan): Draw[] {
  const each = siteFigure(plan, "power.stunning") / 1000;
  return steps(plan).flatMap((step) => {
    if (!/\bstun/iu.test(step.name) || step.of.utilities.powerKilowatts > 0 || !("positions" in step.of)) return [];
    const { positions } = step.of;
    return [
      {
        name: step.name,
        kilowatts: positions * each,
        formula: `${positions} x ${show(each)} kW`,
        source: assumed("power.stunning"),
      },
    ];
  });
}

function refrigeration({ plan, layout, served, sheets }: Sheets): ConnectionRow[] {
  const [first] = sheets;
  const rooms = first!.coldRooms.flatMap(({ name }) => {
    const own = sheets.map(({ coldRooms }) => coldRooms.find((room) => room.name === name)!);
    const average = (of: (room: (typeof own)[number]) => number) =>
      own.reduce((sum, room) => sum + of(room), 0) / own.length;
    const worst = own.reduce((best, each) => (each.peakHeatKilowatts > best.peakHeatKilowatts ? each : best));
    const isAssumed = served.cooled.includes(name);
    const other = isAssumed ? assumed("cold.walls", "cold.outside") : THE_PLAN;
    const parts = [
      average((room) => room.carcasses),
      average((room) => room.doors),
      average((room) => room.people),
      average((room) => room.walls),
      average((room) => room.fans + room.lights),
    ];
    const heat = parts.reduce((sum, part) => sum + part, 0);
    const cop = worst.peakHeatKilowatts / (worst.peakElectricKilowatts - worst.fans - worst.lights);
    return [
      row(
        `${name}: heat of the carcasses, mean`,
        parts[0]!,
        "kW",
        "conduction in a cylinder of the carcass's weight, from the start to the core temperature",
        `${SIMULATED}; sim/maths/chilling`,
      ),
      row(
        `${name}: doors, people, walls, fans and lights`,
        heat - parts[0]!,
        "kW",
        parts
          .slice(1)
          .map((part) => show(part))
          .join(" + "),
        other,
      ),
      row(
        `${name}: all heat, mean while kept cold`,
        heat,
        "kW",
        parts.map((part) => show(part)).join(" + "),
        "energy balance: heat taken out = heat that comes in",
      ),
      row(
        `${name}: heat at most`,
        worst.peakHeatKilowatts,
        "kW",
        "with the most carcasses in it (Little 1961), all else at its mean",
        SIMULATED,
      ),
      row(
        `${name}: coefficient of performance`,
        cop,
        "",
        isAssumed ? copWords(plan) : "as the plan gives it, or by its temperatures",
        isAssumed ? assumed("cold.evaporating", "cold.condensing", "cold.shareOfIdeal") : THE_PLAN,
      ),
    ];
  });
  const stores = coldStores(layout);
  const kilowatts = (stores * siteFigure(plan, "cold.stores")) / 1000;
  return [
    ...rooms,
    row(
      "dispatch, cutting, by-products and detained meat: heat",
      kilowatts,
      "kW",
      `${show(stores)} m² x ${show(siteFigure(plan, "cold.stores"))} W`,
      assumed("cold.stores"),
    ),
  ];
}

function copWords(plan: Plan): string {
  const share = siteFigure(plan, "cold.shareOfIdeal");
  return `${show(100 * share)} % of ${show(assumedCop(plan) / share)}, ammonia from ${show(siteFigure(plan, "cold.evaporating"))} to ${show(siteFigure(plan, "cold.condensing"))} °C without losses`;
}

function coldWater(all: Sheets): ConnectionRow[] {
  const { sheets, served, plan } = all;
  const cold = busiestOf(all, ({ coldLitres }) => coldLitres);
  const whole = busiestOf(all, ({ coldLitres, hotLitres }) =>
    coldLitres.map((litres, minute) => litres + hotLitres[minute]!),
  );
  const working = busiestOf(all, ({ coldLitres, hotLitres }, { workFinishSeconds }) =>
    coldLitres
      .map((litres, minute) => litres + hotLitres[minute]!)
      .subarray(0, Math.floor(workFinishSeconds / SECONDS_PER_MINUTE)),
  );
  const perTonne = meanOrNull(sheets.map(({ litresPerTonne }) => litresPerTonne));
  const stages = mean(sheets, ({ stages: own }) => own.reduce((sum, { litres }) => sum + litres, 0));
  return [
    row(
      "fresh water, busiest minutes",
      whole.value,
      "L/min",
      `${whole.words}; what is heated is drawn cold`,
      SIMULATED,
    ),
    row("the same while the line works", working.value, "L/min", working.words, SIMULATED),
    row("the same while the line works", working.value, "L/min", working.words, SIMULATED),
    row("of it used cold, busiest minutes", cold.value, "L/min", cold.words, SIMULATED),
    row(
      "fresh water a day",
      mean(sheets, ({ total }) => total.freshLitres) / 1000,
      "m³",
      "sum over the day, mean of the days; water that is used again is not drawn",
      SIMULATED,
    ),
    row("of it at machines and work places", stages / 1000, "m³", "by the head and by the hour, as given", THE_PLAN),
    ...consumerRows(all, ({ celsius, litres }) => celsius === null && litres > 0),
    ...(perTonne === null
      ? []
      : [
          row(
            "for a tonne of carcass",
            perTonne / 1000,
            "m³/t",
            "m³ a day / tonnes of carcass; the French limit for slaughter is 6, 10 with chilling by immersion; plants for chickens 1.45 to 6.30, by analogy",
            "French order of 31 March 2025, Art. 5.5; Decision (EU) 2023/2749 (lower end from memory); no figure for rabbits was found",
          ),
        ]),
    row(
      "temperature as it comes",
      served.plan.utilities!.coldCelsius,
      "°C",
      "as given",
      plan.utilities === null ? assumed("water.cold") : THE_PLAN,
    ),
  ];
}

function hotWater(all: Sheets): ConnectionRow[] {
  const { sheets } = all;
  const hot = busiestOf(all, ({ hotLitres }) => hotLitres);
  const heat = Math.max(...sheets.map(({ services }) => services.heatKilowatts));
  return [
    row("hot water, busiest minutes", hot.value, "L/min", hot.words, SIMULATED),
    row(
      "hot water a day",
      mean(sheets, ({ services }) => services.hotLitres) / 1000,
      "m³",
      "sum over the day, mean of the days",
      SIMULATED,
    ),
    ...consumerRows(all, ({ celsius, litres }) => celsius !== null && litres > 0),
    row(
      "heat a day",
      mean(sheets, ({ services }) => services.heatKilowattHours),
      "kWh",
      "litres x 4.186 kJ/(kg K) x rise of temperature",
      SIMULATED,
    ),
    row(
      "heat at once",
      heat,
      "kW",
      "the larger of work and cleaning, each at its mean; a store of hot water makes it smaller",
      SIMULATED,
    ),
  ];
}

/** Water by who takes it. */
function consumerRows(
  { sheets, served }: Sheets,
  fits: (use: UtilitySheet["consumers"][number]) => boolean,
): ConnectionRow[] {
  return sheets[0]!.consumers.filter(fits).map((use) => {
    const own = served.assumed.find(({ name }) => name === use.name);
    const litres = mean(sheets, ({ consumers }) => consumers.find(({ name }) => name === use.name)?.litres ?? 0);
    const at = use.celsius === null ? "" : ` at ${show(use.celsius)} °C`;
    const source = own === undefined ? THE_PLAN : assumed(...(own.keys as SiteKey[]));
    const law =
      use.celsius !== null && use.celsius >= 82
        ? "; tools at not less than 82 °C: Regulation (EC) 853/2004, Annex III, Section II"
        : "";
    return row(`${use.name}${at}`, litres / 1000, "m³ a day", own?.formula ?? "as given", `${source}${law}`);
  });
}

function compressedAir({ plan, sheets, served }: Sheets): ConnectionRow[] {
  const using = sheets[0]!.consumers.filter(({ airCubicMetres }) => airCubicMetres > 0);
  const perHour = served.plan.utilities!.consumers.reduce((sum, { airPerHour: air }) => sum + air, 0);
  const each = served.plan.utilities!.kilowattHoursPerAir;
  const isAssumed = served.assumed.length > 0;
  return [
    row(
      "free air, all at once",
      perHour,
      "m³/h",
      served.assumed.find(({ airPerHour: air }) => air > 0)?.formula ?? using.map(({ name }) => name).join(" + "),
      isAssumed ? assumed("air.tools") : THE_PLAN,
    ),
    row(
      "free air a day",
      mean(sheets, ({ services }) => services.airCubicMetres),
      "m³",
      "over the hours in which the line works",
      SIMULATED,
    ),
    row(
      "compressor",
      perHour * each,
      "kW",
      `${show(perHour)} m³/h x ${show(each)} kWh/m³`,
      plan.utilities === null ? assumed("air.perCubicMetre") : THE_PLAN,
    ),
  ];
}

function drains(all: Sheets): ConnectionRow[] {
  const { plan, sheets, days, served } = all;
  const peak = busiestOf(all, ({ coldLitres, hotLitres }) =>
    coldLitres.map((litres, minute) => litres + hotLitres[minute]!),
  );
  const litres = mean(sheets, ({ total }) => total.freshLitres);
  const { codPerLitre, codRemovedShare } = served.plan.utilities!;
  const given = plan.utilities?.codPerLitre ?? null;
  const cod = given ?? siteFigure(plan, "water.cod") / 1000;
  const removed = codPerLitre === null ? 0 : codRemovedShare;
  const heads = days.reduce((sum, day) => sum + day.heads.hung, 0) / days.length;
  const live = days.reduce((sum, { masses }) => sum + masses.liveKg, 0) / days.length;
  const load = litres * cod * (1 - removed);
  return [
    row("waste water a day", litres / 1000, "m³", "all fresh water leaves by the drains", SIMULATED),
    row("waste water, busiest minutes", peak.value, "L/min", peak.words, SIMULATED),
    row(
      "oxygen demand (COD) a day",
      load,
      "kg",
      `${show(litres / 1000)} m³ x ${show(cod * 1000)} g/L x (1 - ${show(100 * removed)} % taken out)`,
      given === null ? assumed("water.cod") : THE_PLAN,
    ),
    row(
      "oxygen demand for a head",
      heads === 0 ? 0 : (1000 * load) / heads,
      "g",
      "kg a day / heads hung; no figure for rabbits was found",
      SIMULATED,
    ),
    row(
      "what a limit by live weight would allow: BOD5",
      (0.24 * live) / 1000,
      "kg a day",
      `0.24 g for each of ${show(live)} kg live weight, on any day`,
      "40 CFR 432.12, simple slaughterhouses in the United States, as an example",
    ),
    row("the same: oil and grease", (0.12 * live) / 1000, "kg a day", `0.12 g x ${show(live)} kg`, "40 CFR 432.12"),
    row("the same: solids", (0.4 * live) / 1000, "kg a day", `0.40 g x ${show(live)} kg`, "40 CFR 432.12"),
  ];
}

function ventilation({ plan, layout, served }: Sheets): ConnectionRow[] {
  const rooms = airPerHour(plan, layout);
  const air = rooms.reduce((sum, { cubicMetresPerHour }) => sum + cubicMetresPerHour, 0);
  const height = show(siteFigure(plan, "rooms.height"));
  return [
    ...rooms.map(({ what, squareMetres, changes, key, cubicMetresPerHour }) =>
      row(
        what,
        cubicMetresPerHour,
        "m³/h",
        `${show(squareMetres)} m² x ${height} m x ${changes} an hour`,
        assumed(key, "rooms.height"),
      ),
    ),
    row("together", air, "m³/h", "sum", "the rows above"),
    ...(served.assumed.length === 0
      ? []
      : [
          row(
            "fans",
            (air * siteFigure(plan, "air.fan")) / 1000,
            "kW",
            `${show(air)} m³/h x ${show(siteFigure(plan, "air.fan"))} W`,
            assumed("air.fan"),
          ),
        ]),
  ];
}

function row(what: string, value: number, unit: string, formula: string, source: string): ConnectionRow {
  return { what, value, unit, formula, source };
}

/** The largest of the days, and when. */
function busiestOf(
  { profiles, days: records, minutes, startSeconds }: Sheets,
  of: (profile: DayProfile, day: DayRecord) => Float64Array,
): { value: number; words: string } {
  const spans = profiles.map((profile, index) => busiest(of(profile, records[index]!), minutes));
  const best = spans.reduce((most, each) => (each.mean > most.mean ? each : most));
  const days = profiles.length === 1 ? "the simulated day" : `${profiles.length} simulated days`;
  return {
    value: best.mean,
    words: `mean of the busiest ${minutes} min of ${days}, from ${formatClock(best.minute * SECONDS_PER_MINUTE + startSeconds)}`,
  };
}

function meanOrNull(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null);
  return known.length === 0 ? null : known.reduce((sum, value) => sum + value, 0) / known.length;
}

function openQuestions({ assumed: filled }: ServicedPlan): string[] {
  const own =
    filled.length === 0
      ? ["The plan names its own consumers: what it leaves out is not on this sheet."]
      : [
          "The plan names no consumers: hot water, cleaning, air, ventilation and lighting are reckoned from assumed figures. Replace them, in the plan's site or utilities.",
        ];
  return [
    ...own,
    "Droppings in lairage, sludge and screenings of the waste water are not weighed here; screenings are Category 2 (Regulation (EC) 1069/2009, Art. 9(b)).",
    "Raw Category 3 material is chilled, frozen or ensiled unless it is processed within 24 h (Regulation (EU) 142/2011, Annex VIII, from memory): so its store is cold here.",
    "Ask who supplies power, water and sewers what they allow; ask for the site's own limits of waste water, noise and smell.",
  ];
}
