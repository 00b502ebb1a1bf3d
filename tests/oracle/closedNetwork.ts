/**
 * A closed network of exponential single servers in a ring with so many customers: throughput and mean customers at each
 * server, by Buzen's convolution (Buzen 1973) on the product form of Gordon and Newell 1967. `means`: mean service times.
 */
export function closedNetwork(means: readonly number[], customers: number): { throughput: number; present: number[] } {
  const constants = new Array<number>(customers + 1).fill(0);
  constants[0] = 1;
  for (const mean of means) {
    for (let n = 1; n <= customers; n++) constants[n]! += mean * constants[n - 1]!;
  }
  const present = means.map((mean) => {
    let sum = 0;
    for (let k = 1; k <= customers; k++) sum += (mean ** k * constants[customers - k]!) / constants[customers]!;
    return sum;
  });
  return { throughput: constants[customers - 1]! / constants[customers]!, present };
}
