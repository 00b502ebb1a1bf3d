import { beforeAll, describe, expect, it } from "vitest";
import { sizeSummary } from "../../../../sim/cli/sizeSummary.ts";
import type { StudyResults } from "../../../../sim/days/results/index.ts";
import { chillingOf, idealCop } from "../../../../sim/maths/chilling/index.ts";
import { standardNormalBelow } from "../../../../sim/maths/random/index.ts";
import { type PlantDesign, sizePlant } from "../../../../sim/questions/size/index.ts";
import {
  formatDuration,
  formatNumber,
  formatQuantity,
  formatRate,
  formatShare,
  length,
  mass,
} from "../../../../sim/text/units/index.ts";
import { demandOf, NO_FILES } from "../../../support/demands.ts";

/**
 * Every figure that `gambrel size` prints of a design, worked out again from the demand by the formulas of sim/questions/size/README.md: written down
 * here without the code that sizes, and compared with the text line by line. Only the chilling time and the way numbers are written are taken
 * from elsewhere; both have tests of their own.
 */

const DEMAND = {
  week: { heads: 9800, days: 5, peak: 1.04 },
  day: {
    shifts: [
      { name: "early", from: "06:00", to: "10:00" },
      { name: "late", from: "10:00", to: "14:30" },
    ],
    breaks: [
      { name: "first break", at: "08:30", length: "15 min" },
      { name: "second break", at: "12:15", length: "25 min" },
    ],
  },
};

/** [name, mean cycle, way to the next, share of the heads hung, people at a position, repair over uptime, usual repair]. */
const [DOA, CONDEMNED, TO_TRIM] = [0.0015, 0.008, 0.02];
const ALIVE = 1 - DOA;
const GOOD = ALIVE * (1 - CONDEMNED);
const STEPS: [string, number, number, number, number, number, number][] = [
  ["hanging", 14, 8, 1, 1, 0, 0],
  ["stunning", 4.6, 0, ALIVE, 1, 0, 0],
  ["sticking", 4.2, 3, ALIVE, 1, 0, 0],
  ["bleeding", 150, 4, ALIVE, 0, 0, 0],
  ["hind-leg cutting", 4.8, 4, ALIVE, 1, 0, 0],
  ["pre-loosening", 10.2, 4, ALIVE, 1, 0, 0],
  ["skinning", (4.2 + 4.6 + 5.4) / 3, 5, ALIVE, 0, 65 / 960, 65],
  ["four-leg cutting", 2.7, 4, ALIVE, 0, 45 / 2400, 45],
  ["abdomen opening", 4.7, 0, ALIVE, 1, 0, 0],
  ["evisceration", 16.8, 5, ALIVE, 1, 0, 0],
  ["inspection", 4.6, 4, ALIVE * (1 + TO_TRIM), 1, 0, 0],
  ["final trim", 9.5, 10, GOOD, 1, 0, 0],
  ["chiller loading", 4.4, 0, GOOD, 1, 0, 0],
  ["trim", 25, 0, ALIVE * TO_TRIM, 1, 0, 0],
];
const CRATES: [string, number, number][] = [
  ["unloading", 22, 1],
  ["feeding", 18, 1],
  ["washing", 30, 1],
  ["restacking", 12, 1],
];
const [HAND, MACHINE, AVAILABILITY, COVER] = [0.85, 0.9, 0.9, 20];
const LIVE_KG = 2.5;
const YIELD = 0.525;
/** Blood, hind paws, skins, fore paws and head, viscera. */
const SHARES = { blood: 0.03, "hind paws": 0.02, skins: 0.15, "fore paws and head": 0.064, viscera: 0.2 };
/** Of live weight, what they leave. */
const HOT = 0.536;
const PER_CRATE = 12;

const DAY = Math.ceil((9800 / 5) * 1.04);
const SHIFTS = 8.5 * 3600;
const WAY = STEPS.filter(([name]) => name !== "trim").reduce((sum, [, cycle, way]) => sum + cycle + way, 0);
const EMPTYING = 2 * (4.6 + 4.2 + 3 + 150 + 4);
const HANGING = SHIFTS - 300 - 2400 - EMPTYING - WAY;
const RATE = DAY / HANGING;
const DESIGN = RATE / AVAILABILITY;
const TAKT = 1 / DESIGN;
const LORRIES = Math.ceil(Math.ceil(DAY / PER_CRATE) / 48);
const LOAD = Math.ceil(Math.ceil(DAY / PER_CRATE) / LORRIES);
const EVERY = HANGING / LORRIES;
const LATE = (0 + 240 + 1500) / 3;

let sections: Map<string, string[][]>;
let design: PlantDesign;

beforeAll(() => {
  const sizing = sizePlant(demandOf(DEMAND), NO_FILES);
  design = sizing.design!;
  // An alternative with fewer people, so that the answer speaks of it.
  const compact = sizePlant(demandOf(DEMAND), NO_FILES, "compact plant").design!;
  sections = sectionsOf(sizeSummary([design, compact], results()));
}, 60_000);

/** Lines by heading, cells apart. */
function sectionsOf(lines: readonly { line: string; style: string }[]): Map<string, string[][]> {
  const found = new Map<string, string[][]>();
  let rows: string[][] = [];
  for (const { line, style } of lines) {
    if (style === "bold") {
      rows = [];
      found.set(line, rows);
    } else if (line !== "") rows.push(line.trim().split(/ {2,}/));
  }
  return found;
}

const at = (title: string): string[][] => sections.get(title)!;

/** Hot carcasses; the ideal ammonia cycle between -8 and 35 degC has 5.1707 (property library), fans 15 %, other heat 25 % of the peak. */
function chillerOf() {
  const of = (kg: number) =>
    chillingOf(
      {
        ...{ startCelsius: 38, airCelsius: 0, coreCelsius: 4, airMetresPerSecond: 2, carcassLengthMetres: 0.36 },
        ...{ carcassShare: HOT, conductivity: 0.48, density: 1070, specificHeat: 3500 },
      },
      kg * HOT,
    );
  const { seconds, joules } = of(LIVE_KG);
  const sd = (of(LIVE_KG + 0.18).seconds - of(LIVE_KG - 0.18).seconds) / 2;
  const chilled = DESIGN * GOOD;
  const stay = seconds + sd * slowestOf(1 / chilled / sd);
  const fastest = Math.min(
    ...STEPS.filter(([name]) => name !== "bleeding").map(([name, cycle, , share, people, repairs]) => {
      const busy = DESIGN * share * cycle * (1 + repairs);
      return (positionsOf(name, busy, people === 0 ? MACHINE : HAND) * DESIGN) / busy;
    }),
  );
  const whole = Math.floor(stay / EVERY);
  const loads = whole * LOAD * PER_CRATE + Math.min(LOAD * PER_CRATE, fastest * (stay - whole * EVERY));
  const carcasses = Math.min(DAY * GOOD, Math.max(chilled * stay, loads));
  const mean = (DAY * GOOD * joules) / (HANGING + seconds) / 1000;
  const peak = (carcasses * joules) / stay / 1000;
  const cop = 0.65 * idealCop("ammonia", -8, 35);
  const electricity = (mean + 0.4 * peak) / cop + 0.15 * peak;
  return { seconds, joules, chilled, stay, loads, carcasses, mean, peak, cop, electricity };
}

describe("gambrel size prints, and the formulas give,", () => {
  it("the rate", () => {
    expect(at("Rate")).toEqual([
      ["heads a week", "9800"],
      ["heads hung on the busiest day", formatNumber(DAY)],
      ["carcasses of that day", `${formatNumber(DAY * GOOD)}, ${formatQuantity(mass, DAY * GOOD * LIVE_KG * YIELD)}`],
      ["shifts", "8 h 30"],
      ["less checks", "5 min"],
      ["less breaks", "40 min"],
      ["less the emptying of the kill before breaks", formatDuration(EMPTYING)],
      ["less the last head's way down the line", formatDuration(WAY)],
      ["time to hang them in", formatDuration(HANGING)],
      ["required rate: heads / that time", formatRate(RATE)],
      ["design rate, while the line runs: that / 90 %", formatRate(DESIGN)],
      ["takt: 1 / design rate", formatDuration(TAKT)],
    ]);
  });

  it("positions, loads and places of every station", () => {
    expect(design.changes).toEqual([]);
    const crates = CRATES.map(([name, seconds]) => {
      const busy = (DESIGN / PER_CRATE) * seconds;
      const positions = Math.max(1, Math.ceil(busy / HAND));
      const each = [formatNumber((DESIGN / PER_CRATE) * 3600, 4), formatDuration(seconds), "-", String(positions)];
      return [name, ...each, formatShare(busy / positions), "-", "-", "-"];
    });
    const line = STEPS.filter(([name]) => name !== "bleeding").map(([name, cycle, , share, people, repairs, usual]) => {
      const busy = DESIGN * share * cycle * (1 + repairs);
      const positions = positionsOf(name, busy, people === 0 ? MACHINE : HAND);
      const before = STEPS[STEPS.findIndex(([other]) => other === name) - 1];
      const cover = Math.max(COVER, usual);
      const none = name === "hanging" || name === "sticking" ? "0" : name === "trim" ? "-" : null;
      const places = none === null ? String(Math.ceil(DESIGN * share * (cover + before![2]))) : none;
      const covers = none === null ? [formatDuration(cover), formatDuration(before![2])] : ["-", "-"];
      const rate = formatNumber(DESIGN * share * 3600, 4);
      return [
        ...[name, rate, formatDuration(cycle), repairs === 0 ? "-" : formatShare(repairs), String(positions)],
        ...[formatShare(busy / positions), ...covers, places],
      ];
    });
    expect(at("Stations").slice(1, 1 + crates.length + line.length)).toEqual([...crates, ...line]);
  });

  it("people of every crew, in each shift and in all, and what the jams ask of those who repair", () => {
    const crew = (name: string, steps: [string, number][], people: number): string[] => {
      const work = steps.reduce((sum, [, seconds]) => sum + seconds, 0);
      const names = steps.map(([step]) => step).join(", ");
      return [name, String(people), formatDuration(work), "-", formatShare(work / TAKT / people), names];
    };
    const perCrate = (...names: string[]) =>
      CRATES.filter(([name]) => names.includes(name)).map(([name, seconds]): [string, number] => [
        name,
        seconds / PER_CRATE,
      ]);
    const shared = (steps: [string, number][]) =>
      Math.ceil(steps.reduce((sum, [, work]) => sum + work, 0) / TAKT / HAND);
    const [live, back] = [perCrate("unloading", "feeding"), perCrate("washing", "restacking")];
    const hands = STEPS.filter(([name, , , , people]) => people === 1 && name !== "trim").map(
      ([name, cycle, , share]) => {
        const trim = STEPS.at(-1)!;
        const extra: [string, number][] = name === "final trim" ? [["trim", trim[1] * trim[3]]] : [];
        const steps: [string, number][] = [[name, cycle * share], ...extra];
        const own = positionsOf(name, DESIGN * share * cycle, HAND);
        return crew(name, steps, extra.length === 0 ? own : Math.min(own + 1, shared(steps)));
      },
    );
    const repairs = STEPS.reduce((sum, [, cycle, , share, , each]) => sum + DESIGN * share * cycle * each, 0);
    const rows = [
      crew("live animals", live, shared(live)),
      crew("crate return", back, shared(back)),
      ...hands,
      ["maintenance", "1", "repairs", "-", formatShare(repairs), "skinning, four-leg cutting"],
    ];
    expect(at("People").slice(1, 1 + rows.length)).toEqual(rows);
    const people = rows.reduce((sum, [, each]) => sum + Number(each), 0);
    const work = [
      ...CRATES.map(([, seconds]) => seconds / PER_CRATE),
      ...STEPS.map((step) => step[1] * step[3] * step[4]),
    ];
    const busy = work.reduce((sum, each) => sum + each / TAKT, repairs);
    expect(at("People").at(-1)).toEqual([
      `${people} people in each shift; 2 shifts: ${people * 2} in all. Work fills ${formatShare(busy / people)} of their time at the takt.`,
    ]);
  });

  it("bleeding places, hooks, heat and the chain", () => {
    const bled = DESIGN * ALIVE;
    const present = bled * (150 + 3 + COVER);
    const reserved = positionsOf("stunning", bled * 4.6, HAND) + positionsOf("sticking", bled * 4.2, HAND);
    const { seconds, joules, chilled, stay, loads, carcasses, mean, peak, cop, electricity } = chillerOf();
    const shackles = bled / 0.92;
    const links = Math.ceil(shackles * 153);
    // The program's table and the sum here differ by some parts in ten thousand, which may fall on either side of a rounding.
    const lines = at("Places, chiller, chain").map(([line]) => line as string);
    const [, minutes, rest] = /(\d+) min (\d+) s behind/u.exec(lines[1]!)!;
    const [, byRate] = /stay = ([\d.]+) and/u.exec(lines[2]!)!;
    expect(Math.abs((60 * Number(minutes) + Number(rest)) / (stay - seconds) - 1)).toBeLessThan(0.001);
    expect(Math.abs(Number(byRate) / (chilled * stay) - 1)).toBeLessThan(0.001);
    const kJ = `${formatNumber(joules / 1000, 4)} kJ of a carcass`;
    expect(lines).toEqual([
      `bleeding: ${Math.ceil(present) + reserved} places = ${formatNumber(bled * 3600, 4)} /h x (2 min 30 s stay + 3 s way + 20 s cover) = ${formatNumber(present, 4)}, rounded up, + ${reserved} for heads that are being stunned or stuck`,
      `chilling: ${Math.ceil((carcasses * 1.05) / 2)} hooks of 2 = ${formatNumber(carcasses, 5)} carcasses x (1 + 5 % spare) / 2, rounded up. A carcass stays ${formatDuration(stay)}: ${formatDuration(seconds)} to the core temperature, ${minutes} min ${rest} s behind slower ones, since they leave in order.`,
      `Carcasses at once: the larger of ${formatNumber(chilled * 3600, 4)} /h x stay = ${byRate} and ${formatNumber(loads, 5)} that loads bring within the stay, at most the day's ${formatNumber(DAY * GOOD, 5)}.`,
      `heat out of the carcasses: ${formatNumber(mean)} kW on the average (${kJ} x the day's carcasses / (${formatDuration(HANGING)} + ${formatDuration(seconds)})), ${formatNumber(peak)} kW at most (carcasses at once x ${kJ} / stay)`,
      `electricity: ${formatNumber(electricity)} kW on the average = (${formatNumber(mean)} kW of carcasses + ${formatNumber(0.25 * peak)} kW of doors, people and walls + ${formatNumber(0.15 * peak)} kW of fans) / ${formatNumber(cop)} + the fans, unless its power is given below`,
      `a chain through bleeding: ${formatNumber(shackles * 3600, 4)} shackles an hour, ${formatNumber(shackles * 0.3 * 60)} m/min; ${formatQuantity(length, links * 0.3)} long for 2 min 33 s; ${links + Math.ceil(shackles * 100) + 1} shackles, those on their way back counted`,
    ]);
  });

  it("crates, lorries, lairage and circulation", () => {
    const perSecond = RATE / PER_CRATE;
    const [lead, away, back] = [2400, 10_800, 42];
    const fleet = Math.min(LORRIES * LOAD, Math.ceil(perSecond * (lead + LATE + EVERY + back + away)) + LOAD);
    expect(at("Crates and lorries").map(([line]) => line)).toEqual([
      `${LORRIES * LOAD} crates a day with ${LORRIES * LOAD * PER_CRATE} heads (whole crates, equal loads), ${formatNumber(perSecond * 3600)} an hour at the required rate; ${LORRIES} lorries of ${LOAD}, one every ${formatDuration(EVERY)} (hanging time / lorries)`,
      `${Math.ceil(LOAD + perSecond * (lead + LATE))} places in lairage: a load, and what is hung at the required rate in 40 min that the first lorry is early and ${formatDuration(LATE)} that lorries are late`,
      `${fleet} crates in circulation: a load, and what is hung in 40 min + ${formatDuration(LATE)} + ${formatDuration(EVERY)} + 42 s of washing and restacking + 3 h away; at most the day's`,
    ]);
  });

  it("by-products, water and power", () => {
    const rows = Object.entries(SHARES).map(([name, share]) => {
      const kg = share * LIVE_KG * ALIVE;
      return [
        ...[name, formatQuantity(mass, kg), formatQuantity(mass, kg * DAY), formatQuantity(mass, kg * RATE * 3600)],
        ...[String(Math.ceil((kg * DESIGN * 360) / 600)), String(Math.ceil((kg * DAY) / 600))],
      ];
    });
    expect(at("By-products, water, power").slice(1, 6)).toEqual(rows);
    const litres = DAY * (ALIVE * (0.4 + 1.2) + GOOD * 0.8) + 150 * 8.5 + LORRIES * LOAD * 9;
    const [skinners, cutters] = [
      positionsOf("skinning", DESIGN * ALIVE * ((4.2 + 4.6 + 5.4) / 3) * (1 + 65 / 960), MACHINE),
      positionsOf("four-leg cutting", DESIGN * ALIVE * 2.7 * (1 + 45 / 2400), MACHINE),
    ];
    const kilowatts = 3 * skinners + 1.1 * cutters + chillerOf().electricity;
    expect(
      at("By-products, water, power")
        .slice(6)
        .map(([line]) => line),
    ).toEqual([
      `water: ${formatNumber(litres / 1000)} m3 a day, ${formatNumber(litres / DAY)} L a head hung: what each head, hour of the shifts and crate takes below, reused water and cleaning not counted`,
      `power of the machines as given below, and of the chiller: ${formatNumber(kilowatts)} kW, over the shifts ${formatNumber(kilowatts * 8.5)} kWh a day`,
    ]);
  });

  it("what is needed beside what is done, by one definition, breaks in both or in neither", () => {
    const rows = at("What the plan does: full line by hand");
    const perHour = (DAY * GOOD) / 8.5;
    expect(rows[1]!.slice(0, 4)).toEqual([
      "Throughput, from the start of the shift to the end of work",
      `${perHour.toFixed(0)} carcasses/h`,
      `${design.estimate.headsPerHour.toFixed(0)} carcasses/h`,
      "270 carcasses/h",
    ]);
    expect(rows[2]!.slice(0, 2)).toEqual(["End of work on the line", "14:30"]);
    expect(rows.find(([name]) => name!.startsWith("Heads hung"))!.slice(1)).toEqual([
      formatRate(RATE),
      formatRate(design.estimate.line.headsPerSecond),
    ]);
    expect(rows.flat().join(" ")).toContain(`The loads bring ${LORRIES * LOAD * PER_CRATE - DAY} heads more`);
  });

  it("the answer first, and the kinds of plant beside each other", () => {
    const [, fewer] = at("Test plant").map(([line]) => line!);
    expect(at("Test plant")[0]![0]).toBe(
      `Full line by hand: ${design.people} people in each shift; in 4 simulated days it ends work at 13:10, before the shift does at 14:30, on average.`,
    );
    expect(fewer).toMatch(
      /^Compact plant: \d+ people, \d fewer, end 20 min later; the busiest, .*, is at a load of \d\d(\.\d)? %\.$/,
    );
    expect(at("Test plant")[2]![0]).toBe("Compact plant: stun to stick: heads outside the limit: 0.5 %.");
    const [, ours, compact] = at("Kinds of plant side by side");
    expect(ours!.slice(0, 3)).toEqual(["full line by hand", String(design.people), "13"]);
    expect(compact!.slice(4, 7)).toEqual(["260", "13:30", "0 s"]);
    expect(compact!.at(-1)).toBe("0.5 %");
  });
});

function positionsOf(name: string, busy: number, most: number): number {
  // As many stick as stun.
  const stunners = Math.ceil((DESIGN * ALIVE * 4.6) / HAND);
  return name === "sticking" ? Math.max(stunners, Math.ceil(busy / most)) : Math.max(1, Math.ceil(busy / most));
}

/** Mean of the greatest of standard normal values of which one came each so many standard deviations earlier, by adding up. */
function slowestOf(gap: number): number {
  const [far, step] = [8, 0.02];
  let mean = -far;
  for (let z = -far + step / 2; z < far; z += step) {
    let below = 1;
    for (let earlier = z; earlier < far && below > 1e-12; earlier += gap) below *= standardNormalBelow(earlier);
    mean += (1 - below) * step;
  }
  return mean;
}

/** Results of two plans, with figures that are easy to know again; seconds from 05:20. */
function results(): StudyResults {
  const info = (key: string, label: string, unit: string, format: string) => ({
    key,
    label,
    unit,
    format,
    better: "less",
  });
  const mean = (value: number) => ({ mean: value, low: value, high: value, n: 4 });
  const variant = (headsPerHour: number, finish: number, beyond: number) => ({
    estimates: {
      headsPerHour: mean(headsPerHour),
      finish: mean(finish),
      overtime: mean(0),
      "beyond.stun to stick": mean(beyond),
    },
    values: { overtime: [0, 0, 0, 0] },
    day: { startClockSeconds: 19_200 },
  });
  return {
    study: { replications: 4, confidence: 0.95 },
    responses: [
      info("headsPerHour", "Throughput, from the start of the shift to the end of work", "carcasses/h", "number"),
      info("finish", "End of work on the line", "s after day start", "clock"),
      info("overtime", "Overtime", "s", "duration"),
      info("beyond.stun to stick", "stun to stick: heads outside the limit", "share", "share"),
    ],
    variants: [variant(270, 28_200, 0), variant(260, 29_400, 0.005)],
  } as unknown as StudyResults;
}
