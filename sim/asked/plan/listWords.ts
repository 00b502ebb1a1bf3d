const MAX_SHOWN = 16;

/** "'a', 'b'", cut after sixteen; "none" for an empty list. */
export function listWords(names: readonly string[]): string {
  if (names.length === 0) return "none";
  const shown = names.slice(0, MAX_SHOWN).map((name) => `'${name}'`);
  const more = names.length - shown.length;
  return more === 0 ? shown.join(", ") : `${shown.join(", ")} and ${more} more`;
}
