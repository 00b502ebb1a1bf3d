// Everything that is checked against the outside world, test file by test file

import { BATCH_ARRIVALS } from "./batchArrivals.ts";
import { BREAKDOWN_CLOCKS } from "./breakdownClocks.ts";
import { CHAIN_WINDOWS } from "./chainWindows.ts";
import { CHILLING } from "./chilling.ts";
import { CREWS } from "./crews.ts";
import { DISTRIBUTIONS } from "./distributions.ts";
import { ESTIMATES } from "./estimates.ts";
import { FITTING } from "./fitting.ts";
import { GATES } from "./gates.ts";
import { LITTLES_LAW } from "./littlesLaw.ts";
import { NON_EXPONENTIAL_LINES } from "./nonExponentialLines.ts";
import type { OutsideRow } from "./outsideRow.ts";
import { PARALLEL_QUEUES } from "./parallelQueues.ts";
import { QUEUES } from "./queues.ts";
import { RANDOM_LINES } from "./randomLines.ts";
import { RECURSION } from "./recursion.ts";
import { REMOVALS } from "./removals.ts";
import { SATURATED_LINES } from "./saturatedLines.ts";
import { SEVERAL_DAYS } from "./severalDays.ts";
import { STATISTICS } from "./statistics.ts";
import { TRADE } from "./trade.ts";
import { UNRELIABLE_LINES } from "./unreliableLines.ts";
import { WORTH } from "./worth.ts";

export { CLASSES, LABELS, type OutsideRow } from "./outsideRow.ts";

export const REGISTER: { file: string; about: string; rows: OutsideRow[] }[] = [
  { file: "queues.test.ts", about: "One server, closed forms", rows: QUEUES },
  { file: "parallelQueues.test.ts", about: "Several servers, closed forms", rows: PARALLEL_QUEUES },
  { file: "breakdownClocks.test.ts", about: "One server that breaks down", rows: BREAKDOWN_CLOCKS },
  { file: "batchArrivals.test.ts", about: "Crates as bulk arrivals", rows: BATCH_ARRIVALS },
  { file: "removals.test.ts", about: "Heads taken off on the way", rows: REMOVALS },
  { file: "crews.test.ts", about: "People and breaks", rows: CREWS },
  { file: "littlesLaw.test.ts", about: "Little's law as an identity", rows: LITTLES_LAW },
  { file: "saturatedLines.test.ts", about: "Saturated exponential lines", rows: SATURATED_LINES },
  { file: "nonExponentialLines.test.ts", about: "Lines that are not exponential", rows: NON_EXPONENTIAL_LINES },
  { file: "unreliableLines.test.ts", about: "Lines whose stations break down", rows: UNRELIABLE_LINES },
  { file: "randomLines.test.ts", about: "Random lines against the exact chain", rows: RANDOM_LINES },
  { file: "estimates.test.ts", about: "The analytic estimate", rows: ESTIMATES },
  { file: "recursion.test.ts", about: "The same draws through a recursion", rows: RECURSION },
  { file: "distributions.test.ts", about: "Draws and streams", rows: DISTRIBUTIONS },
  { file: "statistics.test.ts", about: "Statistics", rows: STATISTICS },
  { file: "fitting.test.ts", about: "Fitting time studies", rows: FITTING },
  { file: "gates.test.ts", about: "Gates as closed networks", rows: GATES },
  { file: "chainWindows.test.ts", about: "Chains and windows", rows: CHAIN_WINDOWS },
  { file: "chilling.test.ts", about: "Chilling", rows: CHILLING },
  { file: "severalDays.test.ts", about: "Several days, wear", rows: SEVERAL_DAYS },
  { file: "trade.test.ts", about: "Rules, yields and figures of the trade", rows: TRADE },
  { file: "worth.test.ts", about: "Money over the years", rows: WORTH },
];
