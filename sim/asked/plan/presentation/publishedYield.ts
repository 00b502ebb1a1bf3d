import type { Presentation } from "../plan.ts";

export interface YieldRange {
  low: number;
  high: number;
}

/**
 * Chilled carcass with head, liver, kidneys, heart and lungs, without paws: 53.9 % (1.23 of 2.28 kg, 919 animals of three breeds
 * and their crosses) to 59 % (French plants, La Semaine Veterinaire 1592, 2014, the upper end of what they had). In between:
 * 54.4 (Pinna et al. 2004, 1179 of 2167 g), 55.8 (Kuzelov and Atanasova 2011), 58.5 (Mota-Rojas et al. 2006). Animals fasted
 * for 24 h gave 60 to 61 (Nofal, Toth and Virag) and are left out: their gut is lighter.
 */
const CHILLED_WITH_HEAD: YieldRange = { low: 0.539, high: 0.59 };

/**
 * What a part adds, as a share of live weight. Head: Kuzelov and Atanasova 2011, with less without. Paws: Ouhayoun 1989, as
 * quoted in two theses. Liver, kidneys, heart and lungs: from memory, wide.
 */
const PART = {
  head: { low: 0.044, high: 0.0499 },
  paws: { low: 0.036, high: 0.036 },
  liver: { low: 0.025, high: 0.035 },
  kidneys: { low: 0.006, high: 0.006 },
  heartAndLungs: { low: 0.01, high: 0.01 },
};

/** A carcass loses 1 to 2 % in cooling (La Semaine Veterinaire 1592, 2014), 2.5 % in 24 h at 4 degC (Ouhayoun 1989, quoted). */
const CHILL_LOSS: YieldRange = { low: 0.01, high: 0.025 };

/**
 * Published yields of this presentation, as far as they can be worked out from those of a chilled carcass with head. Null for
 * the live weight at the farm when the loss on the way is not given: no figure for it was found.
 */
export function publishedYield(presentation: Presentation): YieldRange | null {
  const { head, paws, liver, kidneys, heartAndLungs, weighed, liveWeight, journeyLossShare } = presentation;
  if (liveWeight === "farm" && journeyLossShare === null) return null;
  let { low, high } = CHILLED_WITH_HEAD;
  for (const [state, part] of [
    [head, PART.head],
    [liver, PART.liver],
    [kidneys, PART.kidneys],
    [heartAndLungs, PART.heartAndLungs],
  ] as const) {
    if (state === "on") continue;
    low -= part.high;
    high -= part.low;
  }
  if (paws === "on") [low, high] = [low + PART.paws.low, high + PART.paws.high];
  if (weighed === "hot") [low, high] = [low / (1 - CHILL_LOSS.low), high / (1 - CHILL_LOSS.high)];
  const kept = liveWeight === "farm" ? 1 - journeyLossShare! : 1;
  return { low: low * kept, high: high * kept };
}
