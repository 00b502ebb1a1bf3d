import { formatDecimals } from "../../sim/text/units/index.ts";
import type { MassColumns, MassFlow } from "../charts/index.ts";
import type { MassRecord, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { dayWords } from "./dayScene.ts";

const CARCASS = "carcass";

/** What became of a variant's first day's live weight; null when the plan gives no weights, or has all go one way. */
export function massView(results: StudyResults, variant: VariantResults): MassColumns | null {
  const { masses } = variant.day;
  if (!(masses.liveKg > 0)) return null;
  const flows = flowsOf(masses);
  if (flows.length < 2) return null;
  const dressing = masses.carcassLiveKg > 0 ? (masses.outKg[CARCASS] ?? 0) / masses.carcassLiveKg : 0;
  return {
    title: "Where the live weight goes",
    caption:
      "Each band is as wide as its mass: what does not leave as carcass has to be taken away and paid for, or sold",
    subtitle: `Kilograms and share of the live weight, ${dayWords(results, variant)}. Live weight = carcasses + by-products + what was taken off, to rounding`,
    description: `Of ${kilograms(masses.liveKg)} live weight: ${flows.map(({ name, text }) => `${name} ${text}`).join("; ")}. A carcass weighs ${formatDecimals(dressing * 100, 1)} % of the live weight it came from.`,
    liveKilograms: masses.liveKg,
    liveText: kilograms(masses.liveKg),
    flows,
  };
}

/** Carcasses first, then by-products and other ways out, the heavier ones first. */
function flowsOf(masses: MassRecord): MassFlow[] {
  const flow = (kind: MassFlow["kind"]) => (entry: readonly [string, number]) => ({
    name: isolated(entry[0]),
    kilograms: entry[1],
    text: `${kilograms(entry[1])}, ${percentWords(entry[1] / masses.liveKg)}`,
    kind,
  });
  const heavier = (a: MassFlow, b: MassFlow) => b.kilograms - a.kilograms;
  const others = Object.entries(masses.outKg).filter(([name]) => name !== CARCASS);
  return [
    ...[[CARCASS, masses.outKg[CARCASS] ?? 0] as const].map(flow("carcass")),
    ...Object.entries(masses.byProductsKg).map(flow("by-product")).sort(heavier),
    ...others.map(flow("lost")).sort(heavier),
    ...[["left on the line", masses.onLineKg] as const].map(flow("left on the line")),
  ].filter((each) => each.kilograms > 0);
}

function percentWords(share: number): string {
  return share < 0.0005 ? "under 0.1 %" : `${formatDecimals(100 * share, 1)} %`;
}

function kilograms(value: number): string {
  return `${formatDecimals(value, value < 100 ? 1 : 0)} kg`;
}
