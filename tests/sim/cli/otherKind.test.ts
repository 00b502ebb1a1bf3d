import { describe, expect, it } from "vitest";
import { refuseOtherKind } from "../../../sim/cli/otherKind.ts";
import { demandFile } from "../../support/demands.ts";
import { improveFileOf } from "../../support/improveCases.ts";
import { offersFile } from "../../support/offers.ts";

const refusing = (json: unknown, wanted: "plan" | "study" | "demand") => () =>
  refuseOtherKind({ path: "x.json", json } as Parameters<typeof refuseOtherKind>[0], wanted);

describe("refuseOtherKind", () => {
  it("names the command that the file is for, and what was wanted", () => {
    expect(refusing(demandFile(), "plan")).toThrow(
      'x.json: this is a demand; size a plan for it with "gambrel size", or name a plan.',
    );
    expect(refusing(offersFile(), "study")).toThrow(/this is a file of options; .* or name a study\./);
    expect(refusing(improveFileOf(), "demand")).toThrow(
      /asks for an improvement; search for it with "gambrel improve"/,
    );
  });

  it("lets pass what is of the kind, and what shows no sign of any", () => {
    expect(refusing(demandFile(), "demand")).not.toThrow();
    expect(refusing({ name: "x" }, "plan")).not.toThrow();
  });
});
