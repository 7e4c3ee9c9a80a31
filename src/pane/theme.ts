/** The look of the pane follows the host: Office says its colours; a browser says whether it forces colours. */
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
}

export const lookOf = ({ background, forcedColours }: HostLook): Look => {
  if (forcedColours) return "high-contrast";
  return background !== undefined && brightness(background) < 0.5 ? "dark" : "light";
};

export const THEMES: Record<Look, Theme> = {
  light: webLightTheme,
  dark: webDarkTheme,
  "high-contrast": teamsHighContrastTheme,
};

/** The inks of a plot in each look; names as src/plots/svg.ts reads them. Its paper is the pane's own ground. */
const inks = (ink: string, grid: string, construction: string): Record<string, string> => ({
  "--plot-ink": ink,
  "--plot-paper": tokens.colorNeutralBackground1,
  "--plot-grid": grid,
  "--plot-construction": construction,
});

export const PLOT_INKS: Record<Look, Record<string, string>> = {
  light: inks("#111", "#c8c8c8", "#0b4f9c"),
  dark: inks("#f0f0f0", "#4a4a4a", "#8cc4ff"),
  "high-contrast": inks("#fff", "#555", "#ffff00"),
};
