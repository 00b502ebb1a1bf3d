import { jStat, power } from "../../maths/numeric/index.ts";
import type { Demand, PlantDesign } from "../size/index.ts";

const WEEKS_OF_YEAR = 52;

/** One post: a crew of the plan. */
export interface StaffPost {
  name: string;
  /** What its people must know. */
  skills: string[];
  /** Null where nobody needs to be kept out of another: a crew of one step, or those who repair. */
  zone: string | null;
  /** In each shift. */
  people: number;
  load: number;
}

/** People by post, and how many must be employed for that. */
export interface StaffingPlan {
  posts: StaffPost[];
  shifts: number;
  /** At their posts in each shift. */
  atPosts: number;
  /** More in each shift, who relieve the others: posts x time relieved / (shift - that time). */
  relief: number;
  /** So many must be due in a shift for enough to come on the wanted share of days (binomial). */
  due: number;
  /** On the books, leave covered, all shifts. */
  employed: number;
  /** Paid hours for each hour at a post. */
  paidPerPost: number;
}

/**
 * People to employ. Relief: posts / (1 - relieved share), rounded up. Absence: the fewest who are due so that enough come (binomial).
 * Leave: weeks of leave that the weeks without work do not take, over the working weeks.
 */
export function staffingOf({ staff, years, day }: Demand, { crews, people, shifts }: PlantDesign): StaffingPlan {
  const shiftSeconds = day.shifts.reduce((sum, { from, to }) => sum + to - from, 0) / shifts;
  const onDuty = withRelief(people, staff.relief / shiftSeconds);
  const due = dueFor(onDuty, 1 - staff.absence, staff.enough);
  const away = Math.max(0, staff.leave - (WEEKS_OF_YEAR - years.weeks)) / years.weeks;
  const employed = Math.ceil((due * shifts) / (1 - Math.min(away, MAX_AWAY)) - ROUNDING);
  return {
    posts: crews.map(({ name, zone, people: hands, steps, load }) => ({
      ...{ name, skills: steps, zone, people: hands, load },
    })),
    ...{ shifts, atPosts: people, relief: onDuty - people, due, employed },
    paidPerPost: people === 0 ? 0 : employed / (people * shifts),
  };
}

const ROUNDING = 1e-9;
const MAX_AWAY = 0.9;

/** Posts always manned while each person is off for this share: posts / (1 - share), rounded up. */
export function withRelief(posts: number, share: number): number {
  return Math.ceil(posts / (1 - Math.min(share, MAX_AWAY)) - ROUNDING);
}

/**
 * The fewest people due so that at least `needed` come with this probability, each present by itself with `presence` (binomial; 18 needed
 * at 0.94 and 0.95 take 21).
 */
export function dueFor(needed: number, presence: number, enough: number): number {
  if (presence >= 1 || needed === 0) return needed;
  const most = Math.ceil(needed / Math.max(presence, 0.05)) * 4;
  let due = needed;
  while (due < most && atLeast(needed, due, presence) < enough) due++;
  return due;
}

/** P(at least `needed` of `due` come), by the incomplete beta function (Abramowitz and Stegun 26.5.24). */
function atLeast(needed: number, due: number, presence: number): number {
  return jStat.beta.cdf(presence, needed, due - needed + 1);
}

/** One week of the way up to the rated speed. */
export interface RampWeek {
  week: number;
  /** Of the rated speed, mean of the week. */
  share: number;
  heads: number;
  /** Whose people set the pace last in it; "" where nobody does any more. */
  slowest: string;
}

const MAX_WEEKS = 26;

/**
 * Weeks until everybody keeps up. Somebody who has done n heads works at (n / known)^-b of the usual speed while n < known, b = log2 of the
 * learning rate (Wright 1936, read for units). A post that is loaded by half keeps up at half speed: the line goes at the least of speed / load,
 * at most 1, day by day; its heads are what people learn by. Off the line nobody sets the pace.
 */
export function rampUp({ staff, week, steps }: Demand, { stations, crews, rate }: PlantDesign): RampWeek[] {
  const exponent = Math.log2(staff.learning);
  const offLine = steps.filter((step) => step.offLine).map(({ name }) => name);
  const learners = stations
    .filter(({ name, work }) => work === "manual" && !offLine.includes(name))
    .map(({ name, crew, load, visitsPerHead, positions }) => {
      const post = crews.find((each) => each.name === crew);
      return { name, perHead: visitsPerHead / positions, load: Math.max(load, post?.load ?? 0), done: staff.done };
    });
  const dailyHeads = rate.headsPerWeek / week.days;
  const weeks: RampWeek[] = [];
  while (weeks.length < MAX_WEEKS && (weeks.at(-1)?.share ?? 0) < 1) {
    let [shares, slowest] = [0, ""];
    for (let day = 0; day < week.days; day++) {
      const paces = learners.map(({ done, load }) => speedShare(done, staff.known, exponent) / load);
      const share = Math.min(1, ...paces);
      if (share < 1) slowest = learners[paces.indexOf(share)]!.name;
      shares += share;
      for (const learner of learners) learner.done += share * dailyHeads * learner.perHead;
    }
    const share = shares / week.days;
    weeks.push({ week: weeks.length + 1, share, heads: share * rate.headsPerWeek, slowest });
  }
  return weeks;
}

/** Of the usual speed, of somebody who has done so many heads. */
export function speedShare(done: number, known: number, exponent: number): number {
  return done >= known ? 1 : 1 / power(done / known, exponent);
}
