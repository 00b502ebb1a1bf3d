import { isRecord, listWords, type Plan } from "../../asked/plan/index.ts";
import { fileSteps, ownTime, type Step, steps, workplace } from "../../day/line/index.ts";
import { writtenMeanOf } from "../../maths/varying/index.ts";
import { does, type KindThat } from "../../text/kinds/index.ts";
import { type Reading, read, refused } from "../../text/units/index.ts";
import { assigned, countOf, findName, namedOne } from "./named.ts";
import type { PlanDraft } from "./planDraft.ts";
import { cannot, inWords, type Told, told } from "./told.ts";

const MAX_PEOPLE = 1000;

type WorkStep = Step & { kind: KindThat<"work"> };

/** A crew, and the station by which it was named where it was not its own name. */
interface Named {
  crew: string;
  station: WorkStep | null;
}

/** "evisceration=2": so many people of the crew are missing, and its positions stay. */
export function ill(draft: PlanDraft, written: string): Reading<Told> {
  const asked = crewAndCount(draft, written, "--ill evisceration=2");
  if (asked.fault !== null) return asked;
  const { crew, count } = asked.value;
  const fewer = changePeople(draft, crew, -count);
  if (fewer.fault !== null) return fewer;
  const paid = paysPeople(draft.plan, crew)
    ? ["Who is ill is not paid in these figures: add sick pay where you owe it."]
    : [];
  return told(`${inWords(count)} ill at ${crew}`, [...calledBy(asked.value, "ill"), ...paid]);
}

/** "skinning=1": so many more people, with positions where those that there are have people already. */
export function more(draft: PlanDraft, written: string): Reading<Told> {
  const asked = crewAndCount(draft, written, "--more skinning=1");
  if (asked.fault !== null) return asked;
  const { crew, count } = asked.value;
  const added = changePeople(draft, crew, count);
  if (added.fault !== null) return added;
  return told(`${inWords(count)} more at ${crew}`, [
    ...calledBy(asked.value, "more"),
    ...positionNotes(draft, asked.value, count),
  ]);
}

/** "hanging:evisceration" or "hanging:evisceration=2". */
export function move(draft: PlanDraft, written: string): Reading<Told> {
  const example = "--move hanging:evisceration";
  const [, from = "", to = "", number = "1"] = /^([^:]+):([^:=]+)(?:=(.+))?$/.exec(written) ?? [];
  if (from === "")
    return refused(
      `'${written}' does not say who moves where`,
      "two crews with ':' between them",
      `write for example ${example}`,
    );
  const count = countOf(number.trim(), MAX_PEOPLE, `${example}=2`);
  if (count.fault !== null) return count;
  const [source, target] = [crewNamed(draft.plan, from.trim()), crewNamed(draft.plan, to.trim())];
  if (source.fault !== null) return source;
  if (target.fault !== null) return target;
  if (source.value.crew === target.value.crew)
    return cannot(
      `both are the crew '${target.value.crew}', whose people go where they are needed already`,
      "name two crews",
    );
  const taken = changePeople(draft, source.value.crew, -count.value);
  if (taken.fault !== null) return taken;
  const given = changePeople(draft, target.value.crew, count.value);
  if (given.fault !== null) return given;
  return told(`${inWords(count.value)} moved from ${source.value.crew} to ${target.value.crew}`, [
    ...calledBy(source.value, "moved"),
    ...calledBy(target.value, "moved"),
    ...positionNotes(draft, target.value, count.value),
  ]);
}

const MAX_PERCENT = 300;

/** "10%" or "-5%": everybody's pay so much higher or lower; overtime is paid by it, too. */
export function wages(draft: PlanDraft, written: string): Reading<Told> {
  const percent = Number(/^([+-]?\d{1,3}(?:\.\d{1,2})?) ?%$/.exec(written)?.[1]);
  if (!(percent !== 0 && percent > -100 && percent <= MAX_PERCENT))
    return refused(
      `'${written}' is not a percentage here`,
      `above -100 % and at most ${MAX_PERCENT} %, and not 0 %`,
      "write for example --wages 10%",
    );
  const paid = draft.list("crews").filter(({ pay }) => typeof pay === "string");
  if (paid.length === 0) return cannot("no crew of this plan has a pay", "give the crews their pay in the plan first");
  for (const { name, pay } of paid) {
    const [, amount = "", unit = ""] = /^\s*([\d.]+(?:e[+-]?\d+)?)(.*)$/i.exec(String(pay)) ?? [];
    draft.put(
      ["crews", String(name), "pay"],
      `${Number((Number(amount) * (1 + percent / 100)).toPrecision(12))}${unit}`,
    );
  }
  return told(`wages ${Math.abs(percent)} % ${percent > 0 ? "higher" : "lower"}`);
}

function crewAndCount(draft: PlanDraft, written: string, example: string): Reading<Named & { count: number }> {
  const parts = assigned(written, example);
  if (parts.fault !== null) return parts;
  const named = crewNamed(draft.plan, parts.value[0]);
  if (named.fault !== null) return named;
  const count = countOf(parts.value[1], MAX_PEOPLE, example);
  return count.fault === null ? read({ ...named.value, count: count.value }) : count;
}

/** A crew by its name, or by that of a station where it alone works. */
export function crewNamed(plan: Plan, written: string): Reading<Named> {
  const names = plan.crews.map(({ name }) => name);
  if (names.length === 0) return cannot("this plan has no crews, so it knows of no people", "give it crews first");
  const all = workSteps(plan);
  const stationName = findName(
    written,
    all.map(({ name }) => name),
  );
  const station = findName(written, names) === null ? all.find(({ name }) => name === stationName) : undefined;
  if (station === undefined) {
    const crew = namedOne(written, names, "a crew");
    return crew.fault === null ? read({ crew: crew.value, station: null }) : crew;
  }
  const { crews } = workplace(station);
  if (crews.length === 1) return read({ crew: crews[0]!, station });
  if (crews.length === 0)
    return refused(
      `nobody works at '${station.name}', it is a machine`,
      listWords(plan.crews.map((each) => each.name)),
      "name a crew",
    );
  return refused(`several crews work at '${station.name}'`, listWords(crews), "name one of them");
}

function calledBy({ crew, station }: Named, what: string): string[] {
  return station === null
    ? []
    : [`'${station.name}' is worked by the crew '${crew}': it has the people counted as ${what}.`];
}

/** In every shift that the crew works. */
function changePeople(draft: PlanDraft, crew: string, by: number): Reading<null> {
  const written = draft.at("crews", crew, "people");
  const byShift = isRecord(written) ? (written as Record<string, number>) : { "": Number(written) };
  const working = Object.entries(byShift).filter(([, people]) => people > 0);
  const least = Math.min(...working.map(([, people]) => people));
  if (working.length === 0) return cannot(`the crew '${crew}' has nobody in any shift`, "name another crew");
  if (least + by < 0) return refused(`the crew '${crew}' has only ${inWords(least)}`, `1 to ${least}`, "name fewer");
  const changed = Object.fromEntries(
    Object.entries(byShift).map(([shift, people]) => [shift, people > 0 ? people + by : people]),
  );
  draft.put(["crews", crew, "people"], isRecord(written) ? changed : changed[""]);
  return read(null);
}

function paysPeople(plan: Plan, crew: string): boolean {
  return plan.crews.find(({ name }) => name === crew)?.payPerSecond != null;
}

/** Adds positions as far as there are more people than the crew's positions take, and says where. */
function positionNotes(draft: PlanDraft, { crew, station }: Named, count: number): string[] {
  const own = workSteps(draft.plan).filter((step) => workplace(step).crews.includes(crew));
  const at = station ?? placeFor(own, crew);
  if (at === null) return [];
  const manned = own.reduce((sum, step) => sum + positionsOf(draft, step) * workplace(step).peoplePerPosition, 0);
  const lacking = Math.min(count, leastPeople(draft, crew) - manned);
  if (lacking <= 0) return [];
  const { peoplePerPosition } = workplace(at);
  const positions = Math.floor(lacking / peoplePerPosition);
  if (positions === 0)
    return [`No position was added: one at '${at.name}' takes ${inWords(peoplePerPosition)} people.`];
  draft.put([...fileSteps(at), "positions"], positionsOf(draft, at) + positions);
  const what = positions === 1 ? "One position was" : `${capital(inWords(positions))} positions were`;
  return [
    `${what} added at '${at.name}', since all positions of the crew '${crew}' had people. Check that there is room for it.`,
  ];
}

/** Where another person of a crew goes: to the station of the crew's name, else to its slowest on the line. */
function placeFor(own: readonly WorkStep[], crew: string): WorkStep | null {
  const named = own.find(({ name }) => name === crew);
  const onLine = own.filter((step) => !does(step, "send heads on") || !step.of.offLine);
  const slowest = (onLine.length > 0 ? onLine : own).reduce<WorkStep | null>(
    (slow, step) => (slow === null || secondsEach(step) > secondsEach(slow) ? step : slow),
    null,
  );
  return named ?? slowest;
}

/** Of one head, or crate; all positions at work. */
function secondsEach(step: WorkStep): number {
  const time = ownTime(step);
  return time === null ? 0 : writtenMeanOf(time) / workplace(step).positions;
}

function leastPeople(draft: PlanDraft, crew: string): number {
  const written = draft.at("crews", crew, "people");
  const all = isRecord(written) ? Object.values(written).map(Number) : [Number(written)];
  return Math.min(...all.filter((people) => people > 0));
}

function positionsOf(draft: PlanDraft, step: WorkStep): number {
  return Number(draft.at(...fileSteps(step), "positions") ?? workplace(step).positions);
}

function workSteps(plan: Plan): WorkStep[] {
  return steps(plan).filter((step): step is WorkStep => does(step, "work"));
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
