import { describe, expect, it } from "vitest";
import { JumpRoom, type Pair } from "../../../../sim/questions/estimate/pairJumps.ts";
import { NO_DELAY, pairServer } from "../../../../sim/questions/estimate/pairServer.ts";
import { solvePair } from "../../../../sim/questions/estimate/solvePair.ts";
import { solveLine } from "../../../oracle/markovChain.ts";

function exponentialPair(rates: [number, number], positions: [number, number], places: number): Pair {
  const server = (index: 0 | 1) => {
    const work = { seconds: 1 / (rates[index] * positions[index]), squaredCv: 1, stops: [] };
    return pairServer(work, NO_DELAY, index === 0 ? "upstream" : "downstream", 0.1);
  };
  const [upstreamPositions, downstreamPositions] = positions;
  return { upstream: server(0), downstream: server(1), upstreamPositions, downstreamPositions, places };
}

const solve = (pair: Pair) => solvePair(pair, null, new JumpRoom(), 5000);

describe("solvePair", () => {
  it.each<[[number, number], [number, number], number]>([
    [[1, 1], [1, 1], 0],
    [[1, 1], [1, 1], 4],
    [[1, 0.8], [1, 1], 2],
    [[0.6, 0.5], [2, 3], 1],
    [[1, 1], [2, 2], 0],
  ])(
    "agrees with the exact chain of two exponential stations: rates %j, positions %j, places %i",
    (rates, positions, places) => {
      const exact = solveLine({
        stations: [
          { rate: rates[0], servers: positions[0] },
          { rate: rates[1], servers: positions[1], places },
        ],
      });
      const { throughput, blocking, starving } = solve(exponentialPair(rates, positions, places));
      expect(throughput).toBeCloseTo(exact.throughput, 5);
      const perHead = ({ short, long }: typeof blocking) => short.chance * short.seconds + long.chance * long.seconds;
      expect(perHead(blocking) * throughput).toBeCloseTo(exact.stations[0]!.blocked, 5);
      expect(perHead(starving) * throughput).toBeCloseTo(exact.stations[1]!.starved, 5);
    },
  );

  it("takes half a place for one that is there half of the time: between none and one", () => {
    const at = (places: number) => solve(exponentialPair([1, 1], [1, 1], places)).throughput;
    expect(at(0.5)).toBeGreaterThan(at(0));
    expect(at(0.5)).toBeLessThan(at(1));
    expect(at(1e-9)).toBeCloseTo(at(0), 6);
    expect(at(1 - 1e-9)).toBeCloseTo(at(1), 6);
  });

  it("goes on from the probabilities of before to the same answer", () => {
    const pair = exponentialPair([1, 0.9], [1, 1], 3);
    const whole = solve(pair);
    const room = new JumpRoom();
    let parts = solvePair(pair, null, room, 40);
    for (let part = 0; part < 100; part++) parts = solvePair(pair, parts.probability, room, 40);
    expect(parts.throughput).toBeCloseTo(whole.throughput, 6);
  });
});
