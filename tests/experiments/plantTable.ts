import type { Plan, TimeLimit } from "../../sim/asked/plan/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import { runStudy, singleDayStudy } from "../../sim/days/run/index.ts";
import { alignedTable } from "../outside/outsideTable.ts";
import { examplePlan } from "../support/exampleDay.ts";
import { type PlantDays, type PlantFigure, publishedLimit, USES, YIELDS } from "./plantFigures.ts";

/** Whole plants to learn from; `every-part` is for checking the program. */
export const PLANTS = ["sallowfield-compact", "ferncote", "tavelmoss-chains"];
const DAYS = 3;
/** All others, the binding path's above all, would take most of the time. */
const NEEDED =
  /^(carcass|live|dressing|byProduct|removed|energyPerTonne|waterPerTonne|fullCostPerKg|costPerKg|paidHours|beyond)/;

/** The plants' days, means over a few of them. */
export async function plantDays(): Promise<PlantDays[]> {
  return Promise.all(PLANTS.map((name) => daysOf(examplePlan(name))));
}

async function daysOf(plan: Plan): Promise<PlantDays> {
  const responses = responsesOf(plan).flatMap(({ key }) => (NEEDED.test(key) ? [key] : []));
  const study = { ...singleDayStudy(plan, "plants"), responses, replications: DAYS, why: false };
  const { variants } = await runStudy(study, { gambrel: "", command: "", traces: "none" });
  const { estimates } = variants[0]!;
  const mean = (key: string): number => {
    const found = estimates[key]?.mean;
    if (found === undefined) throw new Error(`plantTable: "${plan.name}" has no response "${key}"`);
    return found;
  };
  const sum = (keys: RegExp): number =>
    Object.keys(estimates)
      .filter((key) => keys.test(key))
      .reduce((total, key) => total + mean(key), 0);
  return { plan, mean, sum };
}

/** The text of experiments/plans/README.md. */
export function plantTable(plants: readonly PlantDays[]): string {
  return `${[heading(plants), figures("Yields and losses", YIELDS, plants), figures("Energy, water, cost, people", USES, plants), limits(plants)].join("\n\n")}\n`;
}

function heading(plants: readonly PlantDays[]): string {
  const links = plants.map(({ plan }, index) => `- [${plan.name}](${PLANTS[index]}.json). ${plan.notes}`);
  return `# Plants

Three whole plants to copy, and tables that show how close they come to published figures. All plants are invented.
[every-part.json](every-part.json) has every part that a plan can have, for checking the program; [parts](parts) has one small plan
for each part.

${links.join("\n")}

Below is what ${DAYS} simulated days of each plant give, beside published figures. An invented figure does not become true because it lies inside a published
range, and the tables set nothing: the law at the site, the official veterinarian and licensed practice decide. **Bold** is a figure outside
the range beside it. Written by \`npx tsx tests/experiments/makePlantTable.ts\`; a test fails when it is out of date.`;
}

function figures(title: string, rows: readonly PlantFigure[], plants: readonly PlantDays[]): string {
  const cells = rows.map((row) => [row.what, row.unit, ...plants.map((days) => cellOf(row, days)), row.published]);
  return `## ${title}\n\n${alignedTable(["what", "unit", ...shortNames(plants), "published"], cells, 0)}`;
}

function cellOf({ of, decimals, range }: PlantFigure, days: PlantDays): string {
  const text = of(days).toLocaleString("en-GB", { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  // As printed: a figure that rounds to the range's end is not called outside.
  const value = Number(text.replaceAll(",", ""));
  return range !== null && (value < range[0] || value > range[1]) ? `**${text}**` : text;
}

const shortNames = (plants: readonly PlantDays[]): string[] => plants.map(({ plan }) => plan.name.split(",")[0]!);

/** Each limit of each plant, as the plan sets it, and how its days keep it. */
function limits(plants: readonly PlantDays[]): string {
  const rows = plants.flatMap((days, index) =>
    days.plan.limits.map((limit) => [
      shortNames(plants)[index]!,
      limit.name,
      allowed(limit),
      `${(100 * days.mean(`beyond.${limit.name}`)).toFixed(2)} %`,
      publishedLimit(limit),
    ]),
  );
  return `## Time limits\n\n${alignedTable(["plant", "limit", "allowed", "heads outside it", "published"], rows, 0)}`;
}

function allowed({ minSeconds, maxSeconds }: TimeLimit): string {
  const ends = [
    minSeconds === null ? "" : `at least ${span(minSeconds)}`,
    maxSeconds === null ? "" : `at most ${span(maxSeconds)}`,
  ];
  return ends.filter((end) => end !== "").join(", ");
}

function span(seconds: number): string {
  if (seconds % 3600 === 0) return `${seconds / 3600} h`;
  return seconds % 60 === 0 ? `${seconds / 60} min` : `${seconds} s`;
}
