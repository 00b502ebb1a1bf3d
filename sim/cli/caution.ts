/** Said at the end of every run; the report has the cautions in full. */
export const CAUTION =
  "A planning aid built on the numbers it is given; it sets no limit and no setting. Animal welfare and people's safety come first: " +
  "the law at the site, the official veterinarian and licensed practice decide. Verify against the real line.";

/** What hurts on such a line, a sentence each; kept beside the report's cautions, so that all say the same. */
export { DANGERS, DANGERS_IN_SHORT } from "../../viz/report/cautions.ts";
