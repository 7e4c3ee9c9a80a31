/** The looks of the pane: chooses the look that fits the host, and defines the colours of each. */
import {
  createDarkTheme,
  createLightTheme,
  teamsHighContrastTheme,
  tokens,
  type BrandVariants,
  type Theme,
} from "@fluentui/react-components";

export type Look = "light" | "dark" | "high-contrast";

/** The brightness of a colour "#RRGGBB", from 0 to 1. */
function brightness(colour: string): number {
  const [, r, g, b] = /^#?(..)(..)(..)$/.exec(colour) ?? [];
  if (r === undefined || g === undefined || b === undefined) return 1;
  return (0.299 * parseInt(r, 16) + 0.587 * parseInt(g, 16) + 0.114 * parseInt(b, 16)) / 255;
}

export interface HostLook {
  /** The background colour of the pane in Office; missing outside Office. */
  readonly background?: string;
  readonly forcedColours: boolean;
  /** The preference of the browser, which counts if Office reports no colour. */
  readonly prefersDark?: boolean;
}

export const lookOf = ({ background, forcedColours, prefersDark = false }: HostLook): Look => {
  if (forcedColours) return "high-contrast";
  return (background === undefined ? prefersDark : brightness(background) < 0.5) ? "dark" : "light";
};

/** Shades of the clay colour of the icon (80), from dark to light. */
const CLAY: BrandVariants = {
  10: "#160804",
  20: "#2b110a",
  30: "#411b10",
  40: "#572617",
  50: "#6b311e",
  60: "#803d27",
  70: "#924a31",
  80: "#a4573a",
  90: "#b46a4e",
  100: "#c37d62",
  110: "#d19178",
  120: "#dda58e",
  130: "#e7b9a6",
  140: "#efcdbe",
  150: "#f6e0d6",
  160: "#fbf1ec",
};

/** Text in clay is lighter than in Fluent's theme, so that it can be read on dark backgrounds. */
const onDark: Partial<Theme> = {
  colorBrandForeground1: CLAY[120],
  colorBrandForeground2: CLAY[130],
  colorBrandForegroundLink: CLAY[120],
  colorBrandForegroundLinkHover: CLAY[130],
  colorBrandForegroundLinkPressed: CLAY[120],
  colorBrandForegroundLinkSelected: CLAY[120],
};

export const THEMES: Record<Look, Theme> = {
  light: createLightTheme(CLAY),
  dark: { ...createDarkTheme(CLAY), ...onDark },
  "high-contrast": teamsHighContrastTheme,
};

/** The colours of a plot; the names are those that src/plots/svg.ts reads. */
const inks = (ink: string, paper: string, grid: string, construction: string): Record<string, string> => ({
  "--plot-ink": ink,
  "--plot-paper": paper,
  "--plot-grid": grid,
  "--plot-construction": construction,
});

/**
 * The paper of a plot has the background colour of the pane. If the system forces its colours, the plot is drawn in
 * them.
 */
export const PLOT_INKS: Record<Look, Record<string, string>> = {
  light: inks("#111", tokens.colorNeutralBackground1, "#c8c8c8", "#0b4f9c"),
  dark: inks("#f0f0f0", tokens.colorNeutralBackground1, "#4a4a4a", "#8cc4ff"),
  "high-contrast": inks("CanvasText", "Canvas", "color-mix(in srgb, CanvasText 30%, Canvas)", "LinkText"),
};
