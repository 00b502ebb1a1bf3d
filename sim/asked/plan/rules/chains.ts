import { formatNumber, length, readQuantity } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { shacklesIn } from "../parts/shackles.ts";
import { CEILINGS } from "../schema/ceilings.ts";
import { faultAt, type Located } from "./located.ts";
import { chainStationsOf, stagesOf, writtenDoes } from "./stages.ts";

/** Metres that make no difference: far less than a pitch, far more than rounding. */
const CLOSE = 1e-6;
const DIGITS = 4;

/** A window on the chain, in metres from the loading point; it begins and ends with a shackle. */
interface Window {
  at: Located["at"];
  name: string;
  from: number;
  to: number;
}

/** A chain holds shackles, and its windows, one after another; a head that passes unfinished has somewhere to go. */
export function chains(json: unknown): Fault[] {
  return stagesOf(json)
    .filter(({ value }) => writtenDoes(value, "carry stations"))
    .flatMap((chain) => {
      const stations = chainStationsOf(json, chain);
      return [...stations.flatMap((station) => unfinished(station, chain)), ...shackles(chain, stations)];
    });
}

function unfinished({ at, value }: Located, chain: Located): Fault[] {
  if (value.ifUnfinished !== "pass to trim" || typeof chain.value.unfinishedTo === "string") return [];
  const found = `heads may pass '${value.name}' unfinished, but the chain does not say where they go`;
  const remedy = `add "unfinishedTo" to '${chain.value.name}'`;
  return [faultAt([...at, "ifUnfinished"], found, '"stop the chain", or a stage for them', remedy)];
}

function shackles({ at, value }: Located, stations: readonly Located[]): Fault[] {
  const pitch = readQuantity(length, value.pitch).value;
  const whole = readQuantity(length, value.length).value;
  if (pitch === null || whole === null || pitch === 0) return [];
  const places = shacklesIn(whole, pitch);
  if (places < 1)
    return [faultAt([...at, "length"], "the chain is shorter than its pitch", "one pitch or more", "lengthen it")];
  const many = faultAt([...at, "length"], `${places} shackles`, `${CEILINGS.places} or less`, "check length and pitch");
  const windows = stations.flatMap((station) => windowOf(station, pitch));
  return [
    ...(places > CEILINGS.places ? [many] : []),
    ...windows.flatMap((window) => beyond(window, places * pitch)),
    ...windows.slice(1).flatMap((window, index) => overlap(window, windows[index] as Window)),
  ];
}

function windowOf({ at, value }: Located, pitch: number): Window[] {
  const start = readQuantity(length, value.at).value;
  const { window } = value;
  if (start === null || typeof window !== "number") return [];
  const first = shacklesIn(start, pitch);
  return [{ at, name: String(value.name), from: first * pitch, to: (first + window) * pitch }];
}

function beyond({ at, name, to }: Window, end: number): Fault[] {
  if (to <= end + CLOSE) return [];
  const found = `the chain is shorter than its windows: that of '${name}' ends at ${metres(to)}, the last shackle at ${metres(end)}`;
  return [faultAt(at, found, `${metres(end)} or less`, "lengthen the chain or move the window")];
}

function overlap(window: Window, before: Window): Fault[] {
  if (window.from >= before.to - CLOSE) return [];
  const isBehind = window.to <= before.from + CLOSE;
  const found = isBehind
    ? `'${window.name}' stands before '${before.name}' on the chain, but after it in the list`
    : `the window of '${window.name}' begins at ${metres(window.from)}, before that of '${before.name}' ends at ${metres(before.to)}`;
  const remedy = isBehind ? "put stations in the order heads pass them" : "move one or make it shorter";
  return [faultAt([...window.at, "at"], found, `${metres(before.to)} or later`, remedy)];
}

function metres(value: number): string {
  return `${formatNumber(value, DIGITS)} m`;
}
