/**
 * Worksheet functions that had another name in an earlier version. Excel takes no function name of fewer than three
 * characters (Microsoft, "Custom functions naming and localization"), so AV and MV were renamed.
 */
const RENAMED: Readonly<Record<string, string>> = {
  AV: "COMPRESSIBILITY",
  MV: "VOLUME_COMPRESSIBILITY",
};

/**
 * Code of a formula, without its texts, in which each function of the add-in is written as it is typed today: `CLAY.` and
 * the present name. Stored as `_xldudf_CLAY_MV(` or typed as `CLAY.MV(`, a function is found again under its new name.
 */
export const withPresentNames = (code: string): string =>
  code.replace(
    /(?:_xldudf_CLAY_|\bCLAY\.)(\w+)(?=\s*\()/gi,
    (_, name: string) => `CLAY.${RENAMED[name.toUpperCase()] ?? name}`,
  );
