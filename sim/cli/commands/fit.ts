import { basename } from "node:path";
import { DANGERS_IN_SHORT } from "../../../viz/report/cautions.ts";
import { formatFault } from "../../asked/plan/index.ts";
import { stableJson } from "../../days/results/index.ts";
import { fitColumn, planFragment, readTimes } from "../../questions/fit/index.ts";
import { BadInput } from "../badInput.ts";
import { type Ceilings, ceilingsOf } from "../ceilings.ts";
import { checkRunFolder } from "../checkRunFolder.ts";
import type { FitResults } from "../fitResults.ts";
import { fitSummary, manyTestsWords } from "../fitSummary.ts";
import { readNamedText } from "../inputFile.ts";
import type { Terminal } from "../terminal.ts";

export interface FitCommandOptions {
  unit?: string;
  by?: string;
  samples: number;
  seed: string;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Fits every column of a table of times; writes a folder only when one is named. */
export async function fitCommand(terminal: Terminal, path: string, options: FitCommandOptions): Promise<void> {
  const { seed, samples, out, overwrite = false, json } = options;
  const { columns, passedOver, faults } = readTimes(readNamedText(path, ceilingsOf(options).megabytes), {
    unit: options.unit ?? null,
    by: options.by ?? null,
  });
  if (columns === null) throw new BadInput(faults.map((fault) => `${path}: ${formatFault(fault)}`));
  // Pictures are a heavy thing to load: only when asked for, and before the fits, so that a bad folder costs no time.
  const writer = out === undefined ? null : await import("../writeFits.ts");
  if (out !== undefined) checkRunFolder(out, overwrite);
  const fits = columns.map((column) => {
    const fit = fitColumn(column, { seed, samples, progress: (words) => terminal.live && terminal.rewrite(words) });
    if (terminal.live) terminal.rewrite("");
    for (const { line, style } of fitSummary(fit)) terminal.say(line, style);
    terminal.say();
    return fit;
  });
  const results = { file: basename(path), seed, samples, columns: fits, passedOver };
  const whole: FitResults = { ...results, fragment: planFragment(fits, results.file) };
  for (const words of manyTestsWords(fits)) terminal.say(words);
  if (passedOver.length > 0) terminal.say(`Left out, as they hold no times: ${passedOver.join(", ")}.`);
  if (out !== undefined) await writer?.writeFits(out, whole, overwrite);
  terminal.say(DANGERS_IN_SHORT.join(" "), "yellow");
  terminal.say(ending(out), "dim");
  terminal.data(json ? stableJson(whole) : `${JSON.stringify(whole.fragment, null, 2)}\n`);
}

function ending(out: string | undefined): string {
  const words = "A fit is only as good as its times. Judge for yourself who was timed, when and at what.";
  const written =
    out === undefined
      ? "--out FOLDER writes pictures and results."
      : `Written: ${out}/charts, results.json, fragment.json.`;
  return `${words} ${written}`;
}
