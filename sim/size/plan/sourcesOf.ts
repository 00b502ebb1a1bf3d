import type { Demand } from "../demand.ts";

/** What the plan's figures rest on: one note for the whole, one for each stage with assumed figures. */
export function sourcesOf({ name, steps, figures }: Demand): Record<string, unknown>[] {
  const whole = {
    path: "",
    kind: "assumed",
    note: `Sized from the demand "${name}"; what no other line speaks for was worked out or assumed, and is to be replaced by figures of the site`,
  };
  return [whole, ...steps.flatMap((step) => ofStep(step.name, figures))];
}

function ofStep(step: string, figures: Demand["figures"]): Record<string, unknown>[] {
  const own = figures.filter(({ what }) => what.startsWith(`${step}: `));
  const assumed = own.filter(({ source }) => source !== "given");
  const given = own.filter(({ source }) => source === "given");
  const keys = (list: Demand["figures"]): string => list.map(({ what }) => what.slice(step.length + 2)).join(", ");
  const first = assumed[0];
  return [
    ...(given.length > 0
      ? [{ path: pathOf(step), kind: "measured", note: `As the demand gives it: ${keys(given)}` }]
      : []),
    ...(first === undefined
      ? []
      : [{ path: pathOf(step), kind: first.source, note: `${keys(assumed)}: ${first.note}` }]),
  ];
}

function pathOf(step: string): string {
  return `line[${JSON.stringify(step)}]`;
}
