import { z } from "zod";

/** A whole number within limits, both included. */
export function whole(least: number, most: number) {
  return z.int().min(least).max(most);
}
