import type { ScreeningColumns } from "../charts/index.ts";
import type { ResponseInfo, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { rankedEffects, screeningWords, studyFormat } from "../words/index.ts";

/** What each factor of a screening does to a response; null where the study is no screening or nothing is known. */
export function screeningView(results: StudyResults, info: ResponseInfo): ScreeningColumns | null {
  const ranked = rankedEffects(results, info);
  if (ranked.length === 0) return null;
  const format = studyFormat(results, info);
  const scale = format.differenceScale;
  return {
    title: `${isolated(info.label)}: which factors matter`,
    caption: "The factors at the far right are worth a study of their own; those near 0 can be left as they are",
    subtitle:
      "Further right: the factor changes the response more. Higher: its effect depends on the other factors or is not straight, above the dashed line as much as it matters",
    description: screeningWords(results, info, format).join(" "),
    quantity: format.differenceQuantity,
    points: ranked.map(({ name, effects }) => ({
      name,
      muStar: effects.muStar * scale,
      sigma: (effects.sigma ?? 0) * scale,
      halfWidth: effects.muStarHalfWidth === null ? null : effects.muStarHalfWidth * scale,
    })),
  };
}
