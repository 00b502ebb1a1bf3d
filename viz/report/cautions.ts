/** The cautions that every report, page and README carries, word for word. */
export const CAUTIONS: readonly string[] = [
  "A planning aid built on the numbers it is given. It does not set stunning currents, bleeding times, chilling rules, line speeds, staffing minimums or guarding; those are for the law that applies at the site, the official veterinarian, the machine makers' manuals and licensed practice.",
  "Animal welfare and people's safety come before throughput.",
  "Verify against the real line before relying on it.",
];

/**
 * What hurts on such a line, for whoever plans, checks or sizes one: said by the commands and fit for the report and the page.
 * One sentence each.
 */
export const DANGERS: readonly string[] = [
  "Blades, saws and skinning rollers cut and draw in: guards stay on, and nobody clears a jam before the machine is locked off.",
  "Electricity and water meet here: stunners, wet floors and hoses need the protection that licensed electricians and the makers' manuals ask for.",
  "Lifting crates, reaching and the same cut all day wear people out: loads, rests and changes of place are part of the plan.",
  "Cold rooms and wet hands, and water hot enough to clean tools, both injure.",
  "Animals, blood and dust carry infection: hygiene zones, clothing, hand washing and vaccination as the law and a doctor say.",
  "Animals feel pain and fear: a stunned head that waits may wake. Handling, stunning and bleeding are for trained, licensed people.",
  "The law at the site, the official veterinarian, the makers' manuals and licensed practice decide; this program does not.",
];
