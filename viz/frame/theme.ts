/** `auto` follows the reader's screen (CSS `prefers-color-scheme`) and turns to print colours on paper. */
export type ThemeName = "light" | "dark" | "print" | "auto";
type FixedTheme = Exclude<ThemeName, "auto">;

/**
 * Colours by role. Hues are spread over blue, purple, sand, cyan and slate, which keep apart under the three kinds of
 * colour blindness because their lightness differs too; every fill also carries its own texture (see `textures.ts`), so
 * no reading depends on colour. Hue families follow the advice of Okabe and Ito (2008) and Tol (2021); the assignment is ours.
 */
const COLOURS = {
  paper: { light: "#ffffff", dark: "#14181d", print: "#ffffff" },
  ink: { light: "#1b2430", dark: "#eef1f4", print: "#000000" },
  muted: { light: "#525d69", dark: "#a9b4bf", print: "#3c3c3c" },
  rule: { light: "#8b96a1", dark: "#6c7782", print: "#777777" },
  grid: { light: "#e3e7eb", dark: "#2a3138", print: "#dddddd" },
  pause: { light: "#eef0f2", dark: "#242b32", print: "#efefef" },
  line: { light: "#0b5f94", dark: "#6cb6e8", print: "#0b4f7c" },
  range: { light: "#a9cde5", dark: "#25506e", print: "#b9cfde" },
  limit: { light: "#8f2d6b", dark: "#ec9acb", print: "#7a1f58" },
  beyond: { light: "#d79cc0", dark: "#9c4f7f", print: "#d3a3c1" },
  base: { light: "#dfe6ec", dark: "#2c3742", print: "#e4e4e4" },
  working: { light: "#5d93bd", dark: "#4d86b3", print: "#7da7c8" },
  blocked: { light: "#cf8fbb", dark: "#a85a91", print: "#d3a3c1" },
  starved: { light: "#ece3c6", dark: "#4d4936", print: "#f0ead6" },
  noCrew: { light: "#a6dbe6", dark: "#1f6a78", print: "#bfe3ea" },
  down: { light: "#3b3346", dark: "#d9d2e6", print: "#3a3a3a" },
  onBreak: { light: "#f4f5f6", dark: "#20262c", print: "#fafafa" },
  fill0: { light: "#b8d6ea", dark: "#2a5877", print: "#c4d9e8" },
  fill1: { light: "#e9d8a6", dark: "#6b5a25", print: "#ece0bb" },
  fill2: { light: "#d5b3cd", dark: "#6d4263", print: "#d9bfd3" },
  fill3: { light: "#a3d3cc", dark: "#235f58", print: "#b8dad5" },
  fill4: { light: "#d3d6da", dark: "#4a525b", print: "#dcdcdc" },
  fill5: { light: "#f0c3a6", dark: "#7a4526", print: "#f0cfb9" },
  series0: { light: "#0b5f94", dark: "#6cb6e8", print: "#0b4f7c" },
  series1: { light: "#9a3d7c", dark: "#e59bcb", print: "#7a1f58" },
  series2: { light: "#8a6a00", dark: "#dcbc55", print: "#6b5200" },
  series3: { light: "#00706a", dark: "#5cc9bd", print: "#005a55" },
  series4: { light: "#5b4a9c", dark: "#b6a6f2", print: "#43357d" },
} as const satisfies Record<string, Record<FixedTheme, string>>;

export type Paint = keyof typeof COLOURS;

/** Class of every chart's root element; the custom properties hang on it. */
export const CHART_CLASS = "gambrel-chart";
export const FONT_FAMILY = 'system-ui, "Segoe UI", Roboto, "Helvetica Neue", Arial, sans-serif';

/** The colour of a role: a hexadecimal value, or a CSS variable for the theme `auto`. */
export function paint(theme: ThemeName, role: Paint): string {
  return theme === "auto" ? `var(--${variableName(role)})` : COLOURS[role][theme];
}

/** The style sheet that gives the variables of the theme `auto` their values; one copy serves a whole page. */
export function chartStyleSheet(): string {
  return [
    `.${CHART_CLASS}{${declarations("light")}}`,
    `@media (prefers-color-scheme: dark){.${CHART_CLASS}{${declarations("dark")}}}`,
    `@media print{.${CHART_CLASS}{${declarations("print")}}}`,
  ].join("\n");
}

function declarations(theme: FixedTheme): string {
  return (Object.keys(COLOURS) as Paint[]).map((role) => `--${variableName(role)}:${COLOURS[role][theme]}`).join(";");
}

function variableName(role: Paint): string {
  return `gambrel-${role}`;
}

export const FILLS: readonly Paint[] = ["fill0", "fill1", "fill2", "fill3", "fill4", "fill5"];
export const SERIES: readonly Paint[] = ["series0", "series1", "series2", "series3", "series4"];

/** Colours by role for one fixed theme: for the contrast test and for pages that style text beside the charts. */
export function themeColours(theme: FixedTheme): Record<Paint, string> {
  return Object.fromEntries(Object.entries(COLOURS).map(([role, byTheme]) => [role, byTheme[theme]])) as Record<
    Paint,
    string
  >;
}
