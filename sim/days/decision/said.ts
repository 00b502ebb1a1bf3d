import type { Decision } from "../results/index.ts";
import { bestOf, howMuch } from "./bestOf.ts";
import { forReader } from "./forReader.ts";
import type { Spoken } from "./judged.ts";
import { limitKept, whatMatters, whatWillItBe, whereNext } from "./told.ts";
import type { Weighed } from "./weighed.ts";
import { whatIf } from "./whatIf.ts";
import { worthIt } from "./worthIt.ts";

/** Puts a decision into words: the verdict in one sentence, what it rests on, what to do next; for who is to read it. */
export function said(weighed: Weighed): Decision {
  const { info: _, findings: __, study: ___, againstBest: ____, overtimeDays: _____, ...decision } = weighed;
  const found = forReader(weighed, spoken(weighed));
  return { ...decision, ...found, next: [...found.next, ...notKnown(weighed)] };
}

/** Days alone tell nothing of figures that nobody knows. */
function notKnown({ study }: Weighed): string[] {
  const figures = new Map(
    study.variants.flatMap(({ plan }) => (plan.uncertain ?? []).map((each) => [each.name, each])),
  );
  if (figures.size === 0) return [];
  const guesses = [...figures.values()].filter(({ kind }) => kind === "guess").length;
  const called =
    figures.size === 1 ? "one figure of the plan uncertain" : `${figures.size} figures of the plan uncertain`;
  const guessed = guesses === 0 ? "" : guesses === figures.size ? ", by guess" : `, ${guesses} of them by guess`;
  return [
    `These ranges are luck alone, with every figure taken as written; somebody called ${called}${guessed}. \`gambrel doubt\` counts that in, and tells which to measure next.`,
  ];
}

function spoken(weighed: Weighed): Spoken {
  switch (weighed.kind) {
    case "worth it":
      return worthIt(weighed);
    case "best":
      return bestOf(weighed);
    case "how much":
      return howMuch(weighed);
    case "bottleneck":
      return whereNext(weighed);
    case "limit":
      return limitKept(weighed);
    case "what will it be":
      return whatWillItBe(weighed);
    case "what matters":
      return whatMatters(weighed);
    case "what if":
      return whatIf(weighed);
    default:
      return weighed.kind satisfies never;
  }
}
