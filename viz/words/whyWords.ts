import type { Estimate, SlopeEstimate, Why } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { shareEstimate, spanEstimate, timesEstimate } from "./boundWords.ts";
import { causeWords } from "./causeWords.ts";
import { rankedSlopes, slopeStrength } from "./slopeRanks.ts";

const MOST = 3;
/** What binds less of the day than this is no place to begin. */
const LEAST_SHARE = 0.05;
/** A slope is told where what it rests on is at least this part of what the stage binds. */
const TELLING = 0.1;

/**
 * Where the time to the end of work went, most first: up to three stages, loads or vessels that bind longest, each with its
 * share, what that was, and what a second less of its time would bring. Every figure has its interval, every slope its caution.
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
  return `${upper(isolated(stage))} binds ${shareEstimate(share)} of the time to the end of work${what}.${slopeSentence(stage, share, why)}`;
}

function slopeSentence(stage: string, share: Estimate, { slopes, total }: Why): string {
  const best = rankedSlopes(slopes.filter((slope) => isSaving(slope) && slope.stage === stage))[0];
  if (best === undefined || slopeStrength(best) < TELLING * share.mean * total.mean) return "";
  const detail = best.detail === "" ? "" : ` (${isolated(best.detail)})`;
  const earlier = ` One second less of its mean ${best.parameter}${detail}, now ${spanEstimate(alone(best.meanSeconds))}, would end work ${spanEstimate(best.slope)} earlier.`;
  return best.caution === null ? earlier : `${earlier} Take care with that figure: ${isolated(best.caution)}.`;
}

/** A dwell is there for the animals and for hygiene: no time to save. */
function isSaving({ parameter, slope }: SlopeEstimate): boolean {
  return parameter !== "dwell" && slope.mean > 0;
}

function otherSentence(part: Why["parts"][number], { total }: Why): string {
  const { where, what } = causeWords(part);
  const share = shareEstimate(timesEstimate(part.seconds, 1 / total.mean));
  return `${upper(where)} binds ${share} of the time to the end of work, by ${what}: ${spanEstimate(part.seconds)}.`;
}

function alone(mean: number): Estimate {
  return { n: 1, mean, sd: 0, halfWidth: null, low: null, high: null, min: mean, max: mean };
}

/** A name may begin with a mark of direction, which has no upper case. */
function upper(name: string): string {
  return name.replace(/[\p{L}]/u, (letter) => letter.toUpperCase());
}
