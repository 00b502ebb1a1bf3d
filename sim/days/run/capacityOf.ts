import { type BatchMeans, batchMeans, mser5 } from "../../maths/statistics/index.ts";
import { formatConfidence, formatDecimals, intervalDecimals } from "../../text/units/index.ts";
import type { CapacityResults } from "../results/index.ts";

const PER_HOUR = 60;
/** Two minutes in each of twenty batches: with fewer nothing is said. */
const MIN_MINUTES = 40;

type Pause = { name: string };

/**
 * What a line can do, from the carcasses of each minute of one long run without want of heads: the warm-up is cut off by
 * MSER-5, the rest is estimated by batch means. The words say when the run was too short for either.
 */
export function capacityOf(
  perMinute: readonly number[],
  confidence: number,
  breaks: readonly Pause[],
): CapacityResults {
  const minutes = perMinute.length;
  const warmUp = mser5(perMinute);
  const steady = warmUp === null ? [] : perMinute.slice(warmUp.deleted);
  const found = steady.length < MIN_MINUTES ? null : batchMeans(steady, confidence);
  if (warmUp === null || found === null) return noCapacity(minutes, warmUp?.deleted ?? 0, confidence);
  const { batches, batchSize } = found;
  const runTooShort = warmUp.runTooShort || found.runTooShort;
  return {
    headsPerHour: { mean: found.mean * PER_HOUR, low: found.low! * PER_HOUR, high: found.high! * PER_HOUR },
    ...{ confidence, minutes, warmUpMinutes: warmUp.deleted, batches, batchMinutes: batchSize, runTooShort },
    words: words(found, confidence, warmUp.deleted, warmUp.runTooShort, breaks),
  };
}

function noCapacity(minutes: number, warmUpMinutes: number, confidence: number): CapacityResults {
  const words = `The run is too short to say what the line can do: ${minutes} minutes with supply, ${warmUpMinutes} of them warm-up; ${MIN_MINUTES} must be left. Let it take more heads.`;
  const nothing = { warmUpMinutes, batches: 0, batchMinutes: 0, runTooShort: true };
  return { headsPerHour: null, confidence, minutes, ...nothing, words };
}

function words(
  { mean, low, high, batches, batchSize, words: check }: BatchMeans,
  confidence: number,
  warmUp: number,
  noEnd: boolean,
  breaks: readonly Pause[],
): string {
  const decimals = high === low ? 1 : intervalDecimals(((high! - low!) / 2) * PER_HOUR);
  const hourly = (value: number): string => formatDecimals(value * PER_HOUR, decimals);
  const percent = formatConfidence(confidence);
  const sentences = [
    `Without want of heads the line gives ${hourly(mean)} carcasses/h (${percent} interval ${hourly(low!)} to ${hourly(high!)}), from ${batches} batches of ${batchSize} min after a warm-up of ${warmUp} min (MSER-5).`,
    check,
  ];
  if (noEnd) sentences.push("The run is too short: where its warm-up ends cannot be told. Let it take more heads.");
  if (breaks.length > 0) sentences.push("Breaks are in these figures; a plan without them shows the line by itself.");
  return sentences.join(" ");
}
