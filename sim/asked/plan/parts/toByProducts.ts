import { type BodyParts, type ByProduct, CHILL_LOSS, type Presentation, type RemovablePart } from "../plan.ts";
import { keptParts } from "../presentation/keptParts.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { tidy } from "./tidy.ts";

type FileByProduct = PlanFile["line"][number]["takesOff"][number];

/** What the shares of parts are taken from. */
export interface Anatomy {
  presentation: Presentation | null;
  bodyParts: BodyParts | null;
}

/** Shares in place of parts. What consists of parts that all stay on the carcass is taken off with a share of 0. */
export function toByProducts(file: readonly FileByProduct[], anatomy: Anatomy): ByProduct[] {
  return file.map(({ name, share, parts, of, vessel }): ByProduct => {
    if (parts === undefined) return { name, share: share as number, of, vessel };
    if (parts.includes(CHILL_LOSS)) {
      const lost = anatomy.presentation!.chillLossShare as number;
      return { name, share: lost, of: "what is left", vessel, chillLoss: true };
    }
    return { name, share: shareOfParts(parts as RemovablePart[], anatomy), of: "live weight", vessel };
  });
}

function shareOfParts(parts: readonly RemovablePart[], { presentation, bodyParts }: Anatomy): number {
  const kept = keptParts(presentation!);
  return tidy(parts.filter((part) => !kept.includes(part)).reduce((sum, part) => sum + bodyParts![part], 0));
}
