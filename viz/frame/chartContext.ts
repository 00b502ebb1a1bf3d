import type { ThemeName } from "./theme.ts";

/** What a chart needs from outside its data. Nothing is read from globals, so one code draws in browser, server and tests. */
export interface ChartContext {
  document: Document;
  /** Default `auto`. */
  theme?: ThemeName;
  /** Width in pixels, default 760. Below 560 the labels have no room. */
  width?: number;
  /** Prefix of every id inside the picture; must differ between the charts of one page. Default `chart`. */
  idPrefix?: string;
  /** Put the style sheet of the theme `auto` inside the picture (default). A page that carries it once says false. */
  styleInside?: boolean;
}
