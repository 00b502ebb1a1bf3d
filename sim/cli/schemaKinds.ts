/** Kinds of files that have a published schema. */
export const SCHEMA_KINDS = ["plan", "study", "demand", "options", "improve"] as const;
export type SchemaKind = (typeof SCHEMA_KINDS)[number];
