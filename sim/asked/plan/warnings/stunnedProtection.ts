import { carriedBy } from "../mapWork.ts";
import type { Plan, Point } from "../plan.ts";

/** A stage that stuns says so in its name. */
const STUNS = /stun/iu;

/** What keeps a stunned head from waiting; places in the order of the line. */
export interface StunnedProtection {
  stunning: string;
  /** The place of work behind it. */
  next: string;
  /** A head is stunned only when the next place has room for it, or what comes up to there can take it without a wait. */
  hasGate: boolean;
  /** No break begins while a stunned head is on the line; true without breaks. */
  breaksAreSafe: boolean;
}

/** What is said of a plan about it, in whatever form it was read; `to` "" stands for the way out. */
export interface StunnedWords {
  /** Names of the places of work, in the order of the line. */
  places: readonly string[];
  gates: readonly (readonly [from: string, to: string])[];
  breaks: number;
  safeStop: readonly [from: string, to: string] | null;
  /** Where heads are held back before stunning; a hold knows of breaks. */
  hold: readonly [from: string, to: string] | null;
}

/** Null where nothing stuns, or nothing comes after it. */
export function protectionIn({ places, gates, breaks, safeStop, hold }: StunnedWords): StunnedProtection | null {
  const at = places.findIndex((name) => STUNS.test(name));
  if (at === -1 || at === places.length - 1) return null;
  const covers = ([from, to]: readonly [string, string]) => {
    const [first, last] = [places.indexOf(from), to === "" ? places.length : places.indexOf(to)];
    return first !== -1 && first <= at && last > at;
  };
  const isHeld = hold !== null && covers(hold);
  return {
    stunning: places[at]!,
    next: places[at + 1]!,
    hasGate: isHeld || gates.some(covers),
    breaksAreSafe: isHeld || breaks === 0 || (safeStop !== null && covers(safeStop)),
  };
}

/** The same of a checked plan. */
export function stunnedProtection({ line, gates, day, stunned }: Plan): StunnedProtection | null {
  const { safeStop, breaks } = day;
  return protectionIn({
    places: line.flatMap((stage) => [stage, ...carriedBy(stage)].map(({ name }) => name)),
    gates: gates.flatMap(({ from, to }) => (isPlace(to) ? [[from, to.stage ?? ""] as const] : [])),
    breaks: breaks.length,
    safeStop: safeStop === null ? null : [safeStop.from, safeStop.to],
    hold: stunned?.hold ? [stunned.from, stunned.to] : null,
  });
}

/** The arrival of a head lies before every place of work. */
function isPlace({ stage, moment }: Point): boolean {
  return stage !== null || moment === "exit";
}
