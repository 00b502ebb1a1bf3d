import type { Presentation, RemovablePart } from "../plan.ts";

type Kept = Pick<Presentation, "head" | "paws" | "liver" | "kidneys" | "heartAndLungs">;

/** Parts that are on the carcass when it is sold. Blood, skin and gut never are. */
export function keptParts(presentation: Kept): RemovablePart[] {
  const { head, paws, liver, kidneys, heartAndLungs } = presentation;
  return [
    ...(head === "on" ? (["head"] as const) : []),
    ...(paws === "on" ? (["forePaws", "hindPaws"] as const) : []),
    ...(liver === "on" ? (["liver"] as const) : []),
    ...(kidneys === "on" ? (["kidneys"] as const) : []),
    ...(heartAndLungs === "on" ? (["heartAndLungs"] as const) : []),
  ];
}
