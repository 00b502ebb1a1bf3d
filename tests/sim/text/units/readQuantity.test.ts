import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  conductivity,
  current,
  density,
  energy,
  flow,
  length,
  mass,
  power,
  quantityPattern,
  rate,
  specificHeat,
  speed,
  temperature,
  time,
  type UnitFamily,
  volume,
} from "../../../../sim/text/units/index.ts";
import { readQuantity } from "../../../../sim/text/units/readQuantity.ts";

const FAMILIES = {
  time,
  rate,
  mass,
  length,
  speed,
  temperature,
  power,
  energy,
  volume,
  flow,
  current,
  conductivity,
  density,
  specificHeat,
};
const SEED = 20261125;

/** Factors: SI Brochure, 9th edition (2019), Tables 4, 7 and 8; the inch: international yard and pound agreement of 1959. */
const READ: [UnitFamily, string, number][] = [
  [time, "4.2 s", 4.2],
  [time, "2.5 min", 150],
  [time, "1.5 h", 5400],
  [time, "3 d", 259200],
  [time, "250 ms", 0.25],
  [time, "0 s", 0],
  [time, "4.2s", 4.2],
  [time, ".5 s", 0.5],
  [time, "1e3 s", 1000],
  [rate, "620 /h", 620 / 3600],
  [rate, "10 /min", 10 / 60],
  [rate, "0.2 /s", 0.2],
  [rate, "86400 /d", 1],
  [mass, "2.4 kg", 2.4],
  [mass, "350 g", 0.35],
  [mass, "1 t", 1000],
  [length, "12 m", 12],
  [length, "150 mm", 0.15],
  [length, "15 cm", 0.15],
  [length, "6 in", 0.1524],
  [speed, "3.5 m/min", 3.5 / 60],
  [speed, "0.2 m/s", 0.2],
  [temperature, "4 degC", 4],
  [temperature, "4 °C", 4],
  [temperature, "-1.5 °C", -1.5],
  [temperature, "-273.15 °C", -273.15],
  [power, "3 kW", 3000],
  [power, "150 W", 150],
  [volume, "12 L", 0.012],
  [volume, "0.5 m3", 0.5],
  [volume, "0.5 m³", 0.5],
  [volume, "250 mL", 0.00025],
  [energy, "0.02 kWh", 72_000],
  [energy, "3.6 MJ", 3_600_000],
  [energy, "1 Wh", 3600],
  [energy, "2 kJ", 2000],
  [energy, "5 J", 5],
  [flow, "3600 L/h", 0.001],
  [flow, "60 L/min", 0.001],
  [flow, "1 L/s", 0.001],
  [flow, "3.6 m3/h", 0.001],
  [flow, "3.6 m³/h", 0.001],
  [flow, "0.001 m3/s", 0.001],
  [conductivity, "0.48 W/(m K)", 0.48],
  [density, "1070 kg/m3", 1070],
  [density, "1.07 kg/L", 1070],
  [density, "1070 kg/m³", 1070],
  [specificHeat, "3500 J/(kg K)", 3500],
  [specificHeat, "3.5 kJ/(kg K)", 3500],
  [current, "400 mA", 0.4],
  [current, "1.2 A", 1.2],
];

const REFUSED: [UnitFamily, unknown, string, string, string][] = [
  [time, 5, "5 has no unit", "a time in ms, s, min, h or d", 'write for example "4.2 s"'],
  [time, "5", '"5" has no unit', "a time in ms, s, min, h or d", 'write for example "4.2 s"'],
  [time, "5 sec", "\"5 sec\" has the unit 'sec'", "a time in ms, s, min, h or d", 'did you mean "5 s"?'],
  [
    time,
    "5 kg",
    "\"5 kg\" has the unit 'kg', a unit of mass",
    "a time in ms, s, min, h or d",
    'write for example "4.2 s"',
  ],
  [
    time,
    "5 furlongs",
    "\"5 furlongs\" has the unit 'furlongs', which is none of the units known here",
    "a time in ms, s, min, h or d",
    'write for example "4.2 s"',
  ],
  [
    time,
    "4,2 s",
    '"4,2 s" has a comma in its number',
    "a time in ms, s, min, h or d, with a decimal point and no thousands separator",
    'write for example "4.2 s"',
  ],
  [mass, "-1 kg", '"-1 kg" is too small', "a mass in g, kg or t, 0 kg or more", 'write for example "2.4 kg"'],
  [mass, "-0 kg", '"-0 kg" is too small', "a mass in g, kg or t, 0 kg or more", 'write for example "2.4 kg"'],
  [mass, "1e999 kg", '"1e999 kg" is too large', "a mass in g, kg or t", 'write for example "2.4 kg"'],
  [mass, "", "an empty text is not a mass", "a mass in g, kg or t", 'write for example "2.4 kg"'],
  [mass, " 2 kg", '" 2 kg" is not a mass', "a mass in g, kg or t", 'write for example "2.4 kg"'],
  [mass, null, "null is not a mass", "a mass in g, kg or t", 'write for example "2.4 kg"'],
  [mass, ["2 kg"], "a list is not a mass", "a mass in g, kg or t", 'write for example "2.4 kg"'],
  [
    temperature,
    "-300 °C",
    '"-300 °C" is too small',
    "a temperature in °C or degC, -273.15 °C or more",
    'write for example "4 °C"',
  ],
];

describe("readQuantity", () => {
  it.each(READ.map(([family, written, si]) => [written, si, family] as const))(
    "reads %s as %d in SI",
    (written, si, family) => {
      expect(readQuantity(family, written)).toEqual({ value: si, fault: null });
    },
  );

  it.each(
    REFUSED.map(
      ([family, written, ...words]) => [JSON.stringify(written), family.name, { family, written, words }] as const,
    ),
  )("refuses %s as %s and says what was found, what is allowed and what to do", (_, __, { family, written, words }) => {
    const [found, allowed, remedy] = words;
    expect(readQuantity(family, written)).toEqual({ value: null, fault: { found, allowed, remedy } });
  });

  it("reads no unit from words that every object answers to", () => {
    expect(readQuantity(time, "5 constructor").fault?.found).toContain("none of the units known here");
  });

  it("turns minus nothing into nothing", () => {
    expect(Object.is(readQuantity(temperature, "-0 °C").value, 0)).toBe(true);
  });
});

describe.each(Object.entries(FAMILIES))("the family %s", (_, family) => {
  it("reads its own example", () => {
    expect(readQuantity(family, family.example).fault).toBeNull();
  });

  it("has its SI unit among its units, with the scale 1", () => {
    expect(readQuantity(family, `1 ${family.si}`).value).toBe(1);
  });

  it("suggests only units that it reads", () => {
    for (const symbol of Object.values(family.otherSpellings)) expect(Object.keys(family.units)).toContain(symbol);
  });

  it("reads in every unit what its published pattern accepts", () => {
    const pattern = new RegExp(quantityPattern(family), "u");
    const anyUnit = fc.constantFrom(...Object.keys(family.units));
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e9, noNaN: true }),
        anyUnit,
        fc.constantFrom("", " "),
        (number, unit, gap) => {
          const written = `${number}${gap}${unit}`;
          expect(pattern.test(written)).toBe(true);
          expect(readQuantity(family, written).value).toBeCloseTo(
            (number * family.units[unit]![0]) / family.units[unit]![1],
            12,
          );
        },
      ),
      { seed: SEED },
    );
  });

  it("never takes a text that its published pattern refuses", () => {
    const pattern = new RegExp(quantityPattern(family), "u");
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-+.0-9e]{0,6} ?[a-zA-Z/%°]{0,4}$/u)), (written) => {
        if (readQuantity(family, written).fault === null) expect(written).toMatch(pattern);
      }),
      { seed: SEED },
    );
  });
});
