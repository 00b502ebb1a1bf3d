import type { StudyResults } from "../days/results/index.ts";
import type { Figure, PlantDesign, SizedChiller, SizedDwell, SizedStation } from "../questions/size/index.ts";
import {
  formatDuration,
  formatNumber,
  formatQuantity,
  formatRate,
  formatShare,
  length,
  mass,
  textTable,
} from "../text/units/index.ts";
import { answerLines, outcomeLines, sideBySide } from "./sizeOutcome.ts";
import { counted, type Line, plainLine, section } from "./terminal.ts";

/**
 * Designs as lines of text: the answer, the kinds of plant side by side, then of the first design every part with its formula, what its plan
 * does by estimate and by simulation, and where each figure comes from. `simulated` has a variant for each design, in the same order.
 */
export function sizeSummary(designs: readonly PlantDesign[], simulated: StudyResults): Line[] {
  const design = designs[0]!;
  return [
    { line: design.name, style: "bold" },
    ...answerLines(designs, simulated).map(plainLine),
    ...section("Kinds of plant side by side", sideBySide(designs, simulated)),
    ...section("Rate", rateLines(design)),
    ...section("Stations", stationLines(design)),
    ...section("People", peopleLines(design)),
    ...section("Places, chiller, chain", placeLines(design)),
    ...section("Crates and lorries", crateLines(design)),
    ...section("By-products, water, power", flowLines(design)),
    ...section(`What the plan does: ${design.alternative}`, outcomeLines(design, simulated)),
    ...section("Where the figures come from", figureLines(design.figures)),
  ];
}

function rateLines({ rate }: PlantDesign): string[] {
  return textTable([
    ["heads a week", formatNumber(rate.headsPerWeek)],
    ["heads hung on the busiest day", formatNumber(rate.headsPerDay)],
    ["carcasses of that day", `${formatNumber(rate.carcassesPerDay)}, ${formatQuantity(mass, rate.carcassKgPerDay)}`],
    ["shifts", formatDuration(rate.shiftSeconds)],
    ["less checks", formatDuration(rate.preStartSeconds)],
    ["less breaks", formatDuration(rate.breakSeconds)],
    ["less the emptying of the kill before breaks", formatDuration(rate.emptyingSeconds)],
    ["less the last head's way down the line", formatDuration(rate.lastHeadSeconds)],
    ["time to hang them in", formatDuration(rate.hangingSeconds)],
    ["required rate: heads / that time", formatRate(rate.headsPerSecond)],
    [
      `design rate, while the line runs: that / ${formatShare(rate.availability)}`,
      formatRate(rate.designHeadsPerSecond),
    ],
    ["takt: 1 / design rate", formatDuration(rate.taktSeconds)],
  ]);
}

function stationLines({ stations, rate, changes }: PlantDesign): string[] {
  const table = textTable([
    ["", "an hour", "cycle", "repairs", "positions", "load", "cover", "way", "places before"],
    ...stations.map((each) => [
      each.name,
      `${formatNumber(each.visitsPerHead * rate.designHeadsPerSecond * 3600, 4)}`,
      formatDuration(each.cycleSeconds),
      each.repairShare === 0 ? "-" : formatShare(each.repairShare),
      String(each.positions),
      formatShare(each.load),
      ...placesWords(each),
    ]),
  ]);
  return [
    ...table,
    "An hour: heads at the design rate, or crates, stacks and pallets. Load = an hour x cycle x (1 + repairs) / positions.",
    "Places before = an hour x (cover + way), rounded up. As many stick as stun, and none wait between the two.",
    ...stations.flatMap(heldWords),
    ...changes.map((words) => `Added to reach the rate: ${words}.`),
  ];
}

function placesWords({ places, covers }: SizedStation): string[] {
  const [cover, way] =
    covers === null ? ["-", "-"] : [formatDuration(covers.coverSeconds), formatDuration(covers.travelSeconds)];
  return [cover!, way!, places === null ? "-" : String(places)];
}

function heldWords({ name, heldSeconds }: SizedStation): string[] {
  if (heldSeconds === 0) return [];
  return [
    `${name}: a head holds its position for ${formatDuration(heldSeconds)} on the way to it; that counts as cycle.`,
  ];
}

function peopleLines({ crews, people, shifts, balance, stations }: PlantDesign): string[] {
  const workOf = (name: string): number => stations.find((each) => each.name === name)!.personSecondsPerHead;
  const table = textTable([
    ["", "people", "work on a head", "walking", "load", "at"],
    ...crews.map(({ name, people: hands, steps, walkingSeconds, load }) => {
      const work = steps.reduce((sum, step) => sum + workOf(step), 0);
      const isRepair = !stations.some(({ crew }) => crew === name);
      return [
        name,
        String(hands),
        isRepair ? "repairs" : formatDuration(work),
        walkingSeconds === 0 ? "-" : formatDuration(walkingSeconds),
        formatShare(load),
        steps.join(", "),
      ];
    }),
  ]);
  const all = shifts === 1 ? `${people} in all` : `${shifts} shifts: ${people * shifts} in all`;
  return [
    ...table,
    "Load = (work + walking) / takt / people; of those who repair, the sum of an hour x cycle x repairs of their machines, over people.",
    `${counted(people, "person", "people")} in each shift; ${all}. Work fills ${formatShare(balance)} of their time at the takt.`,
  ];
}

function placeLines({ dwells, chiller, chain, rate }: PlantDesign): string[] {
  return [
    ...dwells.map(dwellWords),
    ...(chiller === null ? [] : chillerWords(chiller, rate.hangingSeconds, rate.carcassesPerDay)),
    ...(chain === null
      ? []
      : [
          `a chain through bleeding: ${formatNumber(chain.shacklesPerSecond * 3600, 4)} shackles an hour, ${formatNumber(chain.metresPerSecond * 60)} m/min; ${formatQuantity(length, chain.metres)} long for ${formatDuration(chain.seconds)}; ${chain.shackles} shackles, those on their way back counted`,
        ]),
  ];
}

function dwellWords({ name, places, given, reserved, ...dwell }: SizedDwell): string {
  if (given) return `${name}: ${counted(places, "place")}, as given`;
  const parts = [
    `${formatDuration(dwell.staySeconds)} stay`,
    `${formatDuration(dwell.travelSeconds)} way`,
    `${formatDuration(dwell.coverSeconds)} cover`,
  ];
  const present = dwell.headsPerSecond * (dwell.staySeconds + dwell.travelSeconds + dwell.coverSeconds);
  const more = reserved === 0 ? "" : `, + ${reserved} for heads that are being stunned or stuck`;
  return `${name}: ${counted(places, "place")} = ${formatNumber(dwell.headsPerSecond * 3600, 4)} /h x (${parts.join(" + ")}) = ${formatNumber(present, 4)}, rounded up${more}`;
}

function chillerWords(chiller: SizedChiller, hangingSeconds: number, carcassesPerDay: number): string[] {
  const { name, hooks, headsPerHook, staySeconds, seconds, present, spareShare, fromLoads, given } = chiller;
  const rate = `${formatNumber(chiller.headsPerSecond * 3600, 4)} /h`;
  const behind = staySeconds - seconds;
  const stay = `A carcass stays ${formatDuration(staySeconds)}: ${formatDuration(seconds)} to the core temperature, ${formatDuration(behind)} behind slower ones, since they leave in order.`;
  const joules = `${formatNumber(chiller.joules / 1000, 4)} kJ of a carcass`;
  return [
    given
      ? `${name}: ${hooks} hooks of ${headsPerHook}, as given. ${stay}`
      : `${name}: ${hooks} hooks of ${headsPerHook} = ${formatNumber(present, 5)} carcasses x (1 + ${formatShare(spareShare)} spare) / ${headsPerHook}, rounded up. ${stay}`,
    `Carcasses at once: the larger of ${rate} x stay = ${formatNumber(chiller.headsPerSecond * staySeconds, 5)} and ${formatNumber(fromLoads, 5)} that loads bring within the stay, at most the day's ${formatNumber(carcassesPerDay, 5)}.`,
    `heat out of the carcasses: ${formatNumber(chiller.meanKilowatts)} kW on the average (${joules} x the day's carcasses / (${formatDuration(hangingSeconds)} + ${formatDuration(seconds)})), ${formatNumber(chiller.peakKilowatts)} kW at most (carcasses at once x ${joules} / stay)`,
    `electricity: ${formatNumber(chiller.electricKilowatts)} kW on the average = (${formatNumber(chiller.meanKilowatts)} kW of carcasses + ${formatNumber(chiller.otherKilowatts)} kW of doors, people and walls + ${formatNumber(chiller.fanKilowatts)} kW of fans) / ${formatNumber(chiller.cop)} + the fans, unless its power is given below`,
  ];
}

function crateLines({ crates }: PlantDesign): string[] {
  const { perDay, heads, perHour, lorries, cratesPerLorry, everySeconds } = crates;
  const [lead, late] = [formatDuration(crates.leadSeconds), formatDuration(crates.lateSeconds)];
  return [
    `${counted(perDay, "crate")} a day with ${counted(heads, "head")} (whole crates, equal loads), ${formatNumber(perHour)} an hour at the required rate; ${counted(lorries, "lorry", "lorries")} of ${cratesPerLorry}, one every ${formatDuration(everySeconds)} (hanging time / lorries)`,
    `${crates.lairageCrates} places in lairage: a load, and what is hung at the required rate in ${lead} that the first lorry is early and ${late} that lorries are late`,
    `${crates.fleet} crates in circulation: a load, and what is hung in ${lead} + ${late} + ${formatDuration(everySeconds)} + ${formatDuration(crates.backSeconds)} of washing and restacking + ${formatDuration(crates.awaySeconds)} away; at most the day's`,
  ];
}

function flowLines({ byProducts, utilities }: PlantDesign): string[] {
  const table = textTable([
    ["", "a head", "a day", "an hour", "vessels", "emptyings a day"],
    ...byProducts.map(({ name, kgPerHead, kgPerDay, kgPerHour, vessels, emptyingsPerDay }) => {
      return [
        name,
        formatQuantity(mass, kgPerHead),
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
    `water: ${formatNumber(litresPerDay / 1000)} m3 a day, ${formatNumber(litresPerHead)} L a head hung: what each head, hour of the shifts and crate takes below, reused water and cleaning not counted`,
    `power of the machines as given below, and of the chiller: ${formatNumber(kilowatts)} kW, over the shifts ${formatNumber(kilowattHoursPerDay)} kWh a day`,
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
