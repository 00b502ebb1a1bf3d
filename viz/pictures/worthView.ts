import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { OptionsResult } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { quoted } from "../words/index.ts";
import type { DifferenceColumns } from "./difference.ts";

/** What each option brings in a year beyond what it costs, in the order of the file. */
export function worthView({ options, currency, confidence }: OptionsResult): DifferenceColumns {
  const money = (value: number) => formatDecimals(Math.round(value), 0);
  const unit = isolated(currency);
  const told = options.map(({ name, worth, verdict }) => {
    const { mean, low, high } = worth.perYear;
    const ends = `${money(low)} to ${money(high)}`;
    return { name, mean, low, high, ends, shown: verdict !== "not decided", verdict };
  });
  return {
    title: "What each option is worth in a year",
    caption: "An interval that stays on one side of the upright line is a verdict to rely on",
    subtitle: `Equal yearly amount over its life, price, service and interest reckoned; ${formatConfidence(confidence)} intervals that hold for all options at once. Filled dot: decided; open dot: not decided`,
    description: `${told.map(({ name, mean, ends, verdict }) => `${quoted(name)}: ${money(mean)} ${unit} a year (${ends}), ${verdict}`).join("; ")}.`,
    quantity: { kind: "number", label: "a year", unit },
    rows: told.map(({ name, mean, low, high, ends, shown, verdict }) => {
      return { name: isolated(name), mean, low, high, shown, text: `${money(mean)} ${unit}, ${verdict}\n${ends}` };
    }),
    sides: ["a loss", "a gain"],
  };
}
