import { CHAIN, CHAIN_STATION, type CompiledLine, HANGING_POINT } from "./compiledLine.ts";

/** Where heads and crates can go from each stage, by index: the next stage, and every stage they may be sent to instead. */
export function waysOn(line: CompiledLine): number[][] {
  const ways = line.stages.names.map((_, stage) => waysFrom(line, stage));
  for (let chain = 0; chain < line.chains.count; chain++) addChain(line, chain, ways);
  if (line.supply.kind === "loads" && line.supply.firstBack >= 0) {
    ways[line.stages.hanging]!.push(line.supply.firstBack);
  }
  return ways;
}

function waysFrom({ stages, breakdowns }: CompiledLine, stage: number): number[] {
  const ways: number[] = [];
  const next = stages.next[stage]!;
  if (next === HANGING_POINT) ways.push(stages.hanging);
  else if (next >= 0) ways.push(next);
  for (let row = stages.branchFrom[stage]!; row < stages.branchFrom[stage + 1]!; row++) {
    const to = stages.branchTo[row]!;
    if (to < 0) ways.push(-1 - to);
  }
  if (stages.weightElse[stage]! >= 0) ways.push(stages.weightElse[stage]!);
  for (let unit = 0; unit < breakdowns.count; unit++) {
    if (breakdowns.stage[unit] === stage && breakdowns.headTo[unit]! >= 0) ways.push(breakdowns.headTo[unit]!);
  }
  return ways;
}

/** A head on a chain comes by every station on it, and may be taken off for a stage of its own. */
function addChain({ chains }: CompiledLine, chain: number, ways: number[][]): void {
  const stage = chains.stage[chain]!;
  for (let rank = 0; rank < chains.stationCount[chain]!; rank++) ways[stage]!.push(stage + 1 + rank);
  if (chains.unfinishedTo[chain]! >= 0) ways[stage]!.push(chains.unfinishedTo[chain]!);
}

/**
 * By stage: the stages beside which it stands, for a stage that heads come to only when they are sent aside; those of
 * the main line that send heads there, over other such stages too. Empty for every stage of the main line.
 */
export function besideOf(line: CompiledLine, ways: readonly number[][]): number[][] {
  const main = mainLine(line);
  return ways.map((_, stage) => (stage < line.stages.hanging || main.has(stage) ? [] : sendersTo(stage, ways, main)));
}

function mainLine({ stages }: CompiledLine): Set<number> {
  const main = new Set<number>();
  for (let stage = stages.hanging; stage >= 0 && !main.has(stage); stage = stages.next[stage]!) main.add(stage);
  stages.names.forEach((_, stage) => {
    if (stages.kind[stage] !== CHAIN_STATION) return;
    const chain = stages.kind.lastIndexOf(CHAIN, stage);
    if (main.has(chain)) main.add(stage);
  });
  return main;
}

function sendersTo(stage: number, ways: readonly number[][], main: ReadonlySet<number>): number[] {
  const aside = new Set([stage]);
  const senders = new Set<number>();
  for (const to of aside) {
    ways.forEach((targets, from) => {
      if (!targets.includes(to)) return;
      if (main.has(from)) senders.add(from);
      else aside.add(from);
    });
  }
  return [...senders];
}
