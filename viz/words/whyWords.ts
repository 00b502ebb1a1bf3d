import type { Estimate, Why } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { shareEstimate, spanEstimate, timesEstimate } from "./boundWords.ts";
import { causeWords } from "./causeWords.ts";

const MOST = 3;
/** What binds less of the day than this is no place to begin. */
const LEAST_SHARE = 0.05;

/**
 * Where the time to the end of work went, most first: up to three stages, loads or vessels that bind longest, each with its
 * share and what that was. Every figure has its interval. What a change there is worth, only trying it tells.
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
  const what = most === undefined ? "" : `, mostly by ${causeWords(most).what}, ${spanEstimate(most.seconds)}`;
  return `${upper(isolated(stage))} binds ${shareEstimate(share)} of the time to the end of work${what}.`;
}

function otherSentence(part: Why["parts"][number], { total }: Why): string {
  const { where, what } = causeWords(part);
  const share = shareEstimate(timesEstimate(part.seconds, 1 / total.mean));
  return `${upper(where)} binds ${share} of the time to the end of work, by ${what}: ${spanEstimate(part.seconds)}.`;
}

/** A name may begin with a mark of direction, which has no upper case. */
function upper(name: string): string {
  return name.replace(/[\p{L}]/u, (letter) => letter.toUpperCase());
}
