import { formatNumber, readShare } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import { CHILL_LOSS, REMOVABLE_PARTS, type RemovablePart } from "../plan.ts";
import { keptParts } from "../presentation/keptParts.ts";
import { faultAt, type Located, located, locatedList, locatedTexts } from "./located.ts";
import { chainStationsOf, stagesOf, workplacesOf } from "./stages.ts";
import { wholeWay } from "./wholeWay.ts";

const PARTS_KEYS = [...REMOVABLE_PARTS, "rest"] as const;
/** Of shares written in percent. */
const ROUNDING = 1e-9;

/** What is sold, what an animal is made of and what the stages take off fit each other. */
export function presentation(json: unknown): Fault[] {
  const told = located(json, "presentation");
  return [
    ...adding(located(json, "bodyParts")),
    ...(told === null
      ? []
      : [...tagsOfYield(told), ...farmWeight(told), ...wordsTwice(json, told), ...hotWeight(json, told)]),
    ...workplacesOf(json).flatMap(({ at }) =>
      locatedList(json, ...at, "takesOff").flatMap((product) => [...shareOrParts(product), ...grounds(json, product)]),
    ),
    ...partsOnTheWay(json, told),
  ];
}

/** An animal is all of its parts and no more. */
function adding(parts: Located | null): Fault[] {
  if (parts === null) return [];
  const shares = PARTS_KEYS.map((key) => readShare(parts.value[key]).value);
  if (shares.some((share) => share === null)) return [];
  const sum = shares.reduce<number>((total, share) => total + share!, 0);
  if (Math.abs(sum - 1) <= ROUNDING) return [];
  const rest = 1 - (sum - shares.at(-1)!);
  const remedy =
    rest > 0
      ? `correct the share that is wrong; if only "rest" is, it is ${percent(rest)}`
      : "correct the shares: they leave nothing for muscle, bone and fat";
  return [faultAt(parts.at, `the parts add up to ${percent(sum)} of the live weight`, "100 %", remedy)];
}

/** Finer than shares are told elsewhere: a tenth of a point is what is looked for. */
function percent(share: number): string {
  return `${formatNumber(100 * share, 5)} %`;
}

const TAGS: [key: string, words: Record<string, string>][] = [
  ["head", { on: "with the head", off: "without the head" }],
  ["paws", { on: "with the paws", off: "without the paws" }],
  ["weighed", { hot: "of the hot carcass", cold: "of the cold carcass" }],
  ["liveWeight", { farm: "of the live weight at the farm", slaughter: "of the live weight at slaughter" }],
];

/** A yield of another presentation says nothing about this one. */
function tagsOfYield({ at, value }: Located): Fault[] {
  const stated = located(value, "yield");
  if (stated === null) return [];
  return TAGS.flatMap(([key, words]) => {
    const [own, theirs] = [words[String(value[key])], words[String(stated.value[key])]];
    if (own === undefined || theirs === undefined || own === theirs) return [];
    const found = `the yield is ${theirs}, but what is sold is ${own}`;
    return [faultAt([...at, "yield", key], found, `"${value[key]}"`, "give a yield of what is sold, or none")];
  });
}

function farmWeight({ at, value }: Located): Fault[] {
  if (value.liveWeight !== "farm" || (value.journeyLoss ?? null) !== null) return [];
  const found = "missing, but yields are of the live weight at the farm and heads are weighed at slaughter";
  return [
    faultAt([...at, "journeyLoss"], found, 'a share such as "2 %"', "weigh a load at the farm and before slaughter"),
  ];
}

function wordsTwice(json: unknown, { at }: Located): Fault[] {
  const { dressing } = json as Record<string, unknown>;
  if (typeof dressing !== "string" || dressing === "") return [];
  return [
    faultAt(["dressing"], "both words and a presentation", "one of the two", `keep "${at.join(".")}" and delete this`),
  ];
}

/** The hot weight can be told only where drip is told from everything else. */
function hotWeight(json: unknown, { value }: Located): Fault[] {
  if (value.weighed !== "hot") return [];
  return stagesOf(json)
    .filter((stage) => stage.value.chilling !== undefined)
    .flatMap((stage) => locatedList(json, ...stage.at, "takesOff"))
    .filter((product) => product.value.parts === undefined)
    .map(({ at }) =>
      faultAt(
        at,
        "the carcass is weighed hot, but the plan does not say whether this is drip",
        '"parts"',
        'write "parts": ["chillLoss"]',
      ),
    );
}

function shareOrParts({ at, value }: Located): Fault[] {
  const [hasShare, hasParts] = [value.share !== undefined, value.parts !== undefined];
  if (hasShare !== hasParts) return [];
  const found = hasShare ? "both a share and parts" : "neither a share nor parts";
  return [
    faultAt(
      at,
      found,
      'exactly one of "share" and "parts"',
      hasShare ? "keep one" : 'write for example "share": "3 %"',
    ),
  ];
}

/** Parts need what their shares come from. */
function grounds(json: unknown, { at }: Located): Fault[] {
  const parts = locatedTexts(json, ...at, "parts").map(({ text }) => text);
  if (parts.length === 0) return [];
  const told = located(json, "presentation");
  const place = [...at, "parts"];
  const drips = parts.includes(CHILL_LOSS);
  if (drips && parts.length > 1)
    return [faultAt(place, "drip together with parts of the body", "one of the two", "split it into two entries")];
  const faults: Fault[] = [];
  if (told === null)
    faults.push(
      faultAt(
        ["presentation"],
        "missing, but a stage takes off parts",
        "what is sold as a carcass",
        'add "presentation"',
      ),
    );
  else if (drips && (told.value.chillLoss ?? null) === null)
    faults.push(
      faultAt(
        [...told.at, "chillLoss"],
        "missing, but a stage takes off drip",
        'a share such as "2 %"',
        'add "chillLoss"',
      ),
    );
  if (!drips && located(json, "bodyParts") === null)
    faults.push(
      faultAt(["bodyParts"], "missing, but a stage takes off parts", "the share of every part", 'add "bodyParts"'),
    );
  return faults;
}

/** On the way that heads take, every part that is not sold comes off once. */
function partsOnTheWay(json: unknown, told: Located | null): Fault[] {
  if (told === null || located(json, "bodyParts") === null) return [];
  const places = wholeWay(stagesOf(json)).flatMap((stage) => [...chainStationsOf(json, stage), stage]);
  const taken = places.flatMap((place) =>
    locatedList(json, ...place.at, "takesOff").flatMap((product) => locatedTexts(json, ...product.at, "parts")),
  );
  const twice = taken.flatMap(({ at, text }, index) =>
    taken.findIndex((other) => other.text === text) === index
      ? []
      : [faultAt(at, `'${text}' is also taken off by an earlier stage`, "once on the way", "name it at one of them")],
  );
  const texts = taken.map(({ text }) => text);
  const kept: readonly string[] = keptParts(told.value as Parameters<typeof keptParts>[0]);
  const missing = REMOVABLE_PARTS.filter((part: RemovablePart) => !kept.includes(part) && !texts.includes(part));
  if (missing.length === 0) return twice;
  const found = `${listWords(missing)} ${missing.length === 1 ? "is" : "are"} not part of what is sold, but no stage on the way takes ${missing.length === 1 ? "it" : "them"} off`;
  return [
    ...twice,
    faultAt(
      ["presentation"],
      found,
      "",
      `name ${missing.length === 1 ? "it" : "them"} in "parts" of the "takesOff" of a stage`,
    ),
  ];
}
