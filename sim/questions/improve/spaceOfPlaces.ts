import type { Fault, Plan } from "../../asked/plan/index.ts";
import { formatPath } from "../../asked/plan/index.ts";
import { elementFaults, totals } from "./elementFaults.ts";
import type { ImproveFile } from "./schema/improveFile.ts";
import type { Space } from "./space.ts";

type Asked = NonNullable<ImproveFile["allocate"]["places"]>;

/** Places to share out among buffers. */
export function spaceOfPlaces({ total, least, among }: Asked, plan: Plan): { space: Space; faults: Fault[] } {
  const stations = plan.line.filter(({ kind }) => kind === "station");
  const at = ["allocate", "places"];
  const named = among.map(({ station, from, to }) => ({ name: station, from, to, price: 1 }));
  const faults = elementFaults(named, { at, key: "station", what: "station of the line" }, stations);
  const bounds = totals(named, { total, least, at });
  const space: Space = {
    kind: "places",
    unit: "places",
    elements: named,
    ...bounds.range,
    base: named.map(({ name }) => {
      const station = stations.find((each) => each.name === name);
      return station?.kind === "station" && Number.isFinite(station.buffer) ? station.buffer : null;
    }),
    apart: [],
    purchases: [],
    changeOf: (counts) => ({
      set: Object.fromEntries(named.map(({ name }, index) => [formatPath(["line", name, "buffer"]), counts[index]])),
      insert: [],
      remove: [],
    }),
    nameOf: (counts) => named.map(({ name }, index) => `${name} ${counts[index]}`).join(", "),
  };
  return { space, faults: [...faults, ...bounds.faults] };
}
