import { decisionLines, seasonTable, wrappedLines } from "../../../viz/index.ts";
import { stableJson } from "../../days/results/index.ts";
import { readSeason, type Season, seasonOf } from "../../questions/season/index.ts";
import { readInputFile, refused, refuseOtherKind } from "../inputs.ts";
import { type Ceilings, ceilingsOf } from "../options.ts";
import { alone, runInto } from "../runFolder.ts";
import { simulateStudy } from "../simulate.ts";
import { CAUTION, type Terminal } from "../terminal.ts";

export interface SeasonCommandOptions {
  seed?: string;
  weeks?: number;
  threads?: number;
  out?: string;
  overwrite?: boolean;
  json?: boolean;
  ceiling?: Partial<Ceilings>;
}

/** Simulates every kind of week of a season, and tells of the year. */
export async function seasonCommand(terminal: Terminal, path: string, options: SeasonCommandOptions): Promise<void> {
  const { seed, weeks, out, overwrite = false, json } = options;
  const file = readInputFile(path, ceilingsOf(options));
  refuseOtherKind(file, "season");
  const { question: read, faults } = readSeason(file.json, file.files);
  if (read === null) throw refused(path, faults);
  const study = { ...read.study, seed: seed ?? read.study.seed, replications: weeks ?? read.study.replications };
  const question = { ...read, study };
  const run = async () => {
    const words = ["season", path, "--weeks", String(study.replications), "--seed", study.seed];
    const results = await simulateStudy(terminal, study, {
      words,
      options,
      traces: out === undefined ? "none" : "binned",
    });
    return { results, season: seasonOf(question, results) };
  };
  const { season } =
    out === undefined
      ? await run()
      : await runInto(out, overwrite, alone(out), async (write) => {
          const found = await run();
          const more = [
            { path: "asked.json", text: file.text },
            { path: "season.json", text: stableJson(found.season) },
          ];
          await write({ results: found.results, plan: question.json, more, answer: { season: found.season } });
          return found;
        });
  terminal.say(season.name, "bold");
  for (const line of seasonSummary(season)) terminal.say(line);
  for (const line of wrappedLines(CAUTION)) terminal.say(line, "dim");
  terminal.say(
    out === undefined
      ? "Nothing was written. Add --out FOLDER for the report with the year as a picture, and tables."
      : `Report: ${out}/report.html, with charts and tables beside it`,
  );
  if (json) terminal.data(stableJson(season));
}

function seasonSummary(season: Season): string[] {
  return [
    ...wrappedLines(season.verdict),
    ...season.words.flatMap((line) => wrappedLines(line, "  ")),
    "",
    ...decisionLines(seasonTable(season)),
    "",
    ...season.next.flatMap((line) => wrappedLines(line)),
  ];
}
