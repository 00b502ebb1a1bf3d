/**
 * What 1 paid at the end of each of `years` is worth today at this interest a year: (1 - (1 + i)^-n) / i, at 0 interest n (the
 * uniform-series present-worth factor P/A of any engineering economy text: Blank and Tarquin, Engineering Economy; Park,
 * Contemporary Engineering Economics). Interest above -1, years above 0, which need not be whole.
 *
 * @example annuityFactor(0.1, 5) // 3.790787
 */
export function annuityFactor(interest: number, years: number): number {
  // expm1 and log1p keep the digits of small interest.
  return interest === 0 ? years : -Math.expm1(-years * Math.log1p(interest)) / interest;
}

/**
 * What is paid back each time for a loan of 1 in so many equal payments, at this interest for the time between two of them.
 *
 * @example loanPayment(0.075 / 12, 180) * 200_000 // 1854.02
 */
export function loanPayment(interest: number, payments: number): number {
  return 1 / annuityFactor(interest, payments);
}
