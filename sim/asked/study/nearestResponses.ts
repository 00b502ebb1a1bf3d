import { distance } from "fastest-levenshtein";
import { nearestName } from "../plan/index.ts";
import type { KnownResponse } from "./knownResponse.ts";

const MAX_NAMED = 3;
/** Closer than this share of the longer word is a slip of the keyboard; what is less alike may be meant otherwise. */
const SLIP = 0.3;
const LONGEST = 120;

/**
 * What people call a result, and the keys that they probably mean, the likeliest first. A key that ends in "." stands
 * for the first of its kind.
 */
export const MEANT: Readonly<Record<string, readonly string[]>> = {
  cost: ["costPerHead", "margin"],
  costs: ["costPerHead", "margin"],
  price: ["costPerHead", "revenue"],
  money: ["margin", "costPerHead"],
  profit: ["margin", "marginPerHead"],
  pay: ["cost.regularPay", "cost.overtimePay", "paidHours"],
  wages: ["cost.regularPay", "cost.overtimePay", "paidHours"],
  overtime: ["overtime", "overtimeHours", "cost.overtimePay"],
  late: ["finish", "overtime", "beyond."],
  end: ["finish", "lastOut", "cleaningEnd"],
  people: ["personHours", "carcassesPerPersonHour", "crew."],
  staff: ["personHours", "carcassesPerPersonHour", "crew."],
  persons: ["personHours", "carcassesPerPersonHour", "crew."],
  labour: ["personHours", "paidHours", "carcassesPerPersonHour"],
  crew: ["crew.", "personHours"],
  wait: ["timeInSystem.mean", "lorry.emptied.max", "queue."],
  waiting: ["timeInSystem.mean", "lorry.emptied.max", "queue."],
  queue: ["queue.", "lairage.max"],
  lairage: ["lairage.max", "lairage.mean", "leftInLairage"],
  lorries: ["lorry.turnaround.max", "lorry.unloading.max"],
  throughput: ["headsPerHour", "carcasses"],
  speed: ["headsPerHour", "carcasses"],
  output: ["carcasses", "headsPerHour", "carcassKg"],
  heads: ["carcasses", "headsPerHour", "leftInLairage"],
  animals: ["carcasses", "removed.dead on arrival", "leftInLairage"],
  dead: ["removed.dead on arrival"],
  limit: ["beyond.", "p95.", "worst."],
  limits: ["beyond.", "p95.", "worst."],
  welfare: ["killStops.worstWait", "beyond."],
  utilisation: ["working.", "crew."],
  utilization: ["working.", "crew."],
  breakdowns: ["stops.", "down."],
  bottleneck: ["bound.share.", "bottleneck.sole."],
  weight: ["carcassKg", "liveKg", "dressingPercentage"],
  yield: ["dressingPercentage", "carcassKg"],
  electricity: ["energyPerHead", "energy"],
};

/** Keys that somebody probably meant who wrote one that there is not; at most three, none when nothing is near. */
export function nearestResponses(written: string, known: readonly KnownResponse[]): string[] {
  if (written.length > LONGEST) return [];
  const keys = known.map(({ key }) => key);
  const slips = keys.filter((key) => alike(written, key));
  if (slips.length > 0) return [nearestName(written, slips)!];
  const byMeaning = wordsOf(written).flatMap((word) => meantBy(word, keys));
  if (byMeaning.length > 0) return [...new Set(byMeaning)].slice(0, MAX_NAMED);
  const byWords = inLabels(wordsOf(written), known);
  if (byWords.length > 0) return byWords.slice(0, MAX_NAMED);
  const nearest = nearestName(written, keys);
  return nearest === null ? [] : [nearest];
}

function alike(written: string, key: string): boolean {
  const longest = Math.max(written.length, key.length);
  // The difference in length is the least distance there can be.
  if (Math.abs(written.length - key.length) > SLIP * longest) return false;
  return distance(written.toLowerCase(), key.toLowerCase()) <= SLIP * longest;
}

function meantBy(word: string, keys: readonly string[]): string[] {
  const meant = Object.hasOwn(MEANT, word) ? MEANT[word]! : [];
  return meant.flatMap((key) => keys.find((each) => (key.endsWith(".") ? each.startsWith(key) : each === key)) ?? []);
}

/** Responses in whose key or label all of the words stand; those of the whole plant before those of one station. */
function inLabels(words: readonly string[], known: readonly KnownResponse[]): string[] {
  if (words.length === 0) return [];
  const found = known.filter(({ key, label = "" }) => {
    const own = new Set([...wordsOf(key), ...wordsOf(label)]);
    return words.every((word) => own.has(word));
  });
  return found.map(({ key }) => key).sort((a, b) => dots(a) - dots(b));
}

function dots(key: string): number {
  return key.split(".").length;
}

/** "costPerHead" is three words, as is "cost per head". */
function wordsOf(text: string): string[] {
  const apart = text.replace(/(?<=\p{Ll})(?=\p{Lu})/gu, " ");
  return apart.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
