import { formatDecimals } from "../../sim/text/units/index.ts";
import type { BottleneckColumns } from "../charts/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { isSingleDay, observationNoun, observationsOf, shareEstimate } from "../words/index.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** A stage that was the bottleneck for less of the day than this is named below the picture only. */
const LEAST_SHARE = 0.005;

/** Which stage held the line back when, on a variant's traced day; null where that was not recorded. */
export function bottleneckView(results: StudyResults, variant: VariantResults): BottleneckColumns | null {
  const { binding } = variant.day;
  const spans = binding?.bottleneck.spans ?? null;
  if (binding === null || spans === null) return null;
  const { shares } = binding.bottleneck;
  const drawn = shares.filter(({ sole, shifting }) => sole + shifting >= LEAST_SHARE);
  const brief = shares.filter((share) => !drawn.includes(share) && share.sole + share.shifting > 0);
  const names = new Set(drawn.map(({ stage }) => stage));
  return {
    ...dayScene(results, variant),
    title: "Where the bottleneck was",
    caption:
      "Solid: this stage alone held the line back; hatched: the bottleneck was going over from one stage to another",
    subtitle: `Longest active period (Roser, Nakano and Tanaka 2002) up to the end of work, shares of that time, ${dayWords(results, variant)}`,
    description: describe(results, variant, drawn),
    stages: drawn.map(({ stage, sole, shifting }) => ({
      name: isolated(stage),
      note: `${percent(sole)} alone\n${percent(shifting)} shifting`,
    })),
    spans: spans.flatMap(({ fromSeconds, toSeconds, stages }) =>
      stages
        .filter((stage) => names.has(stage))
        .map((stage) => ({
          stage: isolated(stage),
          from: fromSeconds,
          to: toSeconds,
          kind: stages.length === 1 ? ("sole" as const) : ("shifting" as const),
        })),
    ),
    footnote:
      brief.length === 0
        ? ""
        : `For less than ${LEAST_SHARE * 100} % of the time: ${brief.map(({ stage }) => isolated(stage)).join(", ")}.`,
  };
}

function percent(share: number): string {
  return `${formatDecimals(share * 100, 0)} %`;
}

function describe(
  results: StudyResults,
  variant: VariantResults,
  shares: readonly { stage: string; sole: number; shifting: number }[],
): string {
  const most = [...shares].sort((a, b) => b.sole - a.sole)[0];
  if (most === undefined) return "No stage was the bottleneck for long.";
  const all = shares.map(({ stage, sole, shifting }) => {
    return `${isolated(stage)} ${percent(sole)} alone and ${percent(shifting)} shifting`;
  });
  return `On this day ${isolated(most.stage)} was the bottleneck longest. ${all.join("; ")}.${overDays(results, variant)}`;
}

/** One day is one draw; the study knows how it is over all of them. */
function overDays(results: StudyResults, variant: VariantResults): string {
  if (isSingleDay(results) || variant.why === null) return "";
  const [most] = [...variant.why.bottleneck].sort((a, b) => b.sole.mean - a.sole.mean);
  if (most === undefined) return "";
  const over = `${observationsOf(results, variant)} ${observationNoun(results)}`;
  return ` Over all ${over} ${isolated(most.stage)} comes first: alone ${shareEstimate(most.sole)}, shifting ${shareEstimate(most.shifting)}.`;
}
