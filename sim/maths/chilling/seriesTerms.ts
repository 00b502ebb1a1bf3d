import { power, safeRoot } from "../numeric/index.ts";

/** Infinite slab (size: half its thickness), infinite cylinder, sphere (size: radius). */
export type Shape = "slab" | "cylinder" | "sphere";

/**
 * One term of the series: the excess temperature over the air's, as a share of the first excess, is the sum over all terms
 * of coefficient x exp(-root^2 x Fourier number). One coefficient each for the centre, the surface and the mean over the volume.
 */
export interface SeriesTerm {
  root: number;
  centre: number;
  surface: number;
  mean: number;
}

/** No use of this room needs more: 60 terms leave less than 1e-15 at a Fourier number of 0.001. */
export const MAX_TERMS = 60;

/**
 * The first terms of the solution for a body of one temperature, put into air of another, with convection at its surface.
 * `biot`: surface coefficient x size / conductivity, above 0 and finite (else a RangeError). Roots of z tan z = Bi (slab),
 * z J1(z) / J0(z) = Bi (cylinder) and 1 - z cot z = Bi (sphere), right to 1e-14.
 *
 * Carslaw and Jaeger 1959, *Conduction of Heat in Solids*; Incropera and DeWitt, *Fundamentals of Heat and Mass Transfer*,
 * section 5.5 and 5.6. Cost: some 6 evaluations of the equation a term.
 */
export function seriesTerms(shape: Shape, biot: number, count: number): SeriesTerm[] {
  if (!(biot > 0) || !Number.isFinite(biot))
    throw new RangeError(`a Biot number of ${biot}: above 0 and finite is due`);
  return Array.from({ length: count }, (_, index) => TERM[shape](biot, index + 1));
}

const TERM: Record<Shape, (biot: number, n: number) => SeriesTerm> = { slab, cylinder, sphere };

function slab(biot: number, n: number): SeriesTerm {
  const at = (z: number): [number, number] => {
    const [sin, cos] = [Math.sin(z), Math.cos(z)];
    return [z * sin - biot * cos, sin * (1 + biot) + z * cos];
  };
  const root = safeRoot(at, (n - 1) * Math.PI, (n - 0.5) * Math.PI);
  const centre = (4 * Math.sin(root)) / (2 * root + Math.sin(2 * root));
  return { root, centre, surface: centre * Math.cos(root), mean: (centre * Math.sin(root)) / root };
}

function cylinder(biot: number, n: number): SeriesTerm {
  const at = (z: number): [number, number] => {
    const [j0, j1] = besselJ0J1(z);
    return [z * j1 - biot * j0, z * j0 + biot * j1];
  };
  // The root lies between a zero of J1 and the next one of J0; McMahon's expansions (Abramowitz and Stegun 9.5.12) bound
  // them from outside, by so little that no sign is changed.
  const zeroOfJ1 = (n - 0.75) * Math.PI;
  const zeroOfJ0 = (n - 0.25) * Math.PI;
  const root = safeRoot(at, n === 1 ? 0 : zeroOfJ1 - 3 / (8 * zeroOfJ1), zeroOfJ0 + 1 / (8 * zeroOfJ0));
  const [j0, j1] = besselJ0J1(root);
  const centre = (2 * j1) / (root * (j0 * j0 + j1 * j1));
  return { root, centre, surface: centre * j0, mean: (2 * centre * j1) / root };
}

function sphere(biot: number, n: number): SeriesTerm {
  // Divided by z, because z = 0 solves the undivided equation and is no root of the first term.
  const at = (z: number): [number, number] => {
    if (z === 0) return [-biot, 0];
    const [sin, cos] = [Math.sin(z), Math.cos(z)];
    return [((1 - biot) * sin) / z - cos, ((1 - biot) * (z * cos - sin)) / (z * z) + sin];
  };
  const root = safeRoot(at, (n - 1) * Math.PI, n * Math.PI);
  const moment = Math.sin(root) - root * Math.cos(root);
  const centre = (4 * moment) / (2 * root - Math.sin(2 * root));
  return { root, centre, surface: (centre * Math.sin(root)) / root, mean: (3 * centre * moment) / power(root, 3) };
}

/**
 * Bessel functions of the first kind J0(x) and J1(x), as a pair. Any finite x.
 *
 * Bessel's integrals J0 = mean of cos(x sin t), J1 = mean of cos(t - x sin t) = mean of sin(t) sin(x sin t) over a full
 * turn (Abramowitz and Stegun 1964, 9.1.18 and 9.1.21), by the trapezoidal rule, which converges faster than any power of
 * the number of points for a periodic function (Trefethen and Weideman 2014, SIAM Review 56). By symmetry a quarter turn
 * is enough.
 *
 * Greatest error 3e-15 for |x| <= 200 (absolute, found against Cephes in steps of 0.01). Cost: a sine and two more functions at each of 5 + |x| / 4 + 2 |x|^(1/3) points.
 */
export function besselJ0J1(x: number): [j0: number, j1: number] {
  const quarter = 5 + Math.ceil(Math.abs(x) / 4 + 2 * Math.cbrt(Math.abs(x)));
  // The ends of the quarter turn are shared by two quarters, so they count half.
  let sum0 = (1 + Math.cos(x)) / 2;
  let sum1 = Math.sin(x) / 2;
  for (let point = 1; point < quarter; point++) {
    const height = Math.sin((point * Math.PI) / (2 * quarter));
    sum0 += Math.cos(x * height);
    sum1 += height * Math.sin(x * height);
  }
  return [sum0 / quarter, sum1 / quarter];
}
