import { type Fault, formatPath, type PathStep, type Plan, parsePath, type TextFiles } from "../../asked/plan/index.ts";
import { type Change, joinChanges, planWith, toChange } from "../../asked/study/index.ts";
import { type CrewChange, crewChange } from "../options/index.ts";
import type { ImproveFile } from "./schema/improveFile.ts";
import type { Space } from "./space.ts";

type Asked = NonNullable<ImproveFile["allocate"]["budget"]>;
type Offer = Asked["options"][number];

export interface BaseRead {
  json: unknown;
  files: TextFiles;
  plan: Plan;
}

/** Options to buy. */
export function spaceOfBudget({ total, options }: Asked, base: BaseRead): { space: Space; faults: Fault[] } {
  const at = ["allocate", "budget", "options"];
  const offers = options.map((offer, index) => {
    const { set = {}, insert, remove, crew = {} } = offer;
    const own = toChange({ set, insert, remove });
    return { offer, own, people: crewChange(crew, base.json, [...at, index], own.set) };
  });
  const faults = offers.flatMap(({ offer, own, people }, index) =>
    offerFaults(offer, own, people, [...at, index], base),
  );
  const space: Space = {
    kind: "budget",
    unit: total.currency,
    elements: options.map(({ name, price }) => ({ name, from: 0, to: 1, price: price.amount })),
    least: 0,
    most: total.amount,
    base: options.map(() => 0),
    apart: excluding(offers.map(({ own }) => own)),
    offerCosts: options.map(({ price, life, residual, servicePerYear }) => ({
      price: price.amount,
      lifeYears: life,
      residual: residual?.amount ?? 0,
      servicePerYear: servicePerYear?.amount ?? 0,
    })),
    changeOf: (counts) => {
      const bought = offers.filter((_, index) => counts[index] === 1);
      const people = crewChange(totalCrew(bought.map(({ offer }) => offer)), base.json, at, {}).set;
      return joinChanges([...bought.map(({ own }) => own), { set: people, insert: [], remove: [] }]);
    },
    nameOf: (counts) => {
      const bought = options.filter((_, index) => counts[index] === 1).map(({ name }) => name);
      return bought.length === 0 ? "nothing bought" : bought.join(" + ");
    },
  };
  return { space, faults: [...faults, ...twice(options, at), ...currencyFaults({ total, options }, base.plan)] };
}

/** People of all options together: a crew that two of them change gets both changes. */
function totalCrew(offers: readonly Offer[]): Record<string, number> {
  const total: Record<string, number> = {};
  for (const [crew, more] of offers.flatMap(({ crew = {} }) => Object.entries(crew)))
    total[crew] = (total[crew] ?? 0) + more;
  return total;
}

/** Options that set the same place of the plan, or one a part of what the other sets, cannot both be had. */
function excluding(changes: readonly Change[]): [number, number][] {
  const places = changes.map(({ set }) => Object.keys(set).map((path) => parsePath(path) ?? [path]));
  const meet = (one: readonly PathStep[], other: readonly PathStep[]) =>
    one.slice(0, other.length).every((step, index) => step === other[index]);
  return places.flatMap((one, index) =>
    places.flatMap((other, later): [number, number][] =>
      later > index && one.some((path) => other.some((rival) => meet(path, rival))) ? [[index, later]] : [],
    ),
  );
}

function offerFaults(
  offer: Offer,
  own: Change,
  people: CrewChange,
  at: readonly (string | number)[],
  base: BaseRead,
): Fault[] {
  if (people.faults.length > 0) return people.faults;
  const change = joinChanges([own, { set: people.set, insert: [], remove: [] }]);
  if (Object.keys(change.set).length + change.insert.length + change.remove.length === 0) {
    const allowed = "set, insert, remove or crew";
    const remedy = 'write for example "set": { "line.skinning.buffer": 12 }';
    return [{ path: formatPath(at), found: "it changes nothing", allowed, remedy }];
  }
  const reading = planWith(base, change);
  return reading.faults.map((fault) => ({
    ...fault,
    path: `option '${offer.name}': ${fault.path === "" ? "the plan as a whole" : fault.path}`,
  }));
}

function twice(options: readonly Offer[], at: readonly (string | number)[]): Fault[] {
  return options.flatMap(({ name }, index): Fault[] =>
    options.findIndex((other) => other.name === name) === index
      ? []
      : [
          {
            path: formatPath([...at, index, "name"]),
            found: `'${name}' stands twice among the options`,
            allowed: "each name once",
            remedy: "rename or delete one of them",
          },
        ],
  );
}

/** All money in one currency: that of the plan, or where it has none that of the total. */
function currencyFaults({ total, options }: Asked, { money }: Plan): Fault[] {
  const due = money?.currency ?? total.currency;
  const of = (amount: { currency: string } | undefined, path: readonly (string | number)[]): Fault[] =>
    amount === undefined || amount.currency === due
      ? []
      : [
          {
            path: formatPath(path),
            found: `${amount.currency}, but ${money === null ? "the budget is" : "the plan reckons"} in ${due}`,
            allowed: due,
            remedy: "give the amount in that currency",
          },
        ];
  const at = ["allocate", "budget"];
  return [
    ...of(total, [...at, "total"]),
    ...options.flatMap((option, index) =>
      (["price", "residual", "servicePerYear"] as const).flatMap((key) =>
        of(option[key], [...at, "options", index, key]),
      ),
    ),
  ];
}
