/** The part of jStat that this project uses; the package ships no types. */
declare module "jstat" {
  interface Inverse<Parameters extends number[]> {
    inv(probability: number, ...parameters: Parameters): number;
    cdf(value: number, ...parameters: Parameters): number;
    pdf(value: number, ...parameters: Parameters): number;
  }
  const jStat: {
    normal: Inverse<[mean: number, sd: number]>;
    gamma: Inverse<[shape: number, scale: number]>;
    beta: Inverse<[alpha: number, beta: number]>;
    studentt: Inverse<[df: number]>;
    chisquare: Inverse<[df: number]>;
    gammaln(value: number): number;
  };
  export default { jStat };
}
