// Pastes the part of a plan that `gambrel fit` prints into a plan, stage by stage, and writes down what is not known: the
// ranges that the fit gives and the guesses of a list. As one would do by hand in an editor.
// node paste.mjs PLAN FRAGMENT GUESSES > NEW_PLAN
import { readFileSync } from "node:fs";
import process from "node:process";

const [plan, fragment, guesses] = process.argv.slice(2).map((path) => JSON.parse(readFileSync(path, "utf8")));
for (const measured of fragment.line) {
  const stage = plan.line.find(({ name }) => name === measured.name);
  if (stage === undefined) throw new Error(`the plan has no stage "${measured.name}"`);
  Object.assign(stage, measured);
}
plan.sources = [...(plan.sources ?? []), ...fragment.sources];
plan.uncertain = [...fragment.uncertain, ...guesses];
process.stdout.write(`${JSON.stringify(plan, null, 2)}\n`);
