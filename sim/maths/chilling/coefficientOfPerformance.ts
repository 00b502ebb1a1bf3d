const KELVIN = 273.15;

export const REFRIGERANTS = ["ammonia", "propane", "R134a"] as const;
export type Refrigerant = (typeof REFRIGERANTS)[number];

/** Share of Carnot's figure that is lost for each kelvin of lift: a + b x condensing + c x evaporating, degrees Celsius. */
const LOSS: Record<Refrigerant, readonly [number, number, number]> = {
  ammonia: [0.003927, -4.05e-6, 2.394e-6],
  propane: [0.004299, 2.174e-5, 2.074e-5],
  R134a: [0.003936, 2.251e-5, 1.284e-5],
};

/** Heat moved for each unit of work by a machine without losses (Carnot): Te / (Tc - Te), kelvin. */
export function carnotCop(evaporatingCelsius: number, condensingCelsius: number): number {
  return (evaporatingCelsius + KELVIN) / (condensingCelsius - evaporatingCelsius);
}

/**
 * Coefficient of performance of the ideal one-stage cycle: saturated vapour in, compressed without loss, saturated liquid out,
 * (h1 - h3) / (h2 - h1). Fitted to seven cycles from a property library, evaporating -30 to 0 degC, condensing 25 to 40 degC;
 * within 0.4 % of each of them, and 0.3 % of a textbook's R134a cycle between 0.14 and 0.8 MPa (Cengel and Boles print 3.97).
 *
 * @example idealCop("ammonia", -10, 35) // 4.86
 */
export function idealCop(refrigerant: Refrigerant, evaporatingCelsius: number, condensingCelsius: number): number {
  const [a, b, c] = LOSS[refrigerant];
  const lift = condensingCelsius - evaporatingCelsius;
  const loss = lift * (a + b * condensingCelsius + c * evaporatingCelsius);
  return carnotCop(evaporatingCelsius, condensingCelsius) * (1 - loss);
}
