import type { Response } from "./response.ts";

/** A plain response; the commonest wants less. */
export function row(
  key: string,
  label: string,
  unit: string,
  of: Response["of"],
  rest: Partial<Pick<Response, "format" | "better">> = {},
): Response {
  return { key, label, unit, format: rest.format ?? "number", better: rest.better ?? null, of };
}

/** The quotient, or null where there is nothing to divide by. */
export function per(value: number | null, by: number | null): number | null {
  return value === null || by === null || !(by > 0) ? null : value / by;
}
