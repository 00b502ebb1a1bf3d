import { expect, test } from "vitest";
import { differenceView, responseView } from "../../../viz/pictures/index.ts";
import { syntheticFactorial, syntheticStudy } from "../../support/syntheticStudy.ts";

test("a few variants are told one by one, each with its interval", () => {
  const study = syntheticStudy();
  const text = responseView(study, study.responses[0]!).description;
  expect(text.match(/20 simulated days/g)).toHaveLength(4);
});

test("many variants are told by today's plan, lowest and highest", () => {
  const study = syntheticFactorial();
  const text = responseView(study, study.responses[0]!).description;
  expect(text).toMatch(
    /^Today's plan, “4 places, 4\.8 s”.*Lowest of 12 variants “4 places, 6\.0 s”.*Highest “32 places, 4\.8 s”/,
  );
  expect(differenceView(study, study.responses[0]!).description).toMatch(/^11 of 11 differences are shown\. Lowest/);
});
