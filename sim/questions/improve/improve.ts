import type { Plan } from "../../asked/plan/index.ts";
import { supportOf } from "../../day/observations/index.ts";
import { gainOf, netMoney, usualMatters } from "../../days/decision/index.ts";
import { differenceInWords } from "../../days/results/index.ts";
import type { Simulate } from "../../days/run/index.ts";
import { estimateWithin, shareEstimate } from "../../maths/statistics/index.ts";
import { type Choice, chooseBest } from "./chooseBest.ts";
import { countDesigns } from "./countDesigns.ts";
import { type CandidateDesign, Designs } from "./designs.ts";
import { levelsOf } from "./greedyPath.ts";
import type { CurvePoint, Finalist, Found, Improvement, Recommendation, TriedDesign } from "./improvement.ts";
import { improveVerdict } from "./improveVerdict.ts";
import { improveWords } from "./improveWords.ts";
import { type Kept, keepLimits } from "./keepLimits.ts";
import type { ImproveQuestion } from "./question.ts";
import { beyondLimit, meanOf, ranked, scoreOf } from "./score.ts";
import { search } from "./search.ts";
import { searchHarm, unasked } from "./searchHarm.ts";
import { isAllowed } from "./space.ts";
import { type Trial, Trials } from "./trials.ts";
import { harmWithOrders } from "./week/orderHarm.ts";

/** 1 % of what the plan as it is does, where the file says nothing. */
const USUAL_DIFFERENCE = 0.01;

export interface ImproveTools {
  simulate: Simulate;
  /** Told what is being done. */
  say?: (words: string) => void;
}

/**
 * Searches for the best way to share out the total, picks among the best ones found with a stated probability, and
 * compares the pick with the plan as it is. Search, choice and comparison have random numbers of their own: what looked
 * good in the search by luck alone has no advantage in the choice, and the luck with which one is picked is in no figure
 * told of it. The result is a function of the question alone. Picks by Kim and Nelson 2001 (see the room's README); null where
 * no design keeps the limits. For a report simulate `improvementStudy` of what was found. Example:
 *
 *     const { question } = readImprove(JSON.parse(text), files);
 *     const found = await improve(question, { simulate: simulateWith({ gambrel: "my program 1.0", command: "" }) });
 *     found.improvement.words;
 */
export async function improve(
  question: ImproveQuestion,
  { simulate, say = () => {} }: ImproveTools,
): Promise<{ improvement: Improvement; recommended: CandidateDesign | null }> {
  const designs = new Designs(question);
  const allowed = countDesigns(question.space);
  const [searching, explained] = [false, true].map(
    (why) => new Trials(question, simulate, `${question.seed}, search`, why),
  ) as [Trials, Trials];
  const tell = (tried: number) => say(`${tried} of ${allowed} allowed arrangements tried.`);
  const tried = await search(question, { designs, trials: searching, explained, tell });
  const finalists = finalistsOf(tried, question);
  say(`Choosing among ${finalists.length} ${finalists.length === 1 ? "finalist" : "finalists"}.`);
  const choosing = new Trials(question, simulate, question.seed, false);
  const chosen = await choose(finalists, question, { base: designs.base, trials: choosing });
  const choiceDays = choosing.simulated;
  const curve = await tradeOff(tried, question, choosing);
  const { pick, ...found } = chosen;
  const comparing = new Trials(question, simulate, comparisonSeed(question), false);
  const days = pick === null ? 0 : Math.max(question.firstStage, choosing.known(pick));
  const matters = question.difference ?? usualMatters(question.response, goalToday(tried, question));
  const recommended =
    pick === null ? null : await recommend(pick, designs.base, { question, trials: comparing, days, matters });
  const improvement = {
    ...about(question),
    ...{ ...found, recommended, matters },
    tried: ranked(tried, question).map((trial) => triedOf(trial, tried, { finalists, question })),
    curve: curve.map((trial) => pointOf(trial, curve, question)),
    effort: {
      designsTried: tried.length,
      designsAllowed: allowed,
      searchDays: searching.simulated + explained.simulated,
      choiceDays,
      curveDays: choosing.simulated - choiceDays,
      comparisonDays: comparing.simulated,
      fullEnumerationDays: allowed * question.firstStage,
    },
  };
  const said = improveVerdict(improvement);
  return { improvement: { ...improvement, ...said, words: improveWords(improvement) }, recommended: pick };
}

/** On the days of the search. */
function goalToday(tried: readonly Trial[], question: ImproveQuestion) {
  const [base] = tried;
  return base === undefined ? undefined : (foundOf(base, question).goal ?? undefined);
}

function about({ name, question, seed, confidence, response, space, base: { plan } }: ImproveQuestion) {
  const { kind, unit, least, most, base } = space;
  const elements = space.elements.map((element, index) => {
    const { name, from, to, time } = element;
    return { name, from, to, base: base[index] ?? null, ...(time === undefined ? {} : { time }) };
  });
  const allocated = { kind, unit, least, most, elements };
  const period = plan.week === undefined ? {} : { period: "week" as const };
  return { format: 1 as const, name, question, seed, confidence, goal: response, ...period, allocated };
}

/** The best of the search that are allowed; the plan as it is among them where it is allowed. */
function finalistsOf(tried: readonly Trial[], question: ImproveQuestion): CandidateDesign[] {
  const { space, search: asked } = question;
  const open = tried.filter(
    ({ design, values }) => values.length >= asked.days && design.counts !== null && isAllowed(space, design.counts),
  );
  const harmless = open.filter((trial) => searchHarm(trial, tried, question) === null);
  const allowed = harmless.length > 0 ? harmless : open;
  const best = ranked(allowed, question)
    .slice(0, asked.finalists)
    .map(({ design }) => design);
  const base = allowed.find(({ design }) => design.key === "base")?.design;
  return base === undefined || best.includes(base) ? best : [...best.slice(0, -1), base];
}

/** Of the days on which the pick is compared with the plan as it is. */
export function comparisonSeed({ seed }: Pick<ImproveQuestion, "seed">): string {
  return `${seed}, comparison`;
}

type Chosen = Pick<Improvement, "finalists" | "choice"> & { pick: CandidateDesign | null };

async function choose(
  finalists: readonly CandidateDesign[],
  question: ImproveQuestion,
  { base, trials }: { base: CandidateDesign; trials: Trials },
): Promise<Chosen> {
  const { limits, probability, firstStage, atMost, response } = question;
  // Half of what may go wrong goes to the limits, where there are any.
  const alpha = (1 - probability) / (limits.length === 0 ? 1 : 2);
  const kept = await keepLimits(finalists, question, trials, alpha);
  const harm = await harmsOf(finalists, base, question, trials);
  const running = finalists.filter((design) => kept.get(design) === "kept" && harm.get(design) === null);
  const difference = question.difference ?? (await usualDifference(base, question, trials));
  const asked = { n0: firstStage, delta: difference, alpha, better: response.better!, atMost };
  const choice = running.length === 0 ? null : await chooseBest(running, trials, asked);
  const told = finalists.map((design) =>
    finalistOf(design, kept.get(design)!, { running, harm, choice, question, trials }),
  );
  const pick = choice?.best ?? null;
  return {
    pick,
    finalists: await Promise.all(told),
    choice: { kind: choice?.kind ?? "limits not kept", probability, difference },
  };
}

async function usualDifference(
  base: CandidateDesign,
  { firstStage }: ImproveQuestion,
  trials: Trials,
): Promise<number> {
  const [trial] = await trials.of([base], firstStage);
  return Math.max(Math.abs(meanOf(trial!.values.filter((value) => value !== null)) ?? 0), 1) * USUAL_DIFFERENCE;
}

/** By design: what it makes worse than the plan as it is, on the first days of the choice; null for nothing. */
async function harmsOf(
  finalists: readonly CandidateDesign[],
  base: CandidateDesign,
  question: ImproveQuestion,
  trials: Trials,
): Promise<Map<CandidateDesign, string | null>> {
  const [before, ...after] = await trials.of([base, ...finalists], question.firstStage);
  return new Map(
    after.map(({ design, responses }) => [
      design,
      design === base ? null : harmWithOrders(unasked(question), before!.responses, responses),
    ]),
  );
}

interface Contest {
  running: readonly CandidateDesign[];
  harm: ReadonlyMap<CandidateDesign, string | null>;
  choice: Choice | null;
  question: ImproveQuestion;
  trials: Trials;
}

async function finalistOf(design: CandidateDesign, limits: Kept, contest: Contest): Promise<Finalist> {
  const { running, harm, choice, question, trials } = contest;
  const place = running.indexOf(design);
  const days = Math.max(question.firstStage, choice?.days[place] ?? 0, trials.known(design));
  const [trial] = await trials.of([design], days);
  const dropped = choice?.state?.dropped.find(({ variant }) => variant === place)?.after ?? null;
  return { ...foundOf(trial!, question), limits, harm: harm.get(design) ?? null, droppedAfter: dropped };
}

async function recommend(
  pick: CandidateDesign,
  base: CandidateDesign,
  { question, trials, days, matters }: { question: ImproveQuestion; trials: Trials; days: number; matters: number },
): Promise<Recommendation> {
  const { confidence, response, limits } = question;
  const [picked, compared] = await trials.of([pick, base], days);
  const isBase = pick === base;
  const noun = base.plan.week === undefined ? "days" : "weeks";
  const difference = isBase ? null : differenceInWords(picked!.values, compared!.values, confidence, response, noun);
  const worth = { confidence, matters: null };
  return {
    ...foundOf(picked!, question),
    ...pick.change,
    isBase,
    againstBase: difference,
    gain: difference === null ? null : gainOf(difference, response.better!, matters),
    money:
      isBase || question.yearly !== null
        ? null
        : netMoney(
            { plan: base.plan, values: compared!.responses },
            { plan: pick.plan, values: picked!.responses },
            worth,
          ),
    ends: endsOf(compared!, picked!, base.plan),
    limits: limits.map((limit) => {
      const { name, share, of } = limit;
      const [found, today] = [picked!, compared!].map(({ responses }) =>
        shareEstimate(beyondLimit(limit, responses), confidence),
      );
      return { name, share, ...(of === "heads" ? {} : { of }), found: found!, today: today! };
    }),
  };
}

/** Null where days of the plan have no end that a crew would know. */
function endsOf(today: Trial, then: Trial, { supply, day }: Plan): Recommendation["ends"] {
  const [before, after] = [today, then].map(({ responses }) =>
    meanOf((responses.finish ?? []).filter((value) => value !== null)),
  );
  if (supply.kind === "saturated" || before == null || after == null) return null;
  return { today: before, pick: after, startClockSeconds: day.startClockSeconds };
}

function foundOf({ design, values }: Trial, { confidence, response }: ImproveQuestion): Found {
  return {
    name: design.name,
    counts: design.counts,
    uses: design.spent,
    goal: estimateWithin(supportOf(response), values, confidence),
  };
}

function pointOf(trial: Trial, curve: readonly Trial[], question: ImproveQuestion): CurvePoint {
  const { excess } = scoreOf(trial, question);
  return {
    ...foundOf(trial, question),
    isBase: trial.design.key === "base",
    undominated: !curve.some((other) => dominates(other, trial, question)),
    keepsLimits: excess === 0,
  };
}

function triedOf(
  trial: Trial,
  tried: readonly Trial[],
  { finalists, question }: { finalists: readonly CandidateDesign[]; question: ImproveQuestion },
): TriedDesign {
  const { design } = trial;
  return {
    ...foundOf(trial, question),
    isBase: design.key === "base",
    keepsLimits: scoreOf(trial, question).excess === 0,
    allowed: design.counts !== null && isAllowed(question.space, design.counts),
    finalist: finalists.includes(design),
    harm: searchHarm(trial, tried, question),
  };
}

/** Gives as much for less, or more for as much. */
function dominates(one: Trial, other: Trial, question: ImproveQuestion): boolean {
  const [mine, theirs] = [scoreOf(one, question).mean, scoreOf(other, question).mean];
  if (mine === null || theirs === null) return mine !== null;
  const gain = question.response.better === "less" ? theirs - mine : mine - theirs;
  const cheaper = other.design.spent! - one.design.spent!;
  return gain >= 0 && cheaper >= 0 && gain + cheaper > 0;
}

/**
 * What more of the total brings: the best design of the search for each of some totals and for no more than that, and the plan as it is, over days
 * that the search did not see. What takes least comes first.
 */
async function tradeOff(tried: readonly Trial[], question: ImproveQuestion, trials: Trials): Promise<Trial[]> {
  const { space, search, firstStage } = question;
  if (search.curve === 0) return [];
  const best = ranked(tried, question).map(({ design }) => design);
  const found = levelsOf(space, search.curve).map((level) =>
    best.find(({ spent }) => spent !== null && spent <= level),
  );
  const base = best.find(({ key, spent }) => key === "base" && spent !== null);
  const points = new Set([base, ...found].filter((design) => design !== undefined));
  const sorted = [...points].sort((a: CandidateDesign, b: CandidateDesign) => a.spent! - b.spent!);
  return trials.of(sorted, firstStage);
}
