import {
  type Fault,
  factorsAt,
  inWorld,
  type Plan,
  readPlan,
  spreadAt,
  type TextFiles,
  type UncertainFigure,
} from "../../asked/plan/index.ts";
import {
  basePlan,
  changedJson,
  latinHypercube,
  PLAIN_PROCEDURE,
  type Study,
  type Variant,
} from "../../asked/study/index.ts";
import { responsesOf, usualResponses } from "../../day/observations/index.ts";
import { harmResponses } from "../../days/results/index.ts";
import type { DoubtFigure, DoubtQuestion, FigureReadings, WorldCounts } from "./doubt.ts";

/** A sound study with what it was read from: the base plan's JSON, and what reads files for it and for the study. */
export interface DoubtSource {
  study: Study;
  base: { json: unknown; files: TextFiles };
  studyFiles: TextFiles;
}

export type DoubtReading = { question: DoubtQuestion; faults: [] } | { question: null; faults: Fault[] };

/** A variant as a file would write it whole, with its own figures. */
interface Written {
  name: string;
  json: Record<string, unknown>;
  files: TextFiles;
  figures: readonly UncertainFigure[];
}

/** Quantiles at 0 have no end. */
const MIN_SHARE = 1e-12;

/**
 * The study of worlds: in each, every figure that is not known is drawn once (Latin hypercube, McKay, Beckman and Conover 1979),
 * and every variant is simulated on the same days; another world has other days. A figure of the same name in several variants
 * is one figure.
 */
export function doubtQuestion(source: DoubtSource, counts: WorldCounts): DoubtReading {
  const variants = source.study.variants.map((variant) => writtenVariant(variant, source));
  const found = figuresOf(variants);
  const faults =
    found.length === 0 ? [nothingUncertain()] : [...contradictions(variants), ...tooFewWorlds(found, counts)];
  if (faults.length > 0) return { question: null, faults };
  const { planned, shareOf, faults: wrong } = drawnWorlds(variants, found, counts);
  if (wrong.length > 0) return { question: null, faults: wrong };
  const plans = planned.map(({ name, plan }) => asVariant(name, plan!));
  const figures = found.map((figure) => {
    const { json } = variants.find((variant) => variant.figures.some(({ name }) => name === figure.name))!;
    return drawn(
      figure,
      json,
      Array.from({ length: counts.worlds }, (_, world) => shareOf(figure.name, world)),
    );
  });
  return { question: questionOf(source.study, plans, figures, counts), faults: [] };
}

/** The plans alone, world by world, the variants of a world side by side: for whoever draws each day in a world of its own. */
export function plansOfWorlds(source: DoubtSource, counts: WorldCounts): { plans: Plan[]; faults: Fault[] } {
  const variants = source.study.variants.map((variant) => writtenVariant(variant, source));
  const { planned, faults } = drawnWorlds(variants, figuresOf(variants), counts);
  return { plans: planned.flatMap(({ plan }) => plan ?? []), faults };
}

function drawnWorlds(variants: readonly Written[], figures: readonly UncertainFigure[], counts: WorldCounts) {
  const shares = latinHypercube(figures.length, counts.worlds, counts.seed);
  const shareOf = (name: string, world: number) =>
    Math.max(MIN_SHARE, shares[figures.findIndex((figure) => figure.name === name)]![world]!);
  const planned = Array.from({ length: counts.worlds }, (_, world) =>
    variants.map((variant) => plannedIn(variant, world, (name) => shareOf(name, world))),
  ).flat();
  return { planned, shareOf, faults: planned.find(({ faults }) => faults.length > 0)?.faults ?? [] };
}

function questionOf(study: Study, variants: Variant[], figures: DoubtFigure[], counts: WorldCounts): DoubtQuestion {
  const { name, question, reader, confidence, procedure } = study;
  const { plan } = study.variants[0]!;
  const told = responsesAsked(study);
  const known = new Set(responsesOf(plan).map(({ key }) => key));
  const names = study.variants.map((variant) => variant.name);
  const asked: Study = {
    ...{ name, question, reader, confidence, seed: counts.seed, replications: counts.days, why: false, variants },
    kind: "what will it be",
    responses: [...new Set([...told, ...harmResponses(plan).filter((key) => known.has(key))])],
    factors: [],
    design: { kind: "list" },
    procedure: { ...PLAIN_PROCEDURE, blocks: { variants: names.length, days: counts.days } },
  };
  const { day, week } = plan;
  return {
    ...{
      study: asked,
      responses: told,
      plan,
      figures,
      variants: names,
      counts,
      name,
      better: procedure.selection?.better ?? null,
    },
    calendar: { startClockSeconds: day.startClockSeconds, period: week === undefined ? "day" : "week" },
  };
}

/** What decides comes first. */
function responsesAsked({ responses, variants, procedure }: Study): string[] {
  const named = responses.length > 0 ? responses : variants.flatMap(({ plan }) => usualResponses(plan));
  const { selection } = procedure;
  return [...new Set([...(selection === null ? [] : [selection.response]), ...named])];
}

/** As the study's variant is built, before it is read. A variant of a plan of its own names it under "plan". */
function writtenVariant({ name, set, insert, remove, plan }: Variant, { base, studyFiles }: DoubtSource): Written {
  const { plan: path, ...own } = set;
  const from = path === undefined ? base : basePlan({ plan: path }, studyFiles)!;
  const { json } = changedJson(from.json, { set: own, insert, remove });
  return { name, json: json as Record<string, unknown>, files: from.files!, figures: plan.uncertain ?? [] };
}

function figuresOf(variants: readonly Written[]): UncertainFigure[] {
  const byName = new Map<string, UncertainFigure>();
  for (const figure of variants.flatMap(({ figures }) => figures)) {
    const known = byName.get(figure.name);
    const paths = [...new Set([...(known?.paths ?? []), ...figure.paths])];
    byName.set(figure.name, known === undefined ? figure : { ...known, paths });
  }
  return [...byName.values()];
}

/** One name in two variants is one figure, so that both must say the same of it. */
function contradictions(variants: readonly Written[]): Fault[] {
  const all = variants.flatMap(({ name, figures }) => figures.map((figure) => ({ variant: name, figure })));
  const told = new Set<string>();
  return all.flatMap(({ variant, figure }) => {
    const first = all.find((other) => other.figure.name === figure.name)!;
    const same = JSON.stringify(first.figure.factor) === JSON.stringify(figure.factor);
    if (same || told.has(figure.name)) return [];
    told.add(figure.name);
    const found = `'${figure.name}' may be something else than in variant '${first.variant}'`;
    const remedy = "give one of the two another name, or both the same factor";
    return [{ path: `variant '${variant}': uncertain`, found, allowed: "one range for each name", remedy }];
  });
}

function nothingUncertain(): Fault {
  const remedy =
    'write what is not known into the plan, such as "uncertain": [{ "name": "skinning\'s cycle time", "paths": ["line.skinning.cycle"], "guess": "a third" }]';
  return { path: "uncertain", found: "the plan says of no figure that it is uncertain", allowed: "", remedy };
}

/** A curve through the worlds needs more of them than there are figures. */
function tooFewWorlds(figures: readonly UncertainFigure[], { worlds }: WorldCounts): Fault[] {
  const least = 2 * figures.length;
  if (worlds >= least) return [];
  const found = `${worlds} worlds for ${figures.length} uncertain figures`;
  return [{ path: "--worlds", found, allowed: `${least} or more`, remedy: "draw more worlds" }];
}

function plannedIn({ name, json, files, figures }: Written, world: number, shareOf: (name: string) => number) {
  const factored = figures.map((figure) => ({ paths: figure.paths, factors: factorsAt(figure, shareOf(figure.name)) }));
  const called = `${name}, world ${world + 1}`;
  const made = inWorld(json, factored);
  const reading = made.faults.length > 0 ? { plan: null, faults: made.faults } : readPlan(made.json, files);
  const words = figures.map((figure, index) => `${figure.name} x ${factored[index]!.factors[0]!.toPrecision(3)}`);
  const faults = reading.faults.map((fault) => ({ ...fault, path: `${called} (${words.join(", ")}): ${fault.path}` }));
  return { name: called, plan: reading.plan, faults };
}

function asVariant(name: string, plan: Plan): Variant {
  return { name, levels: [], set: {}, insert: [], remove: [], plan };
}

function drawn(figure: UncertainFigure, json: unknown, shares: readonly number[]): DoubtFigure {
  const { name, kind, note, paths, factor } = figure;
  const all = shares.map((share) => factorsAt(figure, share));
  const apart = factor.family === "draws" ? paths : paths.slice(0, 1);
  const factors = apart.map((_, path) => all.map((each) => each[path]!));
  return { name, kind, note, paths, factors, readings: readingsOf(figure, json, factors[0]!) };
}

/** Of a figure that stands there without any spread one reading would tell all: nothing is said of it. */
function readingsOf({ paths, readings }: UncertainFigure, json: unknown, factors: number[]): FigureReadings | null {
  const spread = spreadAt(json, paths[0]!);
  const secondsEach = spread?.meanSeconds ?? null;
  if (readings !== null) return { taken: readings, known: readings, secondsEach };
  const mean = factors.reduce((sum, value) => sum + value, 0) / factors.length;
  const variance = factors.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (factors.length - 1);
  if (spread === null || spread.cv === 0 || variance === 0) return null;
  return { taken: null, known: (spread.cv * mean) ** 2 / variance, secondsEach };
}
