import type { ShareBy } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FileRemoval = PlanFile["line"][number]["removals"][number];
type FileShareBy = NonNullable<FileRemoval["shareBy"]>;

/** The share of heads that leave the stage's usual way: of all alike, or by what each of them is like. */
export function toShare({ share, shareBy }: Pick<FileRemoval, "share" | "shareBy">, stage: string) {
  if (shareBy === undefined) return { share: share as number };
  const by = toShareBy(shareBy, stage);
  return { share: Math.max(...by.points.map((point) => point.share)), shareBy: by };
}

function toShareBy({ weight, time, from, to, between }: FileShareBy, stage: string): ShareBy {
  if (weight !== undefined) return { of: { kind: "live weight" }, between, points: weight };
  const end = { stage, moment: "end" } as const;
  return { of: { kind: "time", from: from!, to: to ?? end }, between, points: time! };
}
