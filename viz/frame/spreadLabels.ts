/**
 * Moves labels apart along one axis: returns positions in the order given, at least `gap` apart, within [low, high] where
 * they all fit, each as near to its wish as the order of the wishes allows.
 */
export function spreadLabels(wishes: readonly number[], gap: number, low: number, high: number): number[] {
  const order = wishes.map((_, index) => index).sort((a, b) => wishes[a]! - wishes[b]! || a - b);
  const placed = order.map((index) => Math.min(Math.max(wishes[index]!, low), high));
  for (let i = 1; i < placed.length; i++) placed[i] = Math.max(placed[i]!, placed[i - 1]! + gap);
  let ceiling = high;
  for (let i = placed.length - 1; i >= 0; i--) {
    placed[i] = Math.min(placed[i]!, ceiling);
    ceiling = placed[i]! - gap;
  }
  const result = new Array<number>(wishes.length);
  order.forEach((index, rank) => {
    result[index] = placed[rank]!;
  });
  return result;
}
