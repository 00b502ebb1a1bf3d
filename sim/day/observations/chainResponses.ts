import type { Chain, Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { ChainRecord, DayRecord } from "../engine/index.ts";
import type { Response } from "./response.ts";
import { per, row } from "./row.ts";
import { stageRecordOf } from "./stageRecordOf.ts";
import { workingSeconds } from "./workingTime.ts";

/** Empty shackles, standing time by its cause, and heads that passed a window unfinished, for each chain. */
export function chainResponses(plan: Plan): Response[] {
  const chains = plan.line.filter((stage) => does(stage, "carry stations"));
  return chains.flatMap((chain) => [...gaps(chain), ...stands(chain, plan), ...passed(chain)]);
}

const LESS = { format: "share", better: "less" } as const;

function recordOf(day: DayRecord, chain: Chain): ChainRecord | undefined {
  return day.chains.find(({ name }) => name === chain.name);
}

function gaps(chain: Chain): Response[] {
  const share = (of: (record: ChainRecord) => number) => (day: DayRecord) => {
    const record = recordOf(day, chain);
    return record === undefined ? null : per(of(record), record.shackles);
  };
  const unit = "share of shackles";
  const empty = row(
    `gaps.${chain.name}`,
    `${chain.name}: empty shackles`,
    unit,
    share((of) => of.gaps),
    LESS,
  );
  const missing = share((of) => of.missingShackles);
  const label = `${chain.name}: no shackle back from the washer`;
  return chain.shackles === null ? [empty] : [empty, row(`missingShackles.${chain.name}`, label, unit, missing, LESS)];
}

const CAUSES = [
  ["down", "stoodDown", "because a station had broken down"],
  ["unfinished", "stoodUnfinished", "because a head was not finished in its window"],
  ["unloading", "stoodUnloading", "because the unloading point was full"],
  ["pause", "stoodPause", "because of a planned pause"],
] as const;

function stands(chain: Chain, plan: Plan): Response[] {
  const stood = (key: string, words: string, of: (seconds: ChainRecord["standSeconds"]) => number): Response =>
    row(
      key,
      `${chain.name}: stood still, ${words}`,
      "share of working time",
      (day) => {
        const record = recordOf(day, chain);
        return record === undefined ? null : per(of(record.standSeconds), workingSeconds(day, plan));
      },
      LESS,
    );
  const all = (seconds: ChainRecord["standSeconds"]) => CAUSES.reduce((sum, [cause]) => sum + seconds[cause], 0);
  return [
    stood(`stood.${chain.name}`, "all causes", all),
    ...CAUSES.map(([cause, key, words]) => stood(`${key}.${chain.name}`, words, (seconds) => seconds[cause])),
  ];
}

function passed(chain: Chain): Response[] {
  return chain.stations
    .filter(({ ifUnfinished }) => ifUnfinished === "pass")
    .map(({ name }) =>
      row(
        `passedUnfinished.${name}`,
        `${name}: heads that left the window unfinished`,
        "share of heads",
        (day) => {
          const record = stageRecordOf(day, name);
          return record === undefined ? null : per(record.unfinished, record.unfinished + record.processed);
        },
        LESS,
      ),
    );
}
