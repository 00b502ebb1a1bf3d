import { describe, expect, it } from "vitest";
import { openDoorKilowatts, openShare, personWatts } from "../../../../sim/maths/chilling/index.ts";

/** 2 x 2.5 m, cold room of 2 degC and 85 %. */
const DOOR = { widthMetres: 2, heightMetres: 2.5, roomCelsius: 2, roomHumidity: 0.85 };
const within = (found: number, expected: number) => expect(Math.abs(found / expected - 1)).toBeLessThan(0.005);

// Gosney and Olama 1975 in ASHRAE Refrigeration (from memory), worked with a property library's air.
describe("heat through an open door", () => {
  it("is 34.04 kW from 15 degC and 70 %, 86.84 kW from 25 degC and 60 %", () => {
    within(openDoorKilowatts({ ...DOOR, outsideCelsius: 15, outsideHumidity: 0.7 }), 34.037);
    within(openDoorKilowatts({ ...DOOR, outsideCelsius: 25, outsideHumidity: 0.6 }), 86.837);
  });

  it("is none from air that is as cold", () => {
    expect(openDoorKilowatts({ ...DOOR, outsideCelsius: 2, outsideHumidity: 0.85 })).toBe(0);
    expect(openDoorKilowatts({ ...DOOR, outsideCelsius: -5, outsideHumidity: 0.8 })).toBe(0);
  });

  it("is a tenth of that for 30 passes of 12 s an hour, and never more than all of it", () => {
    expect(openShare(30, 12)).toBeCloseTo(0.1, 12);
    expect(openShare(900, 12)).toBe(1);
  });
});

it("a person gives off 260 W at 2 degC and 200 W at 12 degC", () => {
  expect(personWatts(2)).toBe(260);
  expect(personWatts(12)).toBe(200);
  expect(personWatts(60)).toBe(0);
});
