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
