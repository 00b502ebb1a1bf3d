/** The cautions that every report, page and README carries, word for word. */
export const CAUTIONS: readonly string[] = [
  "A planning aid built on the numbers it is given. It does not set stunning currents, bleeding times, chilling rules, line speeds, staffing minimums or guarding; those are for the law that applies at the site, the official veterinarian, the machine makers' manuals and licensed practice.",
  "Animal welfare and people's safety come before throughput.",
  "Verify against the real line before relying on it.",
];

const WHO_DECIDES =
  "The law at the site, the official veterinarian, the makers' manuals and licensed practice decide; this program does not.";

/** What hurts on such a line, for whoever plans, checks or sizes one: on the page and in the manual. One sentence each. */
export const DANGERS: readonly string[] = [
  "Blades, saws and skinning rollers cut and draw in: guards stay on, and nobody clears a jam before the machine is locked off.",
  "Electricity and water meet here: stunners, wet floors and hoses need the protection that licensed electricians and the makers' manuals ask for.",
  "Lifting crates, reaching and the same cut all day wear people out: loads, rests and changes of place are part of the plan.",
  "Cold rooms and wet hands, and water hot enough to clean tools, both injure.",
  "Animals, blood and dust carry infection: hygiene zones, clothing, hand washing and vaccination as the law and a doctor say.",
  "Animals feel pain and fear: a stunned head that waits may wake. Handling, stunning and bleeding are for trained, licensed people.",
  "Hanging conscious rabbits by their legs is forbidden in the European Union (Regulation (EC) 1099/2009, Article 15(3); its exception is for poultry): where a plan hangs before it stuns, ask the official veterinarian how they are to be held.",
  WHO_DECIDES,
];

/** The same in two sentences, where there is room for no more: in the help, on the terminal, on top of the page. */
export const DANGERS_IN_SHORT: readonly string[] = [
  "This work hurts: blades, clearing jams, electricity and water, lifting, cold, hot water, infection, the animals' pain.",
  WHO_DECIDES,
];
