import { expect, it } from "vitest";
import { responsesOf } from "../../../../sim/day/observations/index.ts";
import { examplePlan } from "../../../support/exampleDay.ts";

/** What a response counts and by what it is divided, by its key alone; money is in the plan's currency, here EUR. */
const UNITS: [RegExp, string][] = [
  [/^headsPerHour$/, "carcasses/h"],
  [/^carcassesPerPersonHour$/, "carcasses/person-hour"],
  [/^carcasses$/, "carcasses"],
  [/^(finish|lastOut|cleaningEnd(\..+)?)$/, "s after day start"],
  [/^(overtime|timeInSystem\..+|(p05|p95|worst)\..+|killStops\.(seconds|longest|worstWait))$/, "s"],
  [/^(lorry\.(unloading|emptied|turnaround)\..+|vessel\..+\.full|sharedBreakdown\..+\.down)$/, "s"],
  [/^unfinished$/, "share of days"],
  [/^(beyond|passedUnfinished|outsideWeights|diverted)\./, "share of heads"],
  [
    /^(removed\..+|leftInLairage|stuckThere|killStops\.caught|lorry\.notCome\.heads|gate\..+|stunnedAgain|wip\..+)$/,
    "heads",
  ],
  [/^lorry\.notCome$/, "lorries"],
  [/^lairage\./, "crates"],
  [/^(killStops\.(count|unplanned)|stops\..+|sharedBreakdown\..+\.stops)$/, "stops"],
  [/^crew\..+\.(longestTask|taskSum)$/, "s"],
  [/^crew\..+\.occupation$/, "share of time on duty"],
  [/^crew\..+\.(hours\..+|jobHours)$/, "person-hours"],
  [/^(costPerHead|marginPerHead|fullCostPerHead)$/, "EUR/head"],
  [/^(costPerKg|fullCostPerKg)$/, "EUR/kg"],
  [/^(revenue|margin|fullMargin|loanPayment|(cost|revenue|plantCost)\..+)$/, "EUR"],
  [/^(water|wasteWater|waterReused|hotWater|water\..+)$/, "L"],
  [/^(water|wasteWater)PerHead(\..+)?$/, "L/head"],
  [/^((water|wasteWater)PerHour(\..+)?|hotWaterPeak)$/, "L/h"],
  [/^(energy|heat|fuel|energy\..+)$/, "kWh"],
  [/^energyPerHead(\..+)?$/, "kWh/head"],
  [/^(power(\..+)?|heatPeak|(heatLoad|coldLoad|coldPower)\..+)$/, "kW"],
  [/^waterPerTonne$/, "m3/t"],
  [/^energyPerTonne$/, "kWh/t"],
  [/^codPerTonne$/, "kg/t"],
  [/^compressedAir$/, "m3"],
  [/^(codLoad|liveKg|carcassKg|byProduct\..+|vessel\..+\.(max|spilled))$/, "kg"],
  [/^vessel\..+\.emptied$/, "times"],
  [/^hooks\./, "hooks"],
  [/^cop\./, ""],
  [/^dressingPercentage$/, "share of live weight at slaughter"],
  [/^massBalanceError$/, "share of live weight"],
  [/^(gaps|missingShackles)\./, "share of shackles"],
  [/^(stood\w*|held)\./, "share of working time"],
  [/^(working|blocked|starved|noCrew|down|onBreak)\..+\.byClock$/, "share of position time"],
  [/^(working|blocked|starved|noCrew|down)\.(?!.+\.byClock$)/, "share of own position time"],
  [/^onBreak\.(?!.+\.byClock$)/, "share of position time from first to last head"],
  [/^(oee|availability|effectiveness|qualityRatio)\./, "ratio, after ISO 22400-2"],
  [/^(bound\.share|bottleneck\.(sole|shifting))\./, "share of the day"],
  [/^slope\./, "s per s"],
  [/^rate\./, "carcasses/h per s"],
  [/^bound\.(?!share\.)/, "s"],
  [/^(personHours|paidHours|overtimeHours)$/, "person-hours"],
];

/** Of the plans' steps that handle crates; every other queue is of heads. */
const CRATE_STEPS = /^queue\.(fork-lift in|destacking|crate washer|restacking|pallets out|unloading|crate \w+)\./;

function unitsOf(key: string): string[] {
  if (key.startsWith("queue.")) return [CRATE_STEPS.test(key) ? "crates" : "heads"];
  return UNITS.filter(([pattern]) => pattern.test(key)).map(([, unit]) => unit);
}

it.each(["every-part", "sallowfield-compact"])("gives every response of %s the unit of what it counts", (name) => {
  const responses = responsesOf(examplePlan(name));
  expect(responses.length).toBeGreaterThan(400);
  const wrong = responses.filter(({ key, unit }) => unitsOf(key).join(" or ") !== unit);
  expect(wrong.map(({ key, unit }) => `${key}: ${unit}, not ${unitsOf(key).join(" or ")}`)).toEqual([]);
});
