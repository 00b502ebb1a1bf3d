/** Radius in metres of the cylinder of this mass, length and density: what a carcass is taken for. */
export function equivalentRadius(massKg: number, lengthMetres: number, density: number): number {
  return Math.sqrt(massKg / (density * Math.PI * lengthMetres));
}
