import { length, readQuantity } from "../../units/index.ts";
import type { Fault } from "../fault.ts";
import { shacklesIn } from "../parts/shackles.ts";
import { CEILINGS } from "../schema/ceilings.ts";
import { faultAt, type Located } from "./located.ts";
import { chainStationsOf, stagesOf } from "./stages.ts";

interface Window {
  at: Located["at"];
  name: string;
  /** Shackles from the loading point to the first of the window, and to the first behind it. */
  from: number;
  to: number;
}

/** A chain holds shackles, and its windows, one after another; a head that passes unfinished has somewhere to go. */
export function chains(json: unknown): Fault[] {
  return stagesOf(json)
    .filter(({ value }) => value.kind === "chain")
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
    ...windows.flatMap((window) => beyond(window, places)),
    ...windows.slice(1).flatMap((window, index) => overlap(window, windows[index] as Window)),
  ];
}

function windowOf({ at, value }: Located, pitch: number): Window[] {
  const metres = readQuantity(length, value.at).value;
  const { window } = value;
  if (metres === null || typeof window !== "number") return [];
  const from = shacklesIn(metres, pitch);
  return [{ at, name: String(value.name), from, to: from + window }];
}

function beyond(window: Window, places: number): Fault[] {
  if (window.to <= places) return [];
  const found = `the chain is shorter than its windows: '${window.name}' reaches to shackle ${window.to}`;
  return [faultAt(window.at, found, `the ${places} shackles of the chain`, "lengthen the chain or move the window")];
}

function overlap(window: Window, before: Window): Fault[] {
  if (window.from >= before.to) return [];
  const isBehind = window.to <= before.from;
  const found = isBehind
    ? `'${window.name}' stands before '${before.name}' on the chain, but after it in the list`
    : `the window of '${window.name}' (from shackle ${window.from}) overlaps that of '${before.name}' (up to ${before.to})`;
  const remedy = isBehind ? "put stations in the order heads pass them" : "move one or make it shorter";
  return [faultAt([...window.at, "at"], found, `shackle ${before.to} or later`, remedy)];
}
