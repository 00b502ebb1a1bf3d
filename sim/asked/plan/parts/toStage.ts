import type { Varying } from "../../../maths/varying/index.ts";
import { byKind } from "../../../text/kinds/index.ts";
import type { Chilling, Dwell, ShareBy, Stage, Station } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import type { Anatomy } from "./toByProducts.ts";
import { toChain } from "./toChain.ts";
import { toCooling } from "./toCooling.ts";
import type { Hours } from "./toPace.ts";
import { toUpkeep } from "./toUpkeep.ts";
import { toWork } from "./toWork.ts";

type FileRemoval = PlanFile["line"][number]["removals"][number];

type FileShareBy = NonNullable<FileRemoval["shareBy"]>;

type FileStage = PlanFile["line"][number];

type FileDwell = FileStage & { kind: "dwell" };

type StationOnly = Omit<Station, keyof Dwell> & Pick<Station, "kind">;

/**
 * A computed chilling whose share of carcass the file leaves open gets NaN here;
 * `toPlan` fills it in from the line.
 */
export function toStage(file: FileStage, hours: Hours, anatomy: Anatomy): Stage {
  const common = {
    name: file.name,
    section: file.section,
    travelSeconds: file.travel,
    next: file.next,
    offLine: file.offLine,
    removals: file.removals.map(({ as, ...rest }) => ({ as, ...toShare(rest, file.name) })),
    diversions: file.diversions.map(({ to, ...rest }) => ({ to, ...toShare(rest, file.name) })),
    ...toUpkeep(file, anatomy),
  };
  return byKind<FileStage, Stage>(file, {
    station: (own) => ({ ...common, ...toStation(own, hours) }),
    dwell: (own) => ({ ...common, ...toDwell(own) }),
    chain: (own) => ({ ...common, ...toChain(own, hours, anatomy) }),
  });
}

function toStation(file: FileStage & { kind: "station" }, hours: Hours): StationOnly {
  const { weights } = file;
  return {
    kind: "station",
    work: file.work ?? (file.crew.length === 0 ? "machine" : "manual"),
    buffer: file.buffer ?? Number.POSITIVE_INFINITY,
    weights: weights && { fromKg: weights.from, toKg: weights.to, else: weights.else },
    ...toWork(file, hours),
  };
}

function toDwell(file: FileDwell): Pick<Dwell, "kind" | "places" | "headsPerHook" | "dwell" | "cooling"> {
  return {
    kind: "dwell",
    places: file.places ?? Number.POSITIVE_INFINITY,
    headsPerHook: file.headsPerHook,
    dwell:
      file.chilling === undefined
        ? { kind: "drawn", seconds: file.dwell as Varying }
        : { kind: "chilling", chilling: toChilling(file.chilling) },
    ...(file.cooling === undefined || file.chilling === undefined
      ? {}
      : { cooling: toCooling(file.cooling, file.chilling.air) }),
  };
}

function toChilling(file: NonNullable<FileDwell["chilling"]>): Chilling {
  return {
    startCelsius: file.start,
    airCelsius: file.air,
    coreCelsius: file.core,
    airMetresPerSecond: file.airSpeed,
    carcassLengthMetres: file.carcassLength,
    carcassShare: file.carcassShare ?? Number.NaN,
    conductivity: file.conductivity,
    density: file.density,
    specificHeat: file.specificHeat,
  };
}

/** The share of heads that leave the stage's usual way: of all alike, or by what each of them is like. */
function toShare({ share, shareBy }: Pick<FileRemoval, "share" | "shareBy">, stage: string) {
  if (shareBy === undefined) return { share: share as number };
  const by = toShareBy(shareBy, stage);
  return { share: Math.max(...by.points.map((point) => point.share)), shareBy: by };
}

function toShareBy({ weight, time, from, to, between }: FileShareBy, stage: string): ShareBy {
  if (weight !== undefined) return { of: { kind: "live weight" }, between, points: weight };
  const end = { stage, moment: "end" } as const;
  return { of: { kind: "time", from: from!, to: to ?? end }, between, points: time! };
}
