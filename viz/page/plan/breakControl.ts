import { formatPath } from "../../../sim/asked/plan/index.ts";
import { formatDuration, readQuantity, time } from "../../../sim/text/units/index.ts";
import type { Control } from "./control.ts";

const MOST_MINUTES = 60;

/** How long a planned break or pause lasts, in minutes. */
export function breakControl(pause: Record<string, unknown>): Control[] {
  const seconds = readQuantity(time, pause.length).value;
  if (seconds === null) return [];
  const path = formatPath(["day", "breaks", String(pause.name), "length"]);
  const base = seconds / 60;
  return [
    {
      id: path,
      group: "Breaks and planned stops",
      label: `Length of “${pause.name}”`,
      path,
      base,
      min: Math.min(1, base),
      max: Math.max(MOST_MINUTES, base * 2),
      step: 1,
      words: (minutes) => formatDuration(minutes * 60),
      change: (_, minutes) => `${minutes} min`,
    },
  ];
}
