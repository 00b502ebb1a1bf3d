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
  const origins = [...new Map(own.map((figure) => [`${figure.source} ${figure.note}`, figure])).values()];
  return origins.map(({ source, note }) => {
    const keys = own.filter((figure) => figure.source === source && figure.note === note);
    const named = keys.map(({ what }) => what.slice(step.length + 2)).join(", ");
    if (source === "given") return { path: pathOf(step), kind: "measured", note: `As the demand gives it: ${named}` };
    return { path: pathOf(step), kind: source, note: `${named}: ${note}` };
  });
}

function pathOf(step: string): string {
  return `line[${JSON.stringify(step)}]`;
}
