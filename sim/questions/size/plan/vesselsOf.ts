import type { Demand } from "../demand.ts";
import type { Parts } from "../parts.ts";

/** Room left when emptying is called for: twice what comes meanwhile. */
const ROOM = 2;

/** A vessel for each by-product, as large as its vessels together, emptied before it is full. */
export function vesselsOf({ byProducts: given, written }: Demand, { byProducts }: Parts): Record<string, unknown>[] {
  const { emptying } = written.byProducts as Record<string, unknown>;
  return byProducts.map(({ name, kgPerHour, vessels }) => {
    const capacityKg = vessels * given.vessel;
    const during = (kgPerHour / 3600) * given.emptying;
    const emptyAt = Math.max(capacityKg / 2, capacityKg - ROOM * during);
    return { name, capacity: `${capacityKg} kg`, emptyAt: `${Math.round(emptyAt * 10) / 10} kg`, emptying };
  });
}
