import { z } from "zod";

/**
 * Lists of objects that are alike, turned into columns: of two hundred variants each with the same two thousand keys the keys
 * are written once. `rows.finish.mean` holds the mean of every row; where all rows have the same text, number or nothing in a
 * place, it stands there once, and is no list. A row's objects may lack keys: `""` beside the columns says how many rows there
 * are, and which of them have a key at all (`has`), or null in the place of an object (`none`). Lists within are turned
 * likewise. Nothing is lost: `asRows(inColumns(x))` is `x`, as far as JSON can tell.
 */
export function inColumns(value: unknown): unknown {
  if (Array.isArray(value)) return isTable(value) ? tableOf(value) : value.map(inColumns);
  if (!isObject(value)) return value;
  const inside = Object.fromEntries(presentEntries(value).map(([key, each]) => [key, inColumns(each)]));
  // A name that somebody chose may be empty, too.
  return Object.hasOwn(value, MARK) ? { [MARK]: { asIs: inside } } : inside;
}

/**
 * What `inColumns` was given. Throws a `RangeError` at columns that do not fit together, and where so many rows are claimed
 * that they could not have come from a run.
 */
export function asRows(value: unknown): unknown {
  return new Rows().of(value);
}

type Cells = Record<string, unknown>;

/** What stands beside columns. `rows`: their number, in a table; `asIs`: an object that has a key "" itself. */
const SHAPE = z.strictObject({
  rows: z.int().min(2).optional(),
  /** Rows that have the key, where not all have. */
  has: z.custom<RowsByKey>(areRowsByKey).optional(),
  /** Rows in which null stands where others have an object. */
  none: z.custom<RowsByKey>(areRowsByKey).optional(),
  asIs: z.custom<Cells>(isObject).optional(),
});

type RowsByKey = Record<string, number[]>;

type Mark = z.output<typeof SHAPE>;

const MARK = "";

/** Of a table's cells so many are empty at most: rows with keys of their own are no table. */
const MAX_EMPTY = 0.5;

function isTable(list: readonly unknown[]): list is Cells[] {
  return list.length > 1 && list.every(isObject) && isFull(list);
}

function isFull(rows: readonly Cells[]): boolean {
  const keys = new Set<string>();
  let cells = 0;
  for (const row of rows) {
    if (Object.hasOwn(row, MARK)) return false;
    for (const [key] of presentEntries(row)) {
      keys.add(key);
      cells += 1;
    }
  }
  return cells >= keys.size * rows.length * (1 - MAX_EMPTY);
}

function tableOf(rows: readonly Cells[]): Cells {
  const columns = columnsOf(rows, rows.length);
  return { ...columns, [MARK]: { ...markOf(rows, columns), rows: rows.length } };
}

/** The columns of rows of which some may be no objects. */
function columnsOf(rows: readonly (Cells | null | undefined)[], length: number): Cells {
  const keys = [...new Set(rows.flatMap((row) => (row == null ? [] : presentEntries(row).map(([key]) => key))))];
  return Object.fromEntries(
    keys.map((key) => [key, columnOf(Array.from({ length }, (_, row) => cellOf(rows[row], key)))]),
  );
}

function columnOf(cells: readonly unknown[]): unknown {
  const there = cells.filter((cell) => cell != null);
  if (there.length > 1 && there.every(isObject) && isFull(there)) {
    const rows = cells as (Cells | null | undefined)[];
    const columns = columnsOf(rows, cells.length);
    const mark = markOf(rows, columns);
    return { ...columns, ...(Object.keys(mark).length === 0 ? {} : { [MARK]: mark }) };
  }
  const [first] = cells;
  if (!isObject(first) && !Array.isArray(first) && cells.every((cell) => Object.is(cell, first))) return first ?? null;
  return cells.map((cell) => inColumns(cell ?? null));
}

/** Its own: every object has a `toString` that is none of its cells. */
function cellOf(row: Cells | null | undefined, key: string): unknown {
  return row != null && Object.hasOwn(row, key) ? row[key] : undefined;
}

/** Only of columns whose rows do not all have the same keys. */
function markOf(rows: readonly (Cells | null | undefined)[], columns: Cells): Mark {
  const [has, none]: [RowsByKey, RowsByKey] = [{}, {}];
  const owners = rows.flatMap((row, index) => (row == null ? [] : [index]));
  for (const [key, column] of Object.entries(columns)) {
    const having = owners.filter((index) => cellOf(rows[index], key) !== undefined);
    if (having.length < owners.length) put(has, key, having);
    const nulls = having.filter((index) => cellOf(rows[index], key) === null);
    if (isObject(column) && nulls.length > 0) put(none, key, nulls);
  }
  return {
    ...(Object.keys(has).length > 0 ? { has } : {}),
    ...(Object.keys(none).length > 0 ? { none } : {}),
  };
}

/** Cells of all tables, more than the largest run has: a file made to do harm must not fill the memory. */
const MAX_CELLS = 50_000_000;

class Rows {
  #left = MAX_CELLS;

  of(value: unknown): unknown {
    if (Array.isArray(value)) return value.map((each) => this.of(each));
    if (!isObject(value)) return value;
    const { asIs, rows } = markIn(value);
    if (asIs !== undefined) return onEach(asIs, (each) => this.of(each));
    if (rows === undefined) return onEach(value, (each) => this.of(each));
    this.#count(rows);
    return this.#table(
      value,
      Array.from({ length: rows }, (_, row) => row),
    );
  }

  #count(cells: number): void {
    this.#left -= cells;
    if (this.#left < 0) throw new RangeError("asRows: more cells than any run has");
  }

  /** The rows with these numbers. */
  #table(columns: Cells, numbers: readonly number[]): Cells[] {
    const { has, none } = markIn(columns);
    const rows = new Map(numbers.map((number) => [number, {} as Cells]));
    for (const [key, column] of Object.entries(columns)) {
      if (key === MARK) continue;
      this.#count(numbers.length);
      const having = (own(has, key) ?? numbers).filter((number) => rows.has(number));
      const empty = new Set(own(none, key));
      const full = having.filter((number) => !empty.has(number));
      for (const number of having) if (empty.has(number)) put(rows.get(number)!, key, null);
      const cells = this.#cells(column, full);
      for (const [index, number] of full.entries()) put(rows.get(number)!, key, cells[index]);
    }
    return [...rows.values()];
  }

  #cells(column: unknown, numbers: readonly number[]): unknown[] {
    if (isObject(column)) return this.#table(column, numbers);
    if (!Array.isArray(column)) return numbers.map(() => column);
    return numbers.map((number) => {
      if (number >= column.length) throw new RangeError("asRows: a column is too short");
      return this.of(column[number]);
    });
  }
}

function markIn(columns: Cells): Mark {
  if (!Object.hasOwn(columns, MARK)) return {};
  const found = SHAPE.safeParse(columns[MARK]);
  if (!found.success) throw new RangeError("asRows: what stands beside columns is not understood");
  return found.data;
}

function own(of: RowsByKey | undefined, key: string): number[] | undefined {
  return of !== undefined && Object.hasOwn(of, key) ? of[key] : undefined;
}

/** As an own property, whatever its name. */
function put(row: Record<string, unknown>, key: string, value: unknown): void {
  if (key !== "__proto__") {
    row[key] = value;
    return;
  }
  Object.defineProperty(row, key, { value, enumerable: true, configurable: true, writable: true });
}

function onEach(object: Cells, change: (value: unknown) => unknown): Cells {
  return Object.fromEntries(Object.entries(object).map(([key, each]) => [key, change(each)]));
}

function presentEntries(object: Cells): [string, unknown][] {
  return Object.entries(object).filter(([, each]) => each !== undefined);
}

function areRowsByKey(value: unknown): boolean {
  return isObject(value) && Object.values(value).every((rows) => Array.isArray(rows) && rows.every(Number.isInteger));
}

function isObject(value: unknown): value is Cells {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
