import { z } from "zod";

/** An object with these keys and no others. The valid keys travel in the message, where `zodFaults` picks them up. */
export function record<Shape extends z.ZodRawShape>(shape: Shape) {
  return z.strictObject(shape, {
    error: (issue) => (issue.code === "unrecognized_keys" ? Object.keys(shape).join(" ") : undefined),
  });
}

/** An object with exactly one of these (optional) keys: a choice that editors can complete. */
export function oneKeyOf<Shape extends z.ZodRawShape>(shape: Shape) {
  const keys = Object.keys(shape);
  return record(shape)
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
