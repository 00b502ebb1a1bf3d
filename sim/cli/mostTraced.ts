/**
 * Traces of more variants are kept only when asked for: those of a large plant take about a megabyte a variant in memory
 * and as much again in each of two files, and nobody looks at a thousand of them.
 */
export const MOST_TRACED = 200;
