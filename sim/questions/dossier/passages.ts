/** People who use it, clear width of the passage, clear width of doors and narrow places in it; metres. */
const PASSAGES: readonly (readonly [people: number, passage: number, door: number])[] = [
  [5, 0.9, 0.8],
  [20, 1, 0.9],
  [50, 1.2, 0.9],
  [100, 1.2, 1],
  [200, 1.2, 1.05],
  [300, 1.8, 1.65],
  [400, 2.4, 2.25],
];
/** Up to here a row holds for all numbers below it; beyond, it lies between two rows. */
const BETWEEN_FROM = 200;

/**
 * Clear width of a passage for so many people, metres. ASR A1.8 (2022), Table 2, column C; over 200 people between its rows, over 400 at the
 * slope of the last two. 0 people take what 5 take.
 *
 * @example passageMetres(20) // 1
 */
export function passageMetres(people: number): number {
  return widthFor(people, 1);
}

/** The same for doors and narrow places in a passage: column B. */
export function doorMetres(people: number): number {
  return widthFor(people, 2);
}

function widthFor(people: number, column: 1 | 2): number {
  if (people <= BETWEEN_FROM) return PASSAGES.find(([most]) => people <= most)![column];
  const found = PASSAGES.findIndex(([most]) => people <= most);
  const upper = found === -1 ? PASSAGES.length - 1 : found;
  const [low, high] = [PASSAGES[upper - 1]!, PASSAGES[upper]!];
  return low[column] + ((people - low[0]) / (high[0] - low[0])) * (high[column] - low[column]);
}

/** Floor of a room where so many people work, square metres: 8 for the first, 6 for each further one (ASR A1.2, from memory). 0 for nobody. */
export function workRoomSquareMetres(people: number): number {
  return people === 0 ? 0 : 8 + 6 * (people - 1);
}
