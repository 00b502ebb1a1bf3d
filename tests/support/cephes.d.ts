/** The part of the Cephes library that the tests compare with; its own types are not reachable through its exports map. */
declare module "cephes" {
  const cephes: {
    /** Quantile of Student's t with `df` degrees of freedom. */
    stdtri(df: number, p: number): number;
    /** Quantile of the standard normal distribution. */
    ndtri(p: number): number;
    /** Quantile of the upper tail of the gamma distribution with unit scale. */
    igami(shape: number, upperTail: number): number;
    /** Quantile of the beta distribution. */
    incbi(alpha: number, beta: number, p: number): number;
  };
  export default cephes;
}
