import { power } from "../numeric/index.ts";

/**
 * Mean Nusselt number of a cylinder across a stream, Churchill and Bernstein 1977, J. Heat Transfer 99, 300: one formula for
 * Reynolds x Prandtl above 0.2, said to be good to 20 % or so. Diameter is the length in both numbers.
 */
export function crossflowNusselt(reynolds: number, prandtl: number): number {
  const laminar = 0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl);
  const layer = power(1 + power(0.4 / prandtl, 2 / 3), 0.25);
  return 0.3 + (laminar / layer) * power(1 + power(reynolds / 282_000, 0.625), 0.8);
}
