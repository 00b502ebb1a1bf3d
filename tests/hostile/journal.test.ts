import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DaySimulator, daySource } from "../../sim/days/run/index.ts";
import { JournalProblem, openJournal } from "../../sim/days/run/journal/index.ts";
import { makerMark } from "../../sim/days/run/wire/index.ts";
import { temporaryFolder } from "../support/temporaryFolder.ts";
import { threeVariants } from "../support/threeVariants.ts";
import badLines from "./corpus/journal.json" with { type: "json" };

const SOURCE = daySource(threeVariants(), "none", false);
const { days: DAYS } = new DaySimulator(SOURCE).simulateBatch({ variant: 0, first: 1, count: 3 });

const open = (top: string, resume: boolean) =>
  openJournal(join(top, "run"), SOURCE, { maker: makerMark("1"), resume, overwrite: false });

/** A folder with the journal of a run that was stopped after three days, and the bytes of its days. */
function stopped(): { top: string; file: string; bytes: Buffer } {
  const top = temporaryFolder();
  const journal = open(top, false);
  for (const day of DAYS) journal.note(day);
  journal.keep();
  const file = join(top, "run.partial", "journal.jsonl");
  return { top, file, bytes: readFileSync(file) };
}

describe("a journal that was tampered with", () => {
  it.each(badLines.map(({ name, line }) => [name, line]))("is refused where a line is wrong: %s", (_, line) => {
    const { top, file, bytes } = stopped();
    writeFileSync(file, Buffer.concat([bytes, Buffer.from(`${line}\n`), bytes]));
    expect(() => open(top, true)).toThrow(JournalProblem);
    expect(() => open(top, true)).toThrow(/journal\.jsonl: line 4 is damaged; put things back, or add --overwrite/);
  });

  it("is refused or read, whatever bytes are changed, and a day that is read is one of the run's shape", () => {
    const { top, file, bytes } = stopped();
    const edit = fc.tuple(fc.nat(bytes.length - 1), fc.integer({ min: 0, max: 255 }));
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 8 }), (edits) => {
        const changed = Buffer.from(bytes);
        for (const [at, byte] of edits) changed[at] = byte;
        writeFileSync(file, changed);
        try {
          const journal = open(top, true);
          for (const { variant, values } of journal.known) {
            expect(variant).toBeLessThan(SOURCE.plans.length);
            expect(values).toHaveLength(SOURCE.keys.length);
          }
          journal.keep();
        } catch (error) {
          expect(error).toBeInstanceOf(JournalProblem);
        }
      }),
      { seed: 20270301, numRuns: 300 },
    );
  });
});
