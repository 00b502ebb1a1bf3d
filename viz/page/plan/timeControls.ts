import { formatDecimals, formatDuration } from "../../../sim/text/units/index.ts";
import type { Control } from "./control.ts";
import { cvOf, meanSecondsOf, withCv, withMeanSeconds } from "./varyingJson.ts";

/** Mean and variation of a varying time of the plan, as far as its JSON tells them. */
export function timeControls(group: string, label: string, path: string, written: unknown): Control[] {
  return [...meanControl(group, label, path, written), ...variationControl(group, label, path, written)];
}

export function meanControl(group: string, label: string, path: string, written: unknown): Control[] {
  const base = meanSecondsOf(written);
  if (base === null || base === 0) return [];
  const step = 10 ** Math.floor(Math.log10(base / 20));
  return [
    {
      id: `${path} mean`,
      group,
      label: `${label}${typeof written === "string" ? "" : ", mean"}`,
      path,
      base,
      min: Math.max(step, Math.round((base * 0.4) / step) * step),
      max: Math.round((base * 2.5) / step) * step,
      step,
      words: (value) => formatDuration(Number(value.toPrecision(4))),
      change: withMeanSeconds,
    },
  ];
}

function variationControl(group: string, label: string, path: string, written: unknown): Control[] {
  const base = cvOf(written);
  if (base === null) return [];
  return [
    {
      id: `${path} cv`,
      group,
      label: `${label}: how uneven (sd / mean)`,
      path,
      base,
      min: 0,
      max: Math.max(1.5, base),
      step: 0.05,
      words: (value) => formatDecimals(value, 2),
      change: withCv,
    },
  ];
}
