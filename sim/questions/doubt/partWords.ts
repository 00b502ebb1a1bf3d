const PARTS: readonly [share: number, words: string][] = [
  [0, "hardly any"],
  [0.1, "a tenth"],
  [0.2, "a fifth"],
  [0.25, "a quarter"],
  [1 / 3, "a third"],
  [0.4, "two fifths"],
  [0.5, "half"],
  [0.6, "three fifths"],
  [2 / 3, "two thirds"],
  [0.75, "three quarters"],
  [0.8, "four fifths"],
  [0.9, "nine tenths"],
  [1, "nearly all"],
];

/** A share from 0 to 1 as people say it: the nearest of "a tenth", "a third", "two thirds" ...; within 0.05 of it. */
export function partWords(share: number): string {
  const [first, ...rest] = PARTS;
  return rest.reduce(
    (nearest, part) => (Math.abs(part[0] - share) < Math.abs(nearest[0] - share) ? part : nearest),
    first!,
  )[1];
}
