import { expect, it } from "vitest";
import packageJson from "../../../package.json" with { type: "json" };
import { programVersion, projectRoot } from "../../../sim/cli/project.ts";

it("is the version in the package.json of this project's own folder", () => {
  expect(programVersion()).toBe(packageJson.version);
  expect(import.meta.dirname.startsWith(projectRoot())).toBe(true);
});
