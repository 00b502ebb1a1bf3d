import { amountWords, changeWords, listed, moneyWords, named, yearWords } from "../../days/decision/index.ts";
import { formatResponse, formatShare } from "../../text/units/index.ts";
import { isMoney } from "./goal.ts";
import { type ImproveVerdict, periodOf, type Recommendation, type SearchFindings } from "./improvement.ts";
import { moveWords } from "./moveWords.ts";

const WHY = "`gambrel why` with the plan tries what else would help.";

/** Whether another arrangement than today's is worth it, by the goal and the money of the days on which both were compared. */
export function improveVerdict(found: SearchFindings): ImproveVerdict {
  const { recommended } = found;
  if (recommended === null) return noneFound(found);
  if (recommended.isBase || recommended.gain === null)
    return {
      answer: "no",
      verdict: `No: today's arrangement is as good as any of the ${found.effort.designsTried} tried${endToday(recommended, found)}.`,
      next: [WHY],
    };
  return changed(found, recommended);
}

function noneFound(found: SearchFindings): ImproveVerdict {
  const { choice, finalists } = found;
  const days = `${periodOf(found)}s`;
  if (choice.kind === "no value")
    return { answer: "undecided", verdict: `It cannot be told: on some ${days} the goal has no value.`, next: [] };
  const open = finalists.filter(({ limits }) => limits === "not shown").length;
  const more = `Ask for more ${days}: a larger firstStage in the question.`;
  if (open > 0)
    return {
      answer: "undecided",
      verdict: `It cannot be told yet: ${open} of the ${finalists.length} best arrangements may keep the limits, none is shown to.`,
      next: [more],
    };
  return {
    answer: "no",
    verdict: `No: each of the ${finalists.length} best arrangements breaks a limit or does harm.`,
    next: [WHY, "Ask with a larger total, or other bounds."],
  };
}

function changed(found: SearchFindings, recommended: Recommendation): ImproveVerdict {
  const { goal, matters } = found;
  const { gain, money } = recommended;
  const moves = moveWords(found, recommended);
  const broken = brokenToday(recommended);
  if (broken.length > 0) return limitsFirst(found, recommended, broken);
  const least = amountWords(matters, goal);
  const { size } = gain!;
  if (size === "open")
    return {
      answer: "undecided",
      verdict: `It cannot be told yet: best so far is to ${moves}, but ${recommended.goal!.n} simulated ${periodOf(found)}s cannot tell it from today's arrangement.`,
      next: [`Ask for more ${periodOf(found)}s: a larger firstStage in the question.`],
    };
  if (size === "no difference" || size === "loss")
    return {
      answer: "no",
      verdict: `No: today's arrangement is as good as any of the ${found.effort.designsTried} tried; the best of the others, to ${moves}, gains less than ${least}.`,
      next: [WHY],
    };
  const clause = changeWords(gain!, goal);
  if (size === "too small" && money?.size !== "gain")
    return {
      answer: "too small",
      verdict: `Hardly: ${moves}, and ${clause}, less than the ${least} that matter.`,
      next: [WHY],
    };
  const costly = money?.size === "loss";
  const lead = costly ? "It is a matter of choice" : "Yes";
  return {
    answer: costly ? "told" : "yes",
    verdict: `${lead}: ${moves}: ${clause}${moneyClause(recommended, found)}${endChange(recommended, found)}.`,
    next: nextSteps(found, recommended),
  };
}

/** Limits that today's plan is shown to break; the recommended arrangement is shown to keep all of them. */
function brokenToday({ limits }: Recommendation): Recommendation["limits"] {
  return limits.filter(({ share, today }) => today !== null && (today.low ?? today.mean) > share);
}

/** Limits come before the goal: what it brings or costs there is told behind it. */
function limitsFirst(
  found: SearchFindings,
  recommended: Recommendation,
  broken: Recommendation["limits"],
): ImproveVerdict {
  const { gain, money } = recommended;
  const kept = broken.map(({ name, of, found: then, today }) => {
    const [before, after] = [today?.mean ?? 0, then?.mean ?? 0].map(formatShare);
    if (of === "orders") return `${before} of the orders are late today, then ${after}`;
    return `${before} of heads are outside ${named(name)} today, then ${after}`;
  });
  const shown = gain!.size === "gain" || gain!.size === "loss";
  const worth = shown ? `; ${changeWords(gain!, found.goal)}${moneyClause(recommended, found)}` : "";
  const costly = gain!.size === "loss" || money?.size === "loss";
  return {
    answer: costly ? "told" : "yes",
    verdict: `${costly ? "It keeps the limits at a price" : "Yes"}: ${moveWords(found, recommended)}: ${listed(kept)}${worth}${endChange(recommended, found)}.`,
    next: nextSteps(found, recommended),
  };
}

/** Where the goal is money itself nothing is said of it twice. */
function moneyClause({ money }: Recommendation, { goal }: SearchFindings): string {
  if (money === null || isMoney(goal.key)) return "";
  if (money.size === "no difference" || money.size === "too small") return ", at no cost";
  return `${money.size === "loss" ? ", but" : " and"} it ${moneyWords(money)}`;
}

function endChange({ ends }: Recommendation, { period }: SearchFindings): string {
  if (ends === null) return "";
  const [before, after] = [ends.today, ends.pick].map((seconds) => clock(seconds, ends.startClockSeconds));
  return before === after ? "" : `; work ends${onAverage(period)} at ${after} instead of ${before}`;
}

function endToday({ ends }: Recommendation, { period }: SearchFindings): string {
  return ends === null ? "" : `; work ends${onAverage(period)} at ${clock(ends.today, ends.startClockSeconds)}`;
}

/** Of a week the mean end of its days. */
function onAverage(period: SearchFindings["period"]): string {
  return period === undefined ? "" : " on average";
}

function clock(seconds: number, startClockSeconds: number): string {
  const info = { key: "finish", label: "", unit: "s", format: "clock", better: "less" } as const;
  return formatResponse(seconds, info, startClockSeconds);
}

function nextSteps({ choice, finalists, allocated }: SearchFindings, { name, money }: Recommendation): string[] {
  const rivals = finalists.filter((each) => each.name !== name && each.droppedAfter === null && each.limits === "kept");
  const others = rivals.filter(({ harm }) => harm === null).map((each) => `“${each.name}”`);
  return [
    ...(choice.kind === "ceiling" && others.length > 0
      ? [`May be as good: ${listed(others.slice(0, 3))}. Take the one that is easiest to arrange.`]
      : []),
    ...(money !== null && money.size === "gain" ? [`It brings about ${yearWords(money)}.`] : []),
    ...(allocated.kind === "people"
      ? ["Ask the crews first: who moves needs training, and nobody may stand alone where two are needed."]
      : []),
    ...(allocated.kind === "week"
      ? [
          "Ask those whose hours and days it changes first: farms, drivers, crews, the official veterinarian. Breaks keep their length; rest and notice are for the law and the agreements at the site.",
        ]
      : []),
    ...(allocated.kind === "times"
      ? ["Ask those whose hours it changes first: drivers, crews, the official veterinarian. Breaks keep their length."]
      : []),
    ...(allocated.kind === "places"
      ? ["The plan has no price for places: set what moving them costs against what it brings."]
      : []),
  ];
}
