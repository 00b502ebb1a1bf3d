import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Season, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { seasonTable } from "../words/index.ts";
import type { Figures } from "./figures.ts";
import { firstPages } from "./firstPages.ts";
import type { Markup } from "./html.ts";
import { withWelfare } from "./reportSections.ts";
import { seasonPicture } from "./studyCharts.ts";

/** What a season comes to, before the weeks that it rests on: answer, the year as a picture, a row for each kind of week. */
export function seasonSections(season: Season, results: StudyResults, figures: Figures): Markup[] {
  return [
    firstPages(
      {
        verdict: isolated(season.verdict),
        words: withWelfare(results, season.words.map(isolated)),
        table: seasonTable(season),
        note: `Means of ${season.runs} simulated weeks of each kind, with ${formatConfidence(season.confidence)} ranges. Overtime in person-hours. People it takes to do without it: those of the plan, times the hours paid over the hours of the shifts.`,
        picture: seasonPicture(season),
        isWide: true,
        next: season.next.map(isolated),
      },
      figures,
    ),
  ];
}
