import type { ElementaryEffects, ResponseInfo, StudyResults } from "../days/results/index.ts";
import { formatConfidence, formatSpan, textTable } from "../text/units/index.ts";

/** What a screening found on one response, as lines of text: the factor that matters most first. */
export function screeningTable({ screening, factors, study }: StudyResults, info: ResponseInfo): string[] {
  const effects = screening?.[info.key] ?? [];
  const rows = factors
    .map(({ name }, index) => ({ name, found: effects[index] ?? null }))
    .sort((a, b) => (b.found?.muStar ?? -1) - (a.found?.muStar ?? -1));
  const percent = formatConfidence(study.confidence);
  const header = ["factor", "mean size of its effect", `${percent} half-width`, "mean effect", "spread (sigma)"];
  return [
    "Effect of each factor over its whole range (elementary effects, Morris 1991):",
    ...textTable([header, ...rows.map(({ name, found }) => [name, ...cells(found, info)])]).map((line) => `  ${line}`),
    "A spread as large as the effect means that the effect depends on the other factors or is not straight.",
  ];
}

function cells(found: ElementaryEffects | null, info: ResponseInfo): string[] {
  if (found === null) return ["no value", "", "", ""];
  const plain = (value: number | null): string => (value === null ? "" : formatSpan(value, info, "plain"));
  return [plain(found.muStar), plain(found.muStarHalfWidth), formatSpan(found.mu, info), plain(found.sigma)];
}
