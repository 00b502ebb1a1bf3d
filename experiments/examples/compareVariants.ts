/** Two variants on the same random numbers, and the difference with its interval. Run: npx tsx experiments/examples/compareVariants.ts */
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { formatFault, readStudy, responsesOf, runStudy } from "gambrel";

const plans = resolve(import.meta.dirname, "../plans");
const { study, faults } = readStudy(
  {
    name: "One more person at evisceration",
    plan: "ferncote.json",
    replications: 8,
    responses: ["headsPerHour"],
    design: { list: [{ name: "one more", set: { "crews.evisceration.people": 5, "line.evisceration.positions": 4 } }] },
  },
  { readText: (name) => readFileSync(resolve(plans, name), "utf8") },
  { knownResponses: responsesOf },
);
if (study === null) throw new Error(faults.map(formatFault).join("\n"));

const results = await runStudy(study, {
  gambrel: "example",
  command: "npx tsx experiments/examples/compareVariants.ts",
});
for (const { name, estimates, differences } of results.variants) {
  const { mean, low, high } = estimates.headsPerHour!;
  console.log(`${name}: ${mean.toFixed(1)} carcasses/h (${low?.toFixed(1)} to ${high?.toFixed(1)})`);
  if (differences !== null) console.log(differences.headsPerHour?.words);
}
