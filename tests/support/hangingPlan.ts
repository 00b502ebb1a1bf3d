/** Crates of ten heads from one farm, ten crates a minute apart. */
export const crateLorries = (times: number) => [
  { name: "farm", at: "05:30", crates: 10, headsPerCrate: 10, repeat: { every: "1 min", times } },
];

/** All of a plan in which two people hang animals between 06:00 and 07:00, but for its line and week. Invented. */
export const HANGING = {
  ...{ name: "invented", notes: "Invented for tests." },
  day: { start: "05:00", shifts: [{ name: "day", from: "06:00", to: "07:00" }] },
  supply: { loads: crateLorries(2) },
  liveHandling: { unloading: { perCrate: "1 s" }, lairageCrates: 500, feeding: { perCrate: "1 s" } },
  crews: [{ name: "line", people: 2, pay: "20 EUR/h" }],
  money: { currency: "EUR", overtimeFactor: 1.5 },
};
