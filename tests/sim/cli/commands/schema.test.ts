import { describe, expect, it } from "vitest";
import { cliFolder } from "../../../support/cliFolder.ts";
import { runCli } from "../../../support/runCli.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };

describe("gambrel schema", PATIENCE, () => {
  it.each(["plan", "study", "demand"])(
    "prints the JSON Schema of a %s on standard output and nothing else",
    async (kind) => {
      const { code, out, err } = await runCli(cliFolder(), ["schema", kind]);
      expect({ code, err }).toEqual({ code: 0, err: "" });
      expect(JSON.parse(out)).toMatchObject({ type: "object" });
    },
  );
});
