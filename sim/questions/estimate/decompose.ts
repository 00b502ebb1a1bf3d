import { JumpRoom } from "./pairJumps.ts";
import { type Delay, type HeadWork, NO_DELAY, pairServer } from "./pairServer.ts";
import { solvePair } from "./solvePair.ts";

/** A station of a serial line, as the decomposition sees it. */
export interface SerialStation {
  work: HeadWork;
  positions: number;
  /** Places before the positions; of the first station not looked at. */
  places: number;
}

export interface SerialEstimate {
  /** Heads per second of a line that never lacks heads and is never blocked at its end. */
  throughput: number;
  /** By station, seconds per head: waiting for a place and for a head. */
  blocked: number[];
  starved: number[];
}

/** Sweeps over each pair before its neighbours are looked at again: none is worth solving to the end before they are known. */
const SWEEPS = 8;
const MAX_ROUNDS = 200;
/** Relative change of a throughput in a round below which it is enough, where nothing else is asked for. */
const SETTLED = 5e-5;

/**
 * Throughput of a serial line with finite buffers, blocking after service and breakdowns, by decomposition into pairs:
 * each buffer with the station on either side, where the upstream one also waits for heads as the line before it makes
 * it wait, and the downstream one for places as the line behind it does. Solved round by round until the pairs agree: until
 * no throughput changes by more than the share `settled` any more.
 */
export function decompose(
  stations: readonly SerialStation[],
  leastSquaredCv: number,
  settled: number = SETTLED,
): SerialEstimate {
  const line = new Decomposition(stations, leastSquaredCv);
  for (let round = 0; round < MAX_ROUNDS && line.round() > settled; round++);
  return line.estimate();
}

class Decomposition {
  readonly #stations: readonly SerialStation[];
  readonly #leastSquaredCv: number;
  readonly #starving: Delay[];
  readonly #blocking: Delay[];
  readonly #probability: (Float64Array | null)[];
  readonly #throughput: number[];
  readonly #rooms: JumpRoom[];

  constructor(stations: readonly SerialStation[], leastSquaredCv: number) {
    this.#stations = stations;
    this.#leastSquaredCv = leastSquaredCv;
    this.#starving = stations.map(() => NO_DELAY);
    this.#blocking = stations.map(() => NO_DELAY);
    this.#probability = stations.slice(1).map(() => null);
    this.#throughput = stations.slice(1).map(() => 0);
    this.#rooms = stations.slice(1).map(() => new JumpRoom());
  }

  /** Down the line and up again; gives the greatest relative change of a pair's throughput. */
  round(): number {
    let change = 0;
    const pairs = this.#throughput.map((_, pair) => pair);
    for (const pair of [...pairs, ...pairs.toReversed()]) change = Math.max(change, this.#visit(pair));
    return change;
  }

  #visit(pair: number): number {
    const [above, below] = [this.#stations[pair]!, this.#stations[pair + 1]!];
    const found = solvePair(
      {
        upstream: pairServer(above.work, this.#starving[pair]!, "upstream", this.#leastSquaredCv),
        downstream: pairServer(below.work, this.#blocking[pair + 1]!, "downstream", this.#leastSquaredCv),
        upstreamPositions: above.positions,
        downstreamPositions: below.positions,
        places: below.places,
      },
      this.#probability[pair]!,
      this.#rooms[pair]!,
      SWEEPS,
    );
    this.#probability[pair] = found.probability;
    this.#starving[pair + 1] = found.starving;
    this.#blocking[pair] = found.blocking;
    const before = this.#throughput[pair]!;
    this.#throughput[pair] = found.throughput;
    return Math.abs(found.throughput - before) / found.throughput;
  }

  estimate(): SerialEstimate {
    const pairs = this.#throughput.length;
    const throughput =
      pairs === 0 ? 1 / busySeconds(this.#stations[0]!) : this.#throughput.reduce((sum, each) => sum + each, 0) / pairs;
    return { throughput, blocked: this.#blocking.map(perHead), starved: this.#starving.map(perHead) };
  }
}

function busySeconds({ work }: SerialStation): number {
  return work.seconds + work.stops.reduce((sum, { chance, seconds }) => sum + chance * seconds, 0);
}

function perHead({ short, long }: Delay): number {
  return short.chance * short.seconds + long.chance * long.seconds;
}
