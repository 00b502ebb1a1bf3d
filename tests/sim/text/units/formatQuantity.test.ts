import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatQuantity, writeQuantity } from "../../../../sim/text/units/formatQuantity.ts";
import type { UnitFamily } from "../../../../sim/text/units/index.ts";
import {
  current,
  length,
  mass,
  power,
  rate,
  readQuantity,
  speed,
  temperature,
  time,
  volume,
} from "../../../../sim/text/units/index.ts";

const FAMILIES = [time, rate, mass, length, speed, temperature, power, volume, current];

describe("formatQuantity", () => {
  it.each(
    [
      [mass, 0.35, "350 g"],
      [mass, 2.4, "2.4 kg"],
      [mass, 15000, "15 t"],
      [mass, 0, "0 kg"],
      [length, 0.0123, "12.3 mm"],
      [power, 26542, "26.5 kW"],
      [volume, 0.012, "12 L"],
      [temperature, -1.5, "-1.5 °C"],
      [speed, 3.5 / 60, "3.5 m/min"],
      [time, Number.POSITIVE_INFINITY, "no limit"],
    ].map(([family, si, text]) => [si, text, family] as [number, string, UnitFamily]),
  )("writes %d in SI as %s", (si, text, family) => {
    expect(formatQuantity(family, si)).toBe(text);
  });

  it("refuses what is no number", () => {
    expect(() => formatQuantity(mass, Number.NaN)).toThrow(RangeError);
  });
});

describe("writeQuantity", () => {
  it.each(FAMILIES.map((family) => [family.name, family] as const))("keeps every digit of %s", (_, family) => {
    fc.assert(
      fc.property(fc.double({ min: Math.max(family.least, -1e9), max: 1e30, noNaN: true }), (si) => {
        expect(readQuantity(family, writeQuantity(family, si)).value).toBe(si + 0);
      }),
      { seed: 5 },
    );
  });
});
