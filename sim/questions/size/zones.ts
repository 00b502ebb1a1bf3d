/**
 * Where a person works for hygiene and for the animals. Nobody works in two: nobody goes from live animals, skins or blood to opened carcasses; those
 * who stun and stick do nothing else, so that a stunned head is stuck at once; those who inspect do nothing else.
 */
export const ZONES = ["live side", "kill", "unclean side", "clean side", "inspection"] as const;

export type Zone = (typeof ZONES)[number];

export const LIVE_SIDE: Zone = "live side";
