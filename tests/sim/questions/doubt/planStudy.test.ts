import { expect, it } from "vitest";
import { NO_FILES, readPlan } from "../../../../sim/asked/plan/index.ts";
import { readStudy } from "../../../../sim/asked/study/index.ts";
import { responsesOf } from "../../../../sim/day/observations/index.ts";
import { planStudy } from "../../../../sim/questions/doubt/index.ts";
import { exampleFile } from "../../../support/readExample.ts";

it.each(["parts/uncertain", "parts/week", "parts/capacity", "ferncote"])(
  "planStudy asks of %s what it has, in a sound study",
  (name) => {
    const json = exampleFile(name);
    const study = planStudy(readPlan(json).plan!, json);
    const reading = readStudy(study, NO_FILES, { knownResponses: responsesOf });
    expect(reading.faults).toEqual([]);
    expect(reading.study!.responses.length).toBeGreaterThan(0);
    if (name === "parts/uncertain") expect(study.responses).toEqual(["finish", "overtime", "headsPerHour"]);
  },
);
