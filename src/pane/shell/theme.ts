/** The looks of the pane: which one suits the host, and the colours of each. */
import { teamsHighContrastTheme, tokens, webDarkTheme, webLightTheme, type Theme } from "@fluentui/react-components";

export type Look = "light" | "dark" | "high-contrast";

/** How bright a colour "#RRGGBB" is, from 0 to 1. */
function brightness(colour: string): number {
  const [, r, g, b] = /^#?(..)(..)(..)$/.exec(colour) ?? [];
  return r === undefined ? 1 : (0.299 * parseInt(r, 16) + 0.587 * parseInt(g, 16) + 0.114 * parseInt(b, 16)) / 255;
}

export interface HostLook {
  /** Office's background colour of the pane's body, where Office is the host. */
  readonly background?: string;
  readonly forcedColours: boolean;
  /** A preference of the browser, which counts where Office says nothing. */
  readonly prefersDark?: boolean;
}

export const lookOf = ({ background, forcedColours, prefersDark = false }: HostLook): Look => {
  if (forcedColours) return "high-contrast";
  return (background === undefined ? prefersDark : brightness(background) < 0.5) ? "dark" : "light";
};

export const THEMES: Record<Look, Theme> = {
  light: webLightTheme,
  dark: webDarkTheme,
  "high-contrast": teamsHighContrastTheme,
};

/** The inks of a plot; names as src/plots/svg.ts reads them. */
const inks = (ink: string, paper: string, grid: string, construction: string): Record<string, string> => ({
  "--plot-ink": ink,
  "--plot-paper": paper,
  "--plot-grid": grid,
  "--plot-construction": construction,
});

/** The paper is the pane's own ground; where the system forces its colours, the plot is drawn in them. */
export const PLOT_INKS: Record<Look, Record<string, string>> = {
  light: inks("#111", tokens.colorNeutralBackground1, "#c8c8c8", "#0b4f9c"),
  dark: inks("#f0f0f0", tokens.colorNeutralBackground1, "#4a4a4a", "#8cc4ff"),
  "high-contrast": inks("CanvasText", "Canvas", "color-mix(in srgb, CanvasText 30%, Canvas)", "LinkText"),
};
