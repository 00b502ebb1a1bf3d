/** What 1 paid after so many years is worth today: (1 + i)^-n (the same texts, P/F). */
export function presentFactor(interest: number, years: number): number {
  return (1 + interest) ** -years;
}
