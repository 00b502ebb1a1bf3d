/** Names that one widespread operating system keeps for devices, whatever their ending. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/;
const LONGEST = 60;

/**
 * A file name made of a name from a plan or study: lower-case letters, digits and single hyphens, at most 60
 * characters, never empty, never with a path in it. Letters with accents lose them.
 *
 * @example safeFileName("Café / 2 líneas") // "cafe-2-lineas"
 */
export function safeFileName(name: string, whenEmpty = "unnamed"): string {
  const plain = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, "");
  if (plain === "") return whenEmpty;
  return RESERVED.test(plain) ? `${plain}-` : plain;
}
