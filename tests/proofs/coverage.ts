import { parseArgs } from "node:util";
import { exactShareInterval } from "../../sim/maths/statistics/index.ts";
import { coverage, trueEnd } from "../support/doubtCoverage.ts";

const { values } = parseArgs({
  options: { plants: { type: "string", default: "1000" }, seed: { type: "string", default: "1" } },
});
const plants = Number(values.plants);
if (!Number.isInteger(plants) || plants < 1) throw new Error("--plants: give a whole number of 1 or more.");

const truth = await trueEnd(4000);
const { full, plain } = await coverage(plants, truth, values.seed);
console.log(
  `True mean end of work: ${(truth / 60).toFixed(2)} min after the start; ${plants} plants timed, seed "${values.seed}".`,
);
for (const [name, held] of Object.entries({ "with what is not known": full, "with luck alone": plain })) {
  const { share, low, high } = exactShareInterval(held, plants, 0.99)!;
  const percent = (part: number) => `${(100 * part).toFixed(1)} %`;
  console.log(`95 % interval ${name}: holds it in ${percent(share)} (99 % range ${percent(low)} to ${percent(high)})`);
}
