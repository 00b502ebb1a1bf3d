import { idealCop, openDoorKilowatts, openShare, personWatts } from "../../../maths/chilling/index.ts";
import type { Cooling } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FileCooling = NonNullable<Extract<PlanFile["line"][number], { kind: "dwell" }>["cooling"]>;
type FileDoor = FileCooling["doors"][number];

const WATTS = 1000;
const SECONDS_PER_HOUR = 3600;
/** Far below what anybody measures, and above what two runtimes may differ by in an exponential. */
const DIGITS = 9;

/** The cold room in kilowatts, at the temperature of the chiller's air. */
export function toCooling(file: FileCooling, roomCelsius: number): Cooling {
  const doors = file.doors.map((door) => doorKilowatts(door, roomCelsius, file.humidity));
  return {
    cop: settled(copOf(file)),
    fanKilowatts: settled(fanWatts(file.fans) / WATTS),
    lightKilowatts: settled(file.lights / WATTS),
    wallKilowatts: settled(file.walls / WATTS),
    peopleKilowatts: settled((file.people * personWatts(roomCelsius)) / WATTS),
    doorKilowatts: settled(doors.reduce((sum, kilowatts) => sum + kilowatts, 0)),
  };
}

/** The rules have seen to it that one of the two is there. */
function copOf({ cop, evaporating, condensing, refrigerant, shareOfIdeal }: FileCooling): number {
  return cop ?? shareOfIdeal * idealCop(refrigerant, evaporating!, condensing!);
}

/** Flow x pressure / efficiency where the power is not given. */
function fanWatts({ power, flow, pressure, efficiency }: FileCooling["fans"]): number {
  return power ?? ((flow ?? 0) * (pressure ?? 0)) / efficiency;
}

/** Mean: for as long as it is open, the flow that comes about, less what a curtain stops. */
function doorKilowatts(door: FileDoor, roomCelsius: number, roomHumidity: number): number {
  const { width, height, outside, outsideHumidity, passes, openFor, flowFactor, curtain } = door;
  const full = openDoorKilowatts({
    widthMetres: width,
    heightMetres: height,
    outsideCelsius: outside,
    outsideHumidity,
    roomCelsius,
    roomHumidity,
  });
  return full * openShare(passes * SECONDS_PER_HOUR, openFor) * flowFactor * (1 - curtain);
}

function settled(value: number): number {
  return Number(value.toPrecision(DIGITS));
}
