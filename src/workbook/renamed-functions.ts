/**
 * Worksheet functions that had another name in an earlier version. Excel accepts no function name of fewer than three
 * characters (Microsoft, "Custom functions naming and localization"), so AV and MV were renamed.
 */
const RENAMED: Readonly<Record<string, string>> = {
  AV: "COMPRESSIBILITY",
  MV: "VOLUME_COMPRESSIBILITY",
};

/**
 * Rewrites the code of a formula, without its texts, so that each function of the add-in has its present name after
 * `CLAY.`, in capitals. A function stored as `_xldudf_CLAY_MV(` (LibreOffice: `_xldudf_CLAY_mv(`) or typed as `CLAY.MV(`
 * gets its new name.
 */
export const withPresentNames = (code: string): string =>
  code.replace(
    /(?:_xldudf_CLAY_|\bCLAY\.)(\w+)(?=\s*\()/gi,
    (_, name: string) => `CLAY.${RENAMED[name.toUpperCase()] ?? name.toUpperCase()}`,
  );
