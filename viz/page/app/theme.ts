import { computed, effect, signal } from "@preact/signals";
import { themeColours } from "../../frame/index.ts";
import { theme } from "./state.ts";

const dark = signal(matchMedia("(prefers-color-scheme: dark)").matches);
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", ({ matches }) => {
  dark.value = matches;
});

/** The theme in force: what was chosen, else the screen's. */
export const shownTheme = computed<"light" | "dark">(() =>
  theme.value === "auto" ? (dark.value ? "dark" : "light") : theme.value,
);

/** Gives the page the colours of the charts, as custom properties on its root, and follows the theme from then on. */
export function startTheme(root: HTMLElement): () => void {
  return effect(() => {
    for (const [role, colour] of Object.entries(themeColours(shownTheme.value))) {
      root.style.setProperty(`--gambrel-${role}`, colour);
    }
    root.style.colorScheme = shownTheme.value;
    root.dataset.theme = shownTheme.value;
  });
}
