import { does } from "../../../text/kinds/index.ts";
import { carriedBy } from "../mapWork.ts";
import type { ByProduct, Stage } from "../plan.ts";

/** Something taken off on the way that heads take when nobody sends them elsewhere. Shares of the live weight. */
export interface TakenOff {
  /** Stage, or station on a chain. */
  place: string;
  name: string;
  share: number;
  /** Still on the head after it. */
  left: number;
  /** Cut up, not dressed: it comes after the carcass is made. */
  isCut: boolean;
}

/** What leaves a head along the line, in order, as the engine reckons it: never more than there is. */
export function massAlong(line: readonly Stage[]): TakenOff[] {
  const rows: TakenOff[] = [];
  const way = mainWay(line);
  const dressed = lastOfDressing(way);
  let left = 1;
  way.forEach((stage, at) => {
    for (const place of [...carriedBy(stage), stage]) {
      for (const product of place.byProducts) {
        const share = Math.min(left, product.share * (product.of === "live weight" ? 1 : left));
        left -= share;
        rows.push({ place: place.name, name: product.name, share, left, isCut: at > dressed });
      }
    }
  });
  return rows;
}

/** Share of the live weight that is on a head when it comes to the stage. */
export function leftBefore(line: readonly Stage[], stage: string): number {
  const at = line.findIndex(({ name }) => name === stage);
  const before = new Set(
    mainWay(line)
      .filter((each) => line.indexOf(each) < at)
      .flatMap((each) => [each, ...carriedBy(each)].map(({ name }) => name)),
  );
  return massAlong(line)
    .filter(({ place }) => before.has(place))
    .reduce((left, { share }) => left - share, 1);
}

/** Carcass as a share of the live weight at slaughter, as it is weighed; what cut-up takes off counts as carcass. */
export function lineYield(line: readonly Stage[], weighed: "hot" | "cold"): number {
  const lost = new Set(
    mainWay(line)
      .flatMap(allProducts)
      .flatMap((product) => (product.chillLoss ? [product.name] : [])),
  );
  return massAlong(line)
    .filter(({ isCut, name }) => !isCut && !(weighed === "hot" && lost.has(name)))
    .reduce((left, { share }) => left - share, 1);
}

/** Everything the plan calls chill loss. */
export function chillLossNames(line: readonly Stage[]): string[] {
  return [...new Set(line.flatMap(allProducts).flatMap((product) => (product.chillLoss ? [product.name] : [])))];
}

function allProducts(stage: Stage): ByProduct[] {
  return [stage, ...carriedBy(stage)].flatMap(({ byProducts }) => byProducts);
}

/** The carcass is made when it has been chilled; without a chiller, when it leaves the line. */
function lastOfDressing(way: readonly Stage[]): number {
  const chilled = way.findLastIndex(
    (stage) =>
      does(stage, "hold heads") && (stage.dwell.kind === "chilling" || stage.byProducts.some((p) => p.chillLoss)),
  );
  return chilled < 0 ? way.length : chilled;
}

function mainWay(line: readonly Stage[]): Stage[] {
  const way: Stage[] = [];
  let stage: Stage | undefined = line[0];
  while (stage !== undefined && !way.includes(stage)) {
    way.push(stage);
    stage = nextOf(line, stage);
  }
  return way;
}

function nextOf(line: readonly Stage[], stage: Stage): Stage | undefined {
  if (stage.next !== null) return line.find(({ name }) => name === stage.next);
  return line.slice(line.indexOf(stage) + 1).find(({ offLine }) => !offLine);
}
