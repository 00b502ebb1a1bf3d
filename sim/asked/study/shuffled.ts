import type { UniformStream } from "../../maths/random/index.ts";

/** The numbers 0 to `count` - 1 in random order, every order as likely (Fisher and Yates; Durstenfeld 1964). */
export function shuffled(count: number, uniforms: UniformStream): number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  for (let last = count - 1; last > 0; last--) {
    const other = Math.floor(uniforms.next() * (last + 1));
    [order[last], order[other]] = [order[other]!, order[last]!];
  }
  return order;
}
