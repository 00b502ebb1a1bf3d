import { dossierDocuments, dossierDrawing, dossierTables, ownerLines, wrappedLines } from "../../viz/index.ts";
import type { Study } from "../asked/study/index.ts";
import {
  type RunFile,
  type StudyResults,
  safeFileName,
  stableJson,
  tableRows,
  tableWidths,
  workbook,
} from "../days/results/index.ts";
import {
  type Dossier,
  dossierOf,
  firstWeeksPlan,
  type SizedKind,
  sizeKinds,
  trialStudy,
} from "../questions/dossier/index.ts";
import { guessesOf } from "../questions/size/index.ts";
import { NoBrowser, openBrowser, pagePrint, sheetPrint } from "./browser.ts";
import { type InputFile, refused } from "./inputs.ts";
import { checkRunFolder, writeFolder } from "./runFolder.ts";
import { counted, type Line, plainLine } from "./terminal.ts";

/** Heads that are simulated at most where nobody says how many days: minutes on two cores. */
const MAX_HEADS = 1_000_000;
const MIN_DAYS = 3;
const MAX_DAYS = 10;

export interface DossierAsked {
  file: InputFile;
  seed: string;
  replications: number | undefined;
}

/** Everything that a dossier is made from before a day is simulated; `BadInput` with every fault. */
export function dossierStudy({ file, seed, replications }: DossierAsked): { kinds: SizedKind[]; study: Study } {
  const { kinds, faults } = sizeKinds(file.json, file.files);
  if (kinds === null) throw refused(file.path, faults);
  const heads = kinds.reduce((sum, { design }) => sum + design.rate.headsPerDay * 2, 0);
  const days = replications ?? Math.max(MIN_DAYS, Math.min(MAX_DAYS, Math.floor(MAX_HEADS / heads)));
  return { kinds, study: trialStudy(kinds, file.files, seed, days) };
}

/** A dossier and what a browser was missing for; the folder is written whole or not at all. */
export async function writeDossier(
  folder: string,
  {
    kinds,
    results,
    file,
    overwrite,
    uncertain,
  }: { kinds: readonly SizedKind[]; results: StudyResults; file: InputFile; overwrite: boolean; uncertain: boolean },
): Promise<{ lines: Line[]; dossier: string; missing: NoBrowser | null }> {
  const dossier = dossierOf(kinds, results);
  const documents = dossierDocuments(dossier);
  const drawing = dossierDrawing(dossier);
  const { prints, missing } = await printed(documents, drawing);
  const tables = await workbook(
    dossierTables(dossier).map(({ name, columns, rows }) => ({
      ...{ name, rows: tableRows({ columns, rows }), frozen: 1, widths: tableWidths({ columns }) },
    })),
  );
  const found = stableJson(figuresOnly(dossier));
  const files: RunFile[] = [
    ...documents.map(({ name, html }) => ({ path: `${name}.html`, text: html })),
    ...prints.map(({ name, bytes }) => ({ path: `${name}.pdf`, bytes })),
    { path: "layout.svg", text: drawing.svg },
    { path: "tables.xlsx", bytes: tables },
    { path: "demand.json", text: file.text },
    { path: "dossier.json", text: found },
    ...planFiles(dossier, uncertain ? file : null),
  ];
  await writeFolder(folder, files, overwrite);
  const owner = prints.find(({ name }) => name === documents[0]!.name);
  return {
    lines: linesOf(ownerLines(dossier), owner === undefined ? 0 : pagesOf(owner.bytes)),
    dossier: found,
    missing,
  };
}

/** The plan of every kind, and of the one to build with people who still learn; with a demand, what it left to be assumed as guesses in each. */
function planFiles({ kinds, choice }: Dossier, demand: InputFile | null): RunFile[] {
  const guessed = (plan: Record<string, unknown>) =>
    demand === null ? plan : { ...plan, uncertain: guessesOf(plan, demand.json, demand.files) };
  const text = (plan: unknown) => `${JSON.stringify(guessed(plan as Record<string, unknown>), null, 2)}\n`;
  const told = kinds[choice.row ?? 0]!;
  return [
    ...kinds.map(({ kind }) => ({ path: `plans/${safeFileName(kind.name)}.json`, text: text(kind.design.plan) })),
    { path: "plans/first-weeks.json", text: text(firstWeeksPlan(told.kind, told.ramp)) },
  ];
}

/** What was found, without the plans and demands, which have files of their own. */
function figuresOnly({ kinds, ...rest }: Dossier): unknown {
  return {
    ...rest,
    kinds: kinds.map(({ kind, ...told }) => ({
      ...told,
      kind: { name: kind.name, kind: kind.kind, shifts: kind.shifts, rate: kind.design.rate },
    })),
  };
}

interface Print {
  name: string;
  bytes: Uint8Array;
}

/** Without a browser the HTML is written nevertheless, and it is said what is missing. */
async function printed(
  documents: readonly { name: string; html: string }[],
  drawing: Parameters<typeof sheetPrint>[1],
): Promise<{ prints: Print[]; missing: NoBrowser | null }> {
  try {
    const browser = await openBrowser();
    try {
      const prints: Print[] = [];
      for (const { name, html } of documents) prints.push({ name, bytes: await pagePrint(browser, html) });
      prints.push({ name: "layout", bytes: await sheetPrint(browser, drawing) });
      return { prints, missing: null };
    } finally {
      await browser.close();
    }
  } catch (error) {
    if (error instanceof NoBrowser) return { prints: [], missing: error };
    throw error;
  }
}

/** Pages of a PDF as this program has it printed: one page object each. */
function pagesOf(bytes: Uint8Array): number {
  return (
    Buffer.from(bytes)
      .toString("latin1")
      .match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0
  );
}

/** The answer on the terminal; the page tells more. */
function linesOf({ verdict, words, next }: ReturnType<typeof ownerLines>, pages: number): Line[] {
  return [
    { line: verdict, style: "bold" },
    ...words.flatMap((each) => wrappedLines(each, "  ")).map(plainLine),
    ...(pages === 0 ? [] : [plainLine(`The owner's document has ${counted(pages, "page")}.`)]),
    ...["", "What to do next:", ...next.flatMap((each) => wrappedLines(each, "  "))].map(plainLine),
  ];
}

/** Refuses a folder that cannot take a dossier, before time is spent on it. */
export const checkDossierFolder = checkRunFolder;
