import { z } from "zod";

/** An object with these keys and no others. The valid keys travel in the message, where `zodFaults` picks them up. */
export function record<Shape extends z.ZodRawShape>(shape: Shape) {
  return recordOr(shape, undefined);
}

/** `otherKind`: the message where something else than an object stands, or nothing. */
function recordOr<Shape extends z.ZodRawShape>(shape: Shape, otherKind: string | undefined) {
  return z.strictObject(shape, {
    error: ({ code }) => {
      if (code === "unrecognized_keys") return Object.keys(shape).join(" ");
      return code === "invalid_type" ? otherKind : undefined;
    },
  });
}

/** Begins a message that tells of what an object needs one of. */
export const ONE_OF = "one of ";

/** An object with exactly one of these (optional) keys: a choice that editors can complete. */
export function oneKeyOf<Shape extends z.ZodRawShape>(shape: Shape) {
  const keys = Object.keys(shape);
  return recordOr(shape, ONE_OF + keys.join(", "))
    .superRefine((value, context) => {
      // An unknown key has been told of already; it may be the one that was meant.
      if (context.issues.some((issue) => issue.code === "unrecognized_keys")) return;
      const used = Object.keys(value as object);
      if (used.length === 1) return;
      const found = used.length === 0 ? "an empty object" : `${used.length} keys (${used.join(", ")})`;
      context.addIssue({
        code: "custom",
        params: { found, allowed: `exactly one of ${keys.join(", ")}`, remedy: "keep one" },
      });
    })
    .meta({ minProperties: 1, maxProperties: 1 });
}
