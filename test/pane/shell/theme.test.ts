import { lookOf, PLOT_INKS, THEMES } from "../../../src/pane/shell/theme";

test("the look follows the background of Office, and forced colours before that", () => {
  expect(lookOf({ background: "#ffffff", forcedColours: false })).toBe("light");
  expect(lookOf({ background: "#F0F0F0", forcedColours: false })).toBe("light");
  expect(lookOf({ background: "#262626", forcedColours: false })).toBe("dark");
  expect(lookOf({ background: "#ffffff", forcedColours: true })).toBe("high-contrast");
  expect(lookOf({ forcedColours: false })).toBe("light");
  expect(lookOf({ background: "unknown", forcedColours: false })).toBe("light");
});

test("every look has its theme and the same inks for the plot", () => {
  const names = Object.keys(PLOT_INKS.light);
  for (const look of ["light", "dark", "high-contrast"] as const) {
    expect(THEMES[look].colorNeutralBackground1).toBeTruthy();
    expect(Object.keys(PLOT_INKS[look])).toEqual(names);
  }
});
