const SINGULAR: Readonly<Record<string, string>> = {
  carcasses: "carcass",
  crates: "crate",
  heads: "head",
  lorries: "lorry",
  stops: "stop",
};

/** A counted figure as people say it: "1 stop" for "1 stops", "+1 head" for "+1 heads". Any other text stays as it is. */
export function oneOf(text: string): string {
  return text.replace(/^([+\u2212]?1) ([a-z]+)$/u, (whole, one, unit) =>
    unit in SINGULAR ? `${one} ${SINGULAR[unit]}` : whole,
  );
}
