/** Kinematic viscosity in m2/s, conductivity in W/(m K), Prandtl number. */
export interface AirProperties {
  viscosity: number;
  conductivity: number;
  prandtl: number;
}

/**
 * Dry air at one atmosphere, about -40 to 60 degrees Celsius: Sutherland's law for viscosity and conductivity with the
 * constants of White 1974, *Viscous Fluid Flow*, tables 1-2 and 1-3 (from memory), which he gives to 2 and 3 %; density of an ideal gas;
 * specific heat 1006 J/(kg K). At 0 degrees: 1.33e-5 m2/s, 0.0241 W/(m K), 0.716.
 */
export function airProperties(celsius: number): AirProperties {
  const kelvin = celsius + 273.15;
  const dynamic = sutherland(kelvin, 1.716e-5, 111);
  const conductivity = sutherland(kelvin, 0.0241, 194);
  const density = 101_325 / (287.05 * kelvin);
  return { viscosity: dynamic / density, conductivity, prandtl: (dynamic * 1006) / conductivity };
}

/** `atZero` x (T / T0)^1.5 x (T0 + S) / (T + S), T0 = 273 K. */
function sutherland(kelvin: number, atZero: number, constantKelvin: number): number {
  const ratio = kelvin / 273;
  return (atZero * ratio * Math.sqrt(ratio) * (273 + constantKelvin)) / (kelvin + constantKelvin);
}
