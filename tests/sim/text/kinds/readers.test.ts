import { expect, it } from "vitest";
import { readerOf } from "../../../../sim/text/kinds/index.ts";

it("a reader is known by a word of what the study calls them, whatever stands around it", () => {
  const known = {
    veterinarian: ["official veterinarian", "Animal welfare officer", "meat inspector"],
    owner: ["owner", "the bank", "Managing director"],
    planner: ["planner", "production planning", "shift foreman", "supervisors"],
    engineer: ["process engineer", "maintenance", "technician"],
    trainer: ["trainer", "a room of trainees", "students"],
  };
  for (const [reader, words] of Object.entries(known))
    expect(words.map((written) => [written, readerOf(written)])).toEqual(words.map((written) => [written, reader]));
});

it("whoever is none of them is not taken for one", () => {
  for (const written of ["", "tests", "whoever looks at the plan", "everybody"]) expect(readerOf(written)).toBeNull();
});
