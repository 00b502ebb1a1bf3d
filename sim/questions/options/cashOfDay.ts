/** Results that make up the cash of a day; which of them a plan has depends on its money. */
export const CASH_RESPONSES = ["margin", "cost.total", "cost.capital"] as const;

/**
 * Cash of each day: margin, or where the plan names no prices the cost as a loss, with the daily share of purchases put
 * back: what an option costs to buy is reckoned as a purchase, not twice.
 */
export function cashOfDay(values: Readonly<Record<string, readonly (number | null)[]>>): number[] {
  const days = values["cost.total"]!;
  return days.map((total, day) => {
    const margin = values.margin?.[day] ?? -(total ?? 0);
    return margin + (values["cost.capital"]?.[day] ?? 0);
  });
}
