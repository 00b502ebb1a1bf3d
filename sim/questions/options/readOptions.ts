import {
  type Fault,
  formatPath,
  isRecord,
  NO_FILES,
  PARSING,
  type Plan,
  soundKeys,
  type TextFiles,
  tellable,
  zodFaults,
} from "../../asked/plan/index.ts";
import { basePlan, readStudy, type Study } from "../../asked/study/index.ts";
import { responsesOf } from "../../day/observations/index.ts";
import { harmResponses } from "../../days/results/index.ts";
import type { OfferCost } from "./appraise.ts";
import { CASH_RESPONSES } from "./cashOfDay.ts";
import { crewChange } from "./crewChange.ts";
import { type OptionsFile, optionsFile } from "./schema/optionsFile.ts";

/** A checked line-up: the study that simulates it (the plan as it is first), and what each option costs. */
export interface OptionsQuestion {
  study: Study;
  offerCosts: OfferCost[];
  interest: number;
  daysPerYear: number;
  currency: string;
}

export type OptionsReading = { question: OptionsQuestion; faults: [] } | { question: null; faults: Fault[] };

/** Checks the JSON of an options file, its plan and the plan of every option; all faults come at once. */
export function readOptions(written: unknown, files: TextFiles = NO_FILES): OptionsReading {
  const { json, fault } = tellable(written);
  if (fault !== null) return { question: null, faults: [fault] };
  const shape = optionsFile().safeParse(json, PARSING);
  if (!shape.success) {
    const faults = [...zodFaults(shape.error.issues), ...partFaults(soundKeys(json, shape.error.issues), files)];
    return { question: null, faults };
  }
  const file = shape.data;
  const crews = crewChanges(file, json, files);
  const reading = readStudy(studyJson(file, json, crews), files);
  const faults = [
    ...crews.flatMap((change) => change.faults),
    ...reading.faults.flatMap((fault) => ofOptions(fault, file)),
  ];
  if (reading.study === null) return { question: null, faults };
  const { plan } = reading.study.variants[0]!;
  faults.push(...moneyFaults(file, plan));
  if (faults.length > 0) return { question: null, faults };
  const { interest, daysPerYear } = file;
  const offerCosts = file.options.map((option): OfferCost => {
    const { price, life, residual, servicePerYear } = option;
    return {
      price: price.amount,
      lifeYears: life,
      residual: residual?.amount ?? 0,
      servicePerYear: servicePerYear?.amount ?? 0,
    };
  });
  return {
    question: {
      study: { ...reading.study, responses: responsesFor(reading.study), why: false },
      offerCosts,
      interest,
      daysPerYear,
      currency: plan.money!.currency,
    },
    faults: [],
  };
}

/** For a file with faults: also what is wrong with its plan, so that all faults are told at once. */
function partFaults(sound: Record<string, unknown> | null, files: TextFiles): Fault[] {
  if (sound?.plan === undefined) return [];
  const { study, faults } = readStudy({ name: "a line-up", plan: sound.plan }, files);
  return study === null ? faults : moneyFaults({ options: [] }, study.variants[0]!.plan);
}

/** What the cash is made of, and what else an owner looks at. Without prices in today's plan there is no margin. */
function responsesFor({ variants }: Study): string[] {
  const keys = variants.map(({ plan }) => new Set(responsesOf(plan).map(({ key }) => key)));
  const cash = CASH_RESPONSES.filter((key) =>
    key === "margin" ? keys[0]!.has(key) : keys.some((own) => own.has(key)),
  );
  return [...new Set([...cash, "headsPerHour", "finish", "overtime", ...harmResponses(variants[0]!.plan)])];
}

function crewChanges({ options }: OptionsFile, json: unknown, files: TextFiles) {
  const base = basePlan(json, files)?.json ?? null;
  return options.map(({ crew = {}, set = {} }, index) => crewChange(crew, base, ["options", index], set));
}

/** The options as the variants of a study; changes as they were written. */
function studyJson(file: OptionsFile, json: unknown, crews: readonly { set: Record<string, unknown> }[]): unknown {
  const written = isRecord(json) && Array.isArray(json.options) ? json.options : [];
  const { name, question, baseName, seed, replications, confidence } = file;
  const list = file.options.map((option, index) => {
    const { insert, remove } = written[index] as Record<string, unknown>;
    const set = { ...option.set, ...crews[index]!.set };
    return {
      name: option.name,
      ...(Object.keys(set).length === 0 ? {} : { set }),
      ...(insert === undefined ? {} : { insert }),
      ...(remove === undefined ? {} : { remove }),
    };
  });
  const { plan } = json as { plan: unknown };
  return { name, question, plan, baseName, seed, replications, confidence, reader: "owner", design: { list } };
}

/** Where the study's list stands, the file has its options. */
function ofOptions(fault: Fault, { options }: OptionsFile): Fault[] {
  const path = fault.path.replace(/^design\.list/u, "options").replace(/^variant '/u, "option '");
  const empty = options.find((_, index) => path === `options[${index}]`);
  if (empty === undefined) return [{ ...fault, path }];
  // The only fault of a whole option is that it changes nothing; a crew that cannot be changed has been told of.
  if (empty.crew !== undefined) return [];
  return [{ ...fault, path, allowed: "set, insert, remove or crew" }];
}

function moneyFaults({ options }: Pick<OptionsFile, "options">, { money }: Plan): Fault[] {
  if (money === null) {
    const remedy = 'give the plan "money" with prices, and "pay" to its crews';
    return [{ path: "plan", found: "the plan reckons no money", allowed: "a plan with money", remedy }];
  }
  return options.flatMap((option, index) =>
    (["price", "residual", "servicePerYear"] as const).flatMap((key) => {
      const currency = option[key]?.currency;
      if (currency === undefined || currency === money.currency) return [];
      const found = `${currency}, but the plan reckons in ${money.currency}`;
      return [
        {
          path: formatPath(["options", index, key]),
          found,
          allowed: money.currency,
          remedy: "give the amount in that currency",
        },
      ];
    }),
  );
}
