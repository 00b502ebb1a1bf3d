import { existsSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { type MakerMark, makerDifference } from "../wire/index.ts";
import { JournalProblem } from "./journalProblem.ts";
import { HEADER } from "./partialFolder.ts";

const SHAPE = z.strictObject({
  format: z.literal(1),
  gambrel: z.string(),
  arithmetic: z.string(),
  /** Of what the days depend on beside their maker: `sourceDigest` of a study, or one over a question. */
  digest: z.string(),
});

/** What the days of a journal were made from and by. */
export type JournalHeader = z.output<typeof SHAPE>;

export function journalHeader(digest: string, maker: MakerMark): JournalHeader {
  return { format: 1, ...maker, digest };
}

/** Null when there is none; a `JournalProblem` when it cannot be read. */
export function readHeader(folder: string): JournalHeader | null {
  const path = join(folder, HEADER);
  if (!existsSync(path)) return null;
  try {
    return SHAPE.parse(JSON.parse(readFileSync(path, "utf8")));
  } catch {
    throw new JournalProblem(`${path}: this is not a header that this version can read; ${BEGIN_ANEW}.`);
  }
}

/** Whole or not at all. */
export function writeHeader(folder: string, header: JournalHeader): void {
  const path = join(folder, HEADER);
  // One that a kill left behind, or a link put there, is not written to.
  rmSync(`${path}-new`, { force: true });
  writeFileSync(`${path}-new`, `${JSON.stringify(header, null, 2)}\n`, { flag: "wx" });
  renameSync(`${path}-new`, path);
}

/** What a journal's days were simulated for, each with what of it a change forbids. */
const CHANGED = {
  study: "plan, variants, seed, procedure, responses or traces are not those of now",
  question: "its file, the plan or the seed are not those of now",
} as const;

export type JournalOf = keyof typeof CHANGED;

/** Throws a `JournalProblem` when days of the one must not be mixed with days of the other. */
export function refuseOther(folder: string, there: JournalHeader, here: JournalHeader, of: JournalOf): void {
  const difference = makerDifference(there, here);
  if (difference !== null) {
    throw new JournalProblem(
      `${folder}: the unfinished run was made by another program (${difference}); ${BEGIN_ANEW}.`,
    );
  }
  if (there.digest !== here.digest) {
    throw new JournalProblem(`${folder}: the unfinished run is of another ${of} (${CHANGED[of]}); ${BEGIN_ANEW}.`);
  }
}

export const BEGIN_ANEW = "put things back, or add --overwrite without --resume to begin anew";
