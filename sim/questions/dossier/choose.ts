import type { Ranged } from "../options/index.ts";
import type { LimitKept } from "./trial.ts";

/** One kind of plant as the owner compares it. Money in the demand's currency; null where a price is missing. */
export interface OwnerRow {
  name: string;
  shifts: number;
  capital: number | null;
  /** Paths of the demand at which prices are missing. */
  open: string[];
  /** At their posts in each shift, and on the books. */
  people: number;
  employed: number;
  squareMetres: number;
  kilowatts: number;
  cubicMetres: number;
  /** Full cost of a kilogram of carcass, animals not included; without capital where that is open. */
  costPerKg: Ranged | null;
  overtimeSeconds: Ranged;
  limits: LimitKept[];
  spare: Ranged;
  /** Null: not in the years looked at. */
  yearsUntilTooSmall: number | null;
  value: Ranged | null;
  /** Probability that no other kind that may be built is worth more. */
  best: number | null;
  /** Probability that it is worth less than nothing. */
  loss: number | null;
  /** Why it should not be built whatever it earns. */
  obstacles: string[];
  undominated: boolean;
}

/** What is looked at to say that a kind is beaten: less is better. */
const CRITERIA: ((row: ComparedRow) => number)[] = [
  ({ limits }) => outsideOf(limits),
  ({ overtimeSeconds }) => Math.round(overtimeSeconds.mean / 60),
  ({ spare }) => -Math.round(spare.mean * 100),
  ({ capital }) => capital ?? 0,
  ({ value, costPerKg, people }) => (value !== null ? -value.mean : (costPerKg?.mean ?? people)),
];

export type ComparedRow = Omit<OwnerRow, "undominated" | "best" | "loss">;

/** Share of heads outside any limit, all limits together. */
export function outsideOf(limits: readonly LimitKept[]): number {
  return limits.reduce((sum, { outside }) => sum + outside, 0);
}

/**
 * Whether no other kind is as good in limits, overtime (whole minutes), spare rate (whole percent), capital and value (or cost, or people, where
 * there are no prices), and better in one of them. Kinds with an obstacle are out of this.
 */
export function isUndominated(row: ComparedRow, rows: readonly ComparedRow[]): boolean {
  if (row.obstacles.length > 0) return false;
  const own = CRITERIA.map((of) => of(row));
  return !rows.some((other) => {
    if (other === row || other.obstacles.length > 0) return false;
    const theirs = CRITERIA.map((of) => of(other));
    return theirs.every((each, at) => each <= own[at]!) && theirs.some((each, at) => each < own[at]!);
  });
}

/** Kinds that may be chosen: without an obstacle, and with no more heads outside a limit than the best of them. */
export function mayBeBuilt(rows: readonly ComparedRow[]): boolean[] {
  const sound = rows.filter(({ obstacles }) => obstacles.length === 0);
  const fewest = Math.min(...sound.map(({ limits }) => outsideOf(limits)));
  return rows.map((row) => sound.includes(row) && outsideOf(row.limits) === fewest);
}

export interface KindChoice {
  /** Index of the kind to build; null where none may be. */
  row: number | null;
  /** By what it was chosen. */
  by: "value" | "cost" | "people";
  /** Others that may be as good, best first. */
  rivals: number[];
  /** A kind that only an obstacle keeps from being worth more (or cheaper); null where there is none. */
  hindered: number | null;
}

/** A rival is worth naming from this probability of being best on. */
const MIN_RIVAL = 0.1;

/**
 * Animals first: of the kinds without an obstacle those with the fewest heads outside a limit; of these the one worth most, or cheapest where a
 * price is missing, or with the fewest people where no money is known.
 */
export function chooseKind(rows: readonly OwnerRow[]): KindChoice {
  const kept = mayBeBuilt(rows).flatMap((may, at) => (may ? [at] : []));
  const by = rows.every(({ value }) => value !== null)
    ? "value"
    : rows.every(({ costPerKg }) => costPerKg !== null)
      ? "cost"
      : "people";
  const merit = (at: number): number => {
    const { value, costPerKg, people, shifts } = rows[at]!;
    return by === "value" ? value!.mean : by === "cost" ? -costPerKg!.mean : -people * shifts;
  };
  const ranked = kept.toSorted((a, b) => merit(b) - merit(a));
  const [row, ...others] = ranked;
  const fewest = row === undefined ? 0 : outsideOf(rows[row]!.limits);
  const rivals = others.filter((at) =>
    by === "value" ? rows[at]!.best! >= MIN_RIVAL : by === "people" && merit(at) === merit(row!),
  );
  const hindered = rows
    .flatMap((each, at) => (each.obstacles.length > 0 && by !== "people" ? [at] : []))
    .toSorted((a, b) => merit(b) - merit(a))
    .find((at) => row !== undefined && merit(at) > merit(row) && outsideOf(rows[at]!.limits) <= fewest);
  return { row: row ?? null, by, rivals, hindered: hindered ?? null };
}
