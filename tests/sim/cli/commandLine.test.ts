import { expect, it } from "vitest";
import { commandLine } from "../../../sim/cli/commandLine.ts";

it("leaves plain words alone and quotes what a shell would take apart", () => {
  expect(commandLine(["gambrel", "study", "a/b.json", "--seed", "x y"])).toBe("gambrel study a/b.json --seed 'x y'");
  expect(commandLine(["it's", "$HOME", ""])).toBe("'it'\\''s' '$HOME' ''");
});
