/** The part of the Cephes library (reference functions for tests) that is used here; the package's own types miss it. */
declare module "cephes" {
  const cephes: {
    compiled: Promise<void>;
    igam(a: number, x: number): number;
    igamc(a: number, x: number): number;
    gamma(x: number): number;
    j0(x: number): number;
    j1(x: number): number;
    ndtr(x: number): number;
    ndtri(p: number): number;
    incbet(a: number, b: number, x: number): number;
    incbi(a: number, b: number, p: number): number;
    stdtr(df: number, t: number): number;
    stdtri(df: number, p: number): number;
    chdtrc(df: number, x: number): number;
    pdtr(k: number, mean: number): number;
    bdtr(k: number, n: number, p: number): number;
  };
  export default cephes;
}
