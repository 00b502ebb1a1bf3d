import { describe, expect, it } from "vitest";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };

describe("gambrel schema", PATIENCE, () => {
  it.each(["plan", "study", "demand"])(
    "prints the JSON Schema of a %s on standard output and nothing else",
    async (kind) => {
      const { code, out, err } = await callCli(cliFolder(), ["schema", kind]);
      expect({ code, err }).toEqual({ code: 0, err: "" });
      expect(JSON.parse(out)).toMatchObject({ type: "object" });
    },
  );
});
