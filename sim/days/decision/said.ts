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
  return { ...decision, ...forReader(weighed, spoken(weighed)) };
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
