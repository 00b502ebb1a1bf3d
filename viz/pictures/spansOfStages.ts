/**
 * The spans of a stage by its name, in their order; none for a name that has none. All are looked at once: a line of
 * 200 stages can have a million.
 */
export function spansOfStages<Span extends { stage: string }>({
  spans,
}: {
  spans: readonly Span[];
}): (stage: string) => Span[] {
  const byStage = new Map<string, Span[]>();
  for (const span of spans) {
    const found = byStage.get(span.stage);
    if (found === undefined) byStage.set(span.stage, [span]);
    else found.push(span);
  }
  return (stage) => byStage.get(stage) ?? [];
}
