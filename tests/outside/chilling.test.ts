import { describe, it } from "vitest";
import {
  type CoolingBody,
  coolingSeconds,
  crossflowNusselt,
  equivalentRadius,
  excessShare,
  fourierUntil,
  meanTemperature,
  type Shape,
  seriesTerms,
  surfaceCoefficient,
  temperatureAt,
} from "../../sim/maths/chilling/index.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { CHILLING } from "./register/chilling.ts";

const checks = new OutsideChecks(CHILLING);
const MEAT = { conductivity: 0.48, density: 1070, specificHeat: 3500 };

function body(shape: Shape, radius: number, coefficient: number): CoolingBody {
  return { ...MEAT, shape, radius, surfaceCoefficient: coefficient };
}

/** Biot number, then first root and coefficient of slab, cylinder and sphere. */
const FIRST_TERMS: [number, ...string[]][] = [
  [0.01, "0.099834", "1.001661", "0.141245", "1.002496", "0.173032", "1.002998"],
  [0.1, "0.311053", "1.016094", "0.441682", "1.024579", "0.542281", "1.029798"],
  [0.5, "0.653271", "1.070128", "0.940771", "1.114255", "1.165561", "1.144106"],
  [1, "0.860334", "1.119132", "1.255784", "1.207092", "1.570796", "1.273240"],
  [2, "1.076874", "1.178456", "1.599449", "1.338377", "2.028758", "1.479319"],
  [5, "1.313838", "1.240249", "1.989815", "1.502869", "2.570432", "1.787001"],
  [10, "1.428870", "1.261963", "2.179497", "1.567692", "2.836300", "1.924909"],
  [100, "1.555245", "1.273088", "2.380902", "1.601524", "3.110187", "1.999033"],
];
const SHAPES: Shape[] = ["slab", "cylinder", "sphere"];

describe("terms of the series", () => {
  it.each(FIRST_TERMS)(`${checks.title("8.0a")}: Biot %d`, (biot, ...figures) => {
    SHAPES.forEach((shape, index) => {
      const { root, centre } = seriesTerms(shape, biot, 1)[0]!;
      checks.printed("8.0a", `${shape} root`, root, figures[2 * index]!);
      checks.printed("8.0a", `${shape} coefficient`, centre, figures[2 * index + 1]!);
    });
  });

  it(`${checks.title("8.0a")}: limits for a surface at the air's temperature`, () => {
    ["1.570796", "2.404826", "3.141593"].forEach((limit, index) => {
      checks.printed("8.0a", "limit", seriesTerms(SHAPES[index]!, 1e9, 1)[0]!.root, limit);
    });
  });

  it(checks.title("8.0b"), () => {
    const terms = seriesTerms("cylinder", 1, 4);
    ["1.255784", "4.079478", "7.155799", "10.270985"].forEach((figure, index) => {
      checks.printed("8.0b", "root", terms[index]!.root, figure);
    });
    ["1.207092", "-0.290149", "0.128908", "-0.075569"].forEach((figure, index) => {
      checks.printed("8.0b", "coefficient", terms[index]!.centre, figure);
    });
  });

  it.each([
    [0.1, "0.976817", "1.030985"],
    [0.2, "0.870174", "0.880571"],
    [0.5, "0.548586", "0.548657"],
    [1, "0.249380", "0.249380"],
    [2, "0.051521", "0.051521"],
  ])(`${checks.title("8.0c")}: Fourier %d`, (fourier, series, first) => {
    checks.printed("8.0c", "series", excessShare("cylinder", 1, fourier, "centre"), series);
    const { root, centre } = seriesTerms("cylinder", 1, 1)[0]!;
    checks.printed("8.0c", "first term", centre * Math.exp(-root * root * fourier), first);
  });
});

describe("times from 39 to 4 degrees", () => {
  for (const [id, cooled, air, biot, fourier, seconds] of [
    ["8.1", body("cylinder", 0.03, 20), 0, 1.25, "1.338569", "9399.27"],
    ["8.2", body("cylinder", 0.03, 20), -1, 1.25, "1.232532", "8654.69"],
    ["8.3", body("cylinder", 0.03, 40), 0, 2.5, "0.893977", "6277.40"],
    ["8.4", body("cylinder", 0.035, 20), 0, 1.4583333333, "1.210632", "11570.68"],
    ["8.5", body("cylinder", 0.025, 20), 0, 1.0416666667, "1.518364", "7404.00"],
    ["8.6", body("slab", 0.03, 20), 0, 1.25, "2.777796", "19505.33"],
    ["8.7", body("sphere", 0.03, 20), 0, 1.25, "0.871040", "6116.33"],
  ] as const) {
    it(checks.title(id), () => {
      checks.printed(id, "Fourier number", fourierUntil(cooled.shape, biot, (4 - air) / (39 - air)), fourier);
      checks.printed(id, "seconds", coolingSeconds(cooled, 39, 4, air), seconds);
    });
  }

  it(`${checks.title("8.1")}: mean and surface at its end`, () => {
    const cooled = body("cylinder", 0.03, 20);
    const seconds = coolingSeconds(cooled, 39, 4, 0);
    checks.printed("8.1", "mean", meanTemperature(cooled, seconds, 39, 0), "3.136942");
    checks.printed("8.1", "surface", temperatureAt(cooled, "surface", seconds, 39, 0), "2.340953");
  });

  it(checks.title("8.8"), () => {
    // Product of the cylinder's excess and that of a slab of half the length, at the time the row gives.
    const [along, across] = [body("slab", 0.18, 20), body("cylinder", 0.03, 20)];
    const centre = (seconds: number) =>
      (temperatureAt(along, "centre", seconds, 1, 0) * temperatureAt(across, "centre", seconds, 1, 0)) / (4 / 39);
    const slope = (centre(9399) - centre(9398)) / centre(9398.5);
    checks.exact("8.8", "seconds", 9398.65 - Math.log(centre(9398.65)) / slope, 9398.65, 1e-6);
  });
});

describe("what follows for a chiller", () => {
  const seconds = coolingSeconds(body("cylinder", 0.03, 20), 39, 4, 0);

  it(checks.title("8.9"), () => {
    checks.printed("8.9", "hooks", (600 / 3600) * seconds, "1566.54");
  });

  it(checks.title("8.10"), () => {
    const kilowatts = (mean: number) => ((600 / 3600) * 1.3 * 3500 * (39 - mean)) / 1000;
    checks.printed(
      "8.10",
      "to the mean",
      kilowatts(meanTemperature(body("cylinder", 0.03, 20), seconds, 39, 0)),
      "27.196",
    );
    checks.printed("8.10", "all through", kilowatts(4), "26.542");
  });

  it(checks.title("8.11"), () => {
    checks.printed("8.11", "radius", equivalentRadius(1.3, 0.36, 1070), "0.0327758");
  });

  it(checks.title("8.12"), () => {
    checks.printed("8.12", "series", excessShare("cylinder", 0.1, 5, "centre"), "0.386304");
    checks.printed("8.12", "one temperature", Math.exp(-2 * 0.1 * 5), "0.367879");
  });
});

describe("air across a cylinder", () => {
  it(checks.title("8.20"), () => {
    const nusselt = crossflowNusselt(6071, 0.7);
    checks.printed("8.20", "Nusselt", nusselt, "40.637");
    checks.printed("8.20", "coefficient", (nusselt * 0.03) / 0.0127, "95.99");
    checks.printed("8.20", "the book's Nusselt", nusselt, "40.6");
    checks.printed("8.20", "the book's coefficient", (nusselt * 0.03) / 0.0127, "96");
  });

  it.each([
    [0.5, "9.8545"],
    [1, "14.1638"],
    [2, "20.5822"],
    [3, "25.7813"],
    [4, "30.3580"],
  ])(`${checks.title("8.21")}: %d m/s`, (speed, figure) => {
    const nusselt = crossflowNusselt((speed * 0.06) / 13.3e-6, 0.715);
    checks.printed("8.21", "the row's air", (nusselt * 0.0243) / 0.06, figure);
    checks.exact("8.21", "our air", surfaceCoefficient(0.06, speed, 0), Number(figure), 0.01);
  });
});

checks.close();
