import type { Presentation } from "../plan.ts";

type Named = Omit<Presentation, "chillLossShare" | "journeyLossShare" | "yield">;

/** "cold carcass without head and paws, with liver and kidneys, without heart and lungs". */
export function presentationWords({ weighed, ...of }: Named): string {
  const parts: [string, "on" | "off"][] = [
    ["head", of.head],
    ["paws", of.paws],
    ["liver", of.liver],
    ["kidneys", of.kidneys],
    ["heart and lungs", of.heartAndLungs],
  ];
  const named = (state: "on" | "off") => parts.filter(([, is]) => is === state).map(([name]) => name);
  const withParts = named("on").length === 0 ? "" : ` with ${joined(named("on"))}`;
  const without = named("off").length === 0 ? "" : ` without ${joined(named("off"))}`;
  return `${weighed} carcass${[withParts, without].filter((words) => words !== "").join(",")}`;
}

function joined(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}

const ALL_ON = { head: "on", paws: "on", liver: "on", kidneys: "on", heartAndLungs: "on" } as const;

/**
 * Carcasses that are defined in print, all by the live weight just before slaughter. Hot: Blasco, Ouhayoun and Masoero
 * 1993 (as quoted in a thesis; that the head is on, from memory). Chilled, and reference carcass: Blasco and Ouhayoun 1996
 * (the second from memory; its list of parts removed also in Pinna et al. 2004). Fat, thymus and windpipe, which these
 * also speak of, are not told apart here.
 */
const PUBLISHED: readonly [string, Partial<Named>][] = [
  ["hot carcass (Blasco, Ouhayoun and Masoero 1993)", { ...ALL_ON, weighed: "hot" }],
  ["chilled commercial carcass (Blasco and Ouhayoun 1996)", { ...ALL_ON, paws: "off", weighed: "cold" }],
  [
    "reference carcass (Blasco and Ouhayoun 1996, from memory)",
    { head: "off", paws: "off", liver: "off", kidneys: "off", heartAndLungs: "off", weighed: "cold" },
  ],
];

/** The published definition that the presentation fits, or null. */
export function publishedName(presentation: Named): string | null {
  const fits = ([, of]: (typeof PUBLISHED)[number]) =>
    Object.entries(of).every(([key, value]) => presentation[key as keyof Named] === value);
  return PUBLISHED.find(fits)?.[0] ?? null;
}
