import type { Chain, ChainStation } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { shacklesIn } from "./shackles.ts";
import { tidy } from "./tidy.ts";
import type { Anatomy } from "./toByProducts.ts";
import { type Hours, toPace } from "./toPace.ts";
import { toUpkeep } from "./toUpkeep.ts";
import { toWork } from "./toWork.ts";

type FileChain = PlanFile["line"][number] & { kind: "chain" };

/** What only chains have. */
export function toChain(
  file: FileChain,
  hours: Hours,
  anatomy: Anatomy,
): Pick<
  Chain,
  "kind" | "places" | "secondsPerShackle" | "pitchMetres" | "pace" | "shackles" | "stations" | "unfinishedTo"
> {
  const { length, pitch, speed, shackles } = file;
  return {
    kind: "chain",
    places: shacklesIn(length, pitch),
    secondsPerShackle: tidy(pitch / speed),
    pitchMetres: pitch,
    pace: toPace(file.pace, hours.start),
    shackles: shackles && { count: shackles.count, backSeconds: shackles.back },
    stations: file.stations.map((station) => toChainStation(station, pitch, hours, anatomy)),
    unfinishedTo: file.unfinishedTo,
  };
}

function toChainStation(
  file: FileChain["stations"][number],
  pitch: number,
  hours: Hours,
  anatomy: Anatomy,
): ChainStation {
  return {
    name: file.name,
    at: shacklesIn(file.at, pitch),
    window: file.window,
    ifUnfinished: file.ifUnfinished === "stop the chain" ? "stop" : "pass",
    ...toWork(file, hours),
    ...toUpkeep(file, anatomy),
  };
}
