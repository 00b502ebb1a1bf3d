import { readClock, readQuantity, SECONDS_PER_DAY, time, writeClock } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { faultAt, type Located, located, locatedList } from "./located.ts";

/** Long enough for a capacity run of ten million heads at a hundred an hour. */
const LONGEST_DAY_HOURS = 100_000;

/** A stretch of the day, in seconds after midnight. */
interface Stretch extends Located {
  from: number;
  to: number;
}

/**
 * The hours of a plan agree with each other: nothing before the day starts, shifts in order, breaks inside them. Where
 * the shifts themselves are wrong, nothing is measured against them.
 */
export function calendar(json: unknown): Fault[] {
  const written = locatedList(json, "day", "shifts");
  const shifts = written.flatMap(shiftStretch);
  const order = shiftOrder(shifts);
  const start = dayStart(json);
  const early = start === null ? [] : beforeStart(json, start);
  if (order.length > 0 || shifts.length < written.length) return [...early, ...order];
  const breaks = locatedList(json, "day", "breaks").flatMap(breakStretch);
  return [
    ...early,
    ...preStart(json, shifts),
    ...breaksInside(breaks, shifts),
    ...(start === null ? [] : ceiling(json, start, shifts)),
  ];
}

function shiftStretch(shift: Located): Stretch[] {
  const from = readClock(shift.value.from).value;
  const to = readClock(shift.value.to).value;
  return from === null || to === null ? [] : [{ ...shift, from, to }];
}

function breakStretch(pause: Located): Stretch[] {
  const from = readClock(pause.value.at).value;
  const length = readQuantity(time, pause.value.length).value;
  return from === null || length === null ? [] : [{ ...pause, from, to: from + length }];
}

function dayStart(json: unknown): number | null {
  const day = located(json, "day")?.value;
  return readClock(day?.start ?? locatedList(json, "day", "shifts")[0]?.value.from).value;
}

function beforeStart(json: unknown, start: number): Fault[] {
  const written: [Located | null, string][] = [
    ...locatedList(json, "day", "shifts").map((shift): [Located, string] => [shift, "from"]),
    ...locatedList(json, "supply", "loads").map((load): [Located, string] => [load, "at"]),
    [located(json, "day", "closing"), "stopHangingAt"],
  ];
  return written.flatMap(([place, key]) => {
    const clock = readClock(place?.value[key]).value;
    if (place === null || clock === null || clock >= start) return [];
    const remedy = "move it, start the day earlier, or write a time of the next day as 24:00 or later";
    return [
      faultAt(
        [...place.at, key],
        `${writeClock(clock)} is before the day starts`,
        `${writeClock(start)} or later`,
        remedy,
      ),
    ];
  });
}

function shiftOrder(shifts: readonly Stretch[]): Fault[] {
  return shifts.flatMap(({ at, from, to }, index) => {
    const before = shifts[index - 1];
    const late = before !== undefined && from < before.to;
    return [
      ...(to > from
        ? []
        : [
            faultAt(
              [...at, "to"],
              "the shift ends before it has begun",
              `later than ${writeClock(from)}`,
              shiftRemedy(to),
            ),
          ]),
      ...(late
        ? [
            faultAt(
              [...at, "from"],
              "the shift starts before the one above has ended",
              `${writeClock(before.to)} or later`,
              "put shifts in order",
            ),
          ]
        : []),
    ];
  });
}

function shiftRemedy(to: number): string {
  return `for the next day write "${writeClock(to + SECONDS_PER_DAY)}"`;
}

function breaksInside(breaks: readonly Stretch[], shifts: readonly Stretch[]): Fault[] {
  const first = shifts[0];
  const last = shifts.at(-1);
  if (first === undefined || last === undefined) return [];
  return breaks.flatMap(({ at, from, to }) => {
    if (from >= first.from && to <= last.to) return [];
    const allowed = `${writeClock(first.from)} to ${writeClock(last.to)}`;
    return [
      faultAt(
        at,
        `the break (${writeClock(from)} to ${writeClock(to)}) lies outside the shifts`,
        allowed,
        "move or shorten it",
      ),
    ];
  });
}

function preStart(json: unknown, shifts: readonly Stretch[]): Fault[] {
  const first = shifts[0];
  const seconds = readQuantity(time, located(json, "day")?.value.preStart).value;
  if (first === undefined || seconds === null || seconds < first.to - first.from) return [];
  const allowed = `less than ${(first.to - first.from) / 3600} h`;
  return [faultAt(["day", "preStart"], "the checks last longer than the first shift", allowed, "lower it")];
}

function ceiling(json: unknown, start: number, shifts: readonly Stretch[]): Fault[] {
  const last = shifts.at(-1);
  const seconds = readQuantity(time, located(json, "day")?.value.ceiling ?? "48 h").value;
  if (seconds !== null && seconds > LONGEST_DAY_HOURS * 3600) {
    const allowed = `${LONGEST_DAY_HOURS} h or less`;
    return [faultAt(["day", "ceiling"], "a day longer than eleven years", allowed, "is there a zero too many?")];
  }
  if (last === undefined || seconds === null || start + seconds > last.to) return [];
  const allowed = `more than ${(last.to - start) / 3600} h, counted from the start of the day`;
  return [faultAt(["day", "ceiling"], "the day is cut off before its last shift ends", allowed, "raise it")];
}
