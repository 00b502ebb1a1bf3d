import { formatRange, formatResponse } from "../observations/index.ts";
import type { StudyResults } from "../results/index.ts";
import type { Design, Figure } from "../size/index.ts";
import { formatDuration, formatNumber, formatQuantity, formatRate, formatShare, length, mass } from "../units/index.ts";
import type { Style } from "./terminal.ts";
import { textTable } from "./textTable.ts";

export interface SummaryLine {
  line: string;
  style: Style;
}

/** A design as lines of text: the rate, every part, what the plan does by estimate and by simulation, and what was assumed. */
export function sizeSummary(design: Design, simulated: StudyResults): SummaryLine[] {
  return [
    { line: design.name, style: "bold" },
    ...section("Rate", rateLines(design)),
    ...section("Stations", stationLines(design)),
    ...section("Places, chiller, chain", placeLines(design)),
    ...section("Crates and lorries", crateLines(design)),
    ...section("By-products, water, power", flowLines(design)),
    ...section("What the plan does", outcomeLines(design, simulated)),
    ...section("Where the figures come from", figureLines(design.figures)),
  ];
}

function section(title: string, lines: readonly string[]): SummaryLine[] {
  return [
    { line: "", style: "plain" },
    { line: title, style: "bold" },
    ...lines.map((line): SummaryLine => ({ line, style: "plain" })),
  ];
}

function rateLines({ rate }: Design): string[] {
  return textTable([
    ["heads a week", formatNumber(rate.headsPerWeek)],
    ["heads hung on the busiest day", formatNumber(rate.headsPerDay)],
    ["carcasses of that day", `${formatNumber(rate.carcassesPerDay)}, ${formatQuantity(mass, rate.carcassKgPerDay)}`],
    ["time to hang them in", formatDuration(rate.hangingSeconds)],
    ["required rate, average", formatRate(rate.headsPerSecond)],
    ["design rate, while the line runs", formatRate(rate.designHeadsPerSecond)],
    ["takt", formatDuration(rate.taktSeconds)],
  ]);
}

function stationLines({ stations, crews, people, balance, changes }: Design): string[] {
  const table = textTable([
    ["", "cycle", "positions", "people", "load", "places before"],
    ...stations.map((each) => [
      each.name,
      formatDuration(each.cycleSeconds),
      String(each.positions),
      each.crew === null
        ? "-"
        : each.crew === each.name
          ? String(each.positions * each.peoplePerPosition)
          : `of ${each.crew}`,
      formatShare(each.load),
      each.places === null ? "-" : String(each.places),
    ]),
  ]);
  const shared = crews.filter(
    ({ name }) => !stations.some((station) => station.name === name && station.crew === name),
  );
  return [
    ...table,
    ...shared.map(({ name, people: hands, load }) => `${name}: ${hands}, load ${formatShare(load)}`),
    `${people} people; the work on a head fills ${formatShare(balance)} of their time at the takt.`,
    ...changes.map((words) => `Added to reach the rate: ${words}.`),
  ];
}

function placeLines({ dwells, chiller, chain }: Design): string[] {
  return [
    ...dwells.map(({ name, seconds, places }) => `${name}: ${places} places for ${formatDuration(seconds)}`),
    ...(chiller === null
      ? []
      : [
          `${chiller.name}: ${chiller.hooks} hooks of ${chiller.headsPerHook} for ${formatDuration(chiller.seconds)} to the core temperature`,
          `heat out of the carcasses: ${formatNumber(chiller.meanKilowatts)} kW on the average, ${formatNumber(chiller.peakKilowatts)} kW at most; fans, walls, doors and people come on top`,
        ]),
    ...(chain === null
      ? []
      : [
          `a chain through bleeding: ${formatNumber(chain.metresPerSecond * 60)} m/min, ${formatQuantity(length, chain.metres)} long, ${chain.shackles} shackles`,
        ]),
  ];
}

function crateLines({ crates }: Design): string[] {
  return [
    `${crates.perDay} crates a day, ${formatNumber(crates.perHour)} an hour; ${crates.lorries} lorries of ${crates.cratesPerLorry}, one every ${formatDuration(crates.everySeconds)}`,
    `${crates.lairageCrates} places in lairage, ${crates.fleet} crates in circulation`,
  ];
}

function flowLines({ byProducts, utilities }: Design): string[] {
  const table = textTable([
    ["", "a day", "an hour", "vessels", "emptyings a day"],
    ...byProducts.map(({ name, kgPerDay, kgPerHour, vessels, emptyingsPerDay }) => {
      return [
        name,
        formatQuantity(mass, kgPerDay),
        formatQuantity(mass, kgPerHour),
        String(vessels),
        String(emptyingsPerDay),
      ];
    }),
  ]);
  const { litresPerDay, litresPerHead, kilowatts, kilowattHoursPerDay } = utilities;
  return [
    ...(byProducts.length === 0 ? [] : table),
    `water: ${formatNumber(litresPerDay / 1000)} m3 a day, ${formatNumber(litresPerHead)} L a head, cleaning not counted`,
    `power of the machines and the chiller as given: ${formatNumber(kilowatts)} kW, ${formatNumber(kilowattHoursPerDay)} kWh a day`,
  ];
}

const SHOWN = ["headsPerHour", "finish", "overtime"];

function outcomeLines({ estimate, rate }: Design, results: StudyResults): string[] {
  const { estimates, day, values } = results.variants[0]!;
  const shown = results.responses.filter(({ key }) => SHOWN.includes(key) || key.startsWith("beyond."));
  const estimated: Record<string, number> = { headsPerHour: estimate.headsPerHour, finish: estimate.workFinishSeconds };
  const rows = shown.map((info) => {
    const words = (value: number): string => formatResponse(value, info, day.startClockSeconds);
    const found = estimates[info.key];
    const guess = estimated[info.key];
    const interval =
      found?.low == null || found.high === null ? "" : `(${formatRange(words(found.low), words(found.high))})`;
    return [
      info.label,
      guess === undefined ? "" : words(guess),
      found === undefined ? "no value" : words(found.mean),
      interval,
    ];
  });
  const late = (values.overtime ?? []).filter((seconds) => seconds !== null && seconds > 0).length;
  const percent = `${Number((results.study.confidence * 100).toFixed(2))} %`;
  return [
    ...textTable([["", "estimate", "simulated", `${percent} interval, ${results.study.replications} days`], ...rows]),
    `Estimate of the line alone: ${formatRate(estimate.line.headsPerSecond)} hung, ${formatRate(rate.headsPerSecond)} asked for; narrowest by itself: ${estimate.line.ceilings[0]?.what ?? "-"}.`,
    `${late} of ${results.study.replications} simulated days ran into overtime, cleaning included.`,
  ];
}

const ORDER: Figure["source"][] = ["given", "published", "common practice", "invented"];
const HEADINGS: Record<Figure["source"], string> = {
  given: "given by the demand",
  published: "published",
  "common practice": "common practice, no source",
  invented: "invented, to be replaced by your own",
};

/** Those with the same note together, the note before them. */
function figureLines(figures: readonly Figure[]): string[] {
  return ORDER.flatMap((source) => {
    const own = figures.filter((figure) => figure.source === source);
    const notes = [...new Set(own.map(({ note }) => note))];
    if (own.length === 0) return [];
    return [
      `${HEADINGS[source]}:`,
      ...notes.flatMap((note) =>
        noted(
          note,
          own.filter((figure) => figure.note === note),
        ),
      ),
    ];
  });
}

function noted(note: string, figures: readonly Figure[]): string[] {
  const lines = figures.map(({ what, value }) => `${what} ${value}`);
  if (note === "") return lines.map((line) => `  ${line}`);
  return [`  (${note})`, ...lines.map((line) => `    ${line}`)];
}
