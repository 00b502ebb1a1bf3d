import { describe, it } from "vitest";
import { annuityFactor } from "../../sim/maths/numeric/index.ts";
import { appraise, presentFactor } from "../../sim/questions/options/index.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { WORTH } from "./register/worth.ts";

const checks = new OutsideChecks(WORTH);

describe("money over the years", () => {
  it(checks.title("W.1"), () => {
    const annuities: [number, number, string][] = [
      [0.05, 15, "10.3797"],
      [0.06, 10, "7.3601"],
      [0.08, 5, "3.9927"],
      [0.08, 10, "6.7101"],
      [0.1, 5, "3.7908"],
      [0.1, 10, "6.1446"],
      [0.12, 20, "7.4694"],
      [0.15, 8, "4.4873"],
      [0.2, 4, "2.5887"],
    ];
    for (const [interest, years, figure] of annuities) {
      checks.printed("W.1", `P/A ${interest} ${years}`, annuityFactor(interest, years), figure);
    }
    const present: [number, number, string][] = [
      [0.06, 3, "0.8396"],
      [0.08, 10, "0.4632"],
      [0.1, 5, "0.6209"],
    ];
    for (const [interest, years, figure] of present) {
      checks.printed("W.1", `P/F ${interest} ${years}`, presentFactor(interest, years), figure);
    }
  });

  it(checks.title("W.2"), () => {
    const found = appraise({ price: 10_000, lifeYears: 5, residual: 0, servicePerYear: 500 }, 3500, 0.1);
    const discounted = [1, 2, 3, 4, 5].reduce((sum, year) => sum + 3000 / 1.1 ** year, -10_000);
    checks.exact("W.2", "net present value", found.presentValue, discounted, 1e-12);
    checks.printed("W.2", "yearly amount", found.perYear, "362.03");
    checks.printed("W.2", "payback", found.paybackYears, "3.3333");
    checks.printed("W.2", "payback with interest", found.discountedPaybackYears, "4.2542");
  });
});

checks.close();
