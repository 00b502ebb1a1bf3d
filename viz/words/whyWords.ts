import type { Estimate, Why } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { shareEstimate, spanEstimate, timesEstimate } from "./boundWords.ts";
import { causeWords } from "./causeWords.ts";

const MOST = 3;
/** What the line waited for less of the day than this is not told. */
const LEAST_SHARE = 0.05;

/** What the sentences of `whyWords` do not say; stands below them wherever they are. */
export const WHY_NOTE =
  "This says where the time went, not what a change is worth. `gambrel why` with the plan simulates changes and tells which to make first. Do not shorten breaks, bleeding or chilling to gain time.";

/**
 * Where the time to the end of work went, the longest first: up to three stages, loads or vessels that the line waited for,
 * each with how long and why. It ranks no change and promises nothing: what a change is worth has to be simulated.
 */
export function whyWords(why: Why): string[] {
  const stages = why.stages.map(({ stage, share }) => ({
    seconds: share.mean * why.total.mean,
    sentence: stageSentence(stage, share, why),
  }));
  const others = why.parts
    .filter(({ stage }) => stage === "")
    .map((part) => ({ seconds: part.seconds.mean, sentence: otherSentence(part, why) }));
  return [...stages, ...others]
    .sort((a, b) => b.seconds - a.seconds)
    .filter(({ seconds }, rank) => rank === 0 || seconds >= LEAST_SHARE * why.total.mean)
    .slice(0, MOST)
    .map(({ sentence }) => sentence);
}

function stageSentence(stage: string, share: Estimate, why: Why): string {
  const most = why.parts.find((part) => part.stage === stage);
  const what = most === undefined ? "" : `, mostly ${causeWords(most).what}, ${spanEstimate(most.seconds)}`;
  return `For ${shareEstimate(share)} of the time to the end of work the line ran at the pace of ${isolated(stage)}${what}.`;
}

function otherSentence(part: Why["parts"][number], { total }: Why): string {
  const { where, what } = causeWords(part);
  const share = shareEstimate(timesEstimate(part.seconds, 1 / total.mean));
  return `For ${share} of the time to the end of work the line waited for ${where}: ${what}, ${spanEstimate(part.seconds)}.`;
}
