import { energy, mass, readMoney, readMoneyPer, readMoneyRate, volume } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { formatPath } from "../formatPath.ts";
import { readCurrency } from "../readCurrency.ts";
import { faultAt, type Located, located, locatedList } from "./located.ts";
import { workplacesOf } from "./stages.ts";

interface Amount {
  at: Located["at"];
  currency: string;
}

/** Wherever the plan speaks of money, it is in the currency that its prices are in. */
export function oneCurrency(json: unknown): Fault[] {
  const money = located(json, "money");
  const amounts = [...wagesAndPurchases(json), ...(money === null ? [] : prices(money))];
  if (money === null) return amounts[0] === undefined || !hasNone(json) ? [] : [needsMoney(amounts[0])];
  const currency = readCurrency(money.value.currency).value;
  if (currency === null) return [];
  return amounts
    .filter((amount) => amount.currency !== currency)
    .map((amount) =>
      faultAt(
        amount.at,
        `${amount.currency}, but the plan's money is in ${currency}`,
        `amounts in ${currency}`,
        "convert it",
      ),
    );
}

/** Nothing stands there, or null: what is of the wrong kind the schema has told of. */
function hasNone(json: unknown): boolean {
  return ((json as Record<string, unknown>).money ?? null) === null;
}

function needsMoney({ at, currency }: Amount): Fault {
  const found = `missing, but ${formatPath(at)} speaks of money`;
  return faultAt(["money"], found, "an object with the currency", `add "money": {"currency": "${currency}"}`);
}

function wagesAndPurchases(json: unknown): Amount[] {
  const purchases = workplacesOf(json).flatMap(({ at }) => located(json, ...at, "capital") ?? []);
  return [
    ...locatedList(json, "crews").flatMap(({ at, value }) => amountOf(readMoneyRate(value.pay).value, [...at, "pay"])),
    ...purchases.flatMap(({ at, value }) => amountOf(readMoney(value.price).value, [...at, "price"])),
  ];
}

function prices({ at, value }: Located): Amount[] {
  const byName = located(value, "prices");
  const plant = located(value, "plantCosts");
  return [
    ...amountOf(readMoneyPer(volume, "of 0 or more", value.water).value, [...at, "water"]),
    ...amountOf(readMoneyPer(volume, "of 0 or more", value.wasteWater).value, [...at, "wasteWater"]),
    ...amountOf(readMoneyPer(energy, "of 0 or more", value.energy).value, [...at, "energy"]),
    ...amountOf(readMoneyPer(energy, "of 0 or more", value.fuel).value, [...at, "fuel"]),
    ...amountOf(readMoneyPer(mass, "of 0 or more", value.livePrice).value, [...at, "livePrice"]),
    ...(plant === null ? [] : plantAmounts(plant.value, [...at, "plantCosts"])),
    ...Object.entries(byName?.value ?? {}).flatMap(([name, price]) =>
      amountOf(readMoneyPer(mass, "of either sign", price).value, [...at, "prices", name]),
    ),
  ];
}

function plantAmounts(costs: Record<string, unknown>, at: Located["at"]): Amount[] {
  const part = (key: string) => located(costs, key)?.value ?? {};
  return [
    ...amountOf(readMoney(part("building").price).value, [...at, "building", "price"]),
    ...amountOf(readMoney(costs.packaging).value, [...at, "packaging"]),
    ...amountOf(readMoney(part("inspection").perHead).value, [...at, "inspection", "perHead"]),
    ...amountOf(readMoneyRate(part("inspection").perHour).value, [...at, "inspection", "perHour"]),
    ...amountOf(readMoneyPer(mass, "of 0 or more", costs.waste).value, [...at, "waste"]),
    ...amountOf(readMoney(costs.overheadPerYear).value, [...at, "overheadPerYear"]),
    ...amountOf(readMoney(part("loan").amount).value, [...at, "loan", "amount"]),
  ];
}

function amountOf(reading: { currency: string } | null, at: Located["at"]): Amount[] {
  return reading === null ? [] : [{ at, currency: reading.currency }];
}
