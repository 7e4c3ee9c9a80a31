/**
 * Runs before the tests of files: makes the folder of the run, and finds LibreOffice (installs Debian's if possible). The result is in the environment:
 * CLAYLEDGER_LIBREOFFICE, or CLAYLEDGER_LIBREOFFICE_MISSING with the reason.
 */
import { provide } from "../../programs";
import { makeRunFolder } from "../../run-folder";

export default function setup(): void {
  makeRunFolder();
  const office = provide({
    called: "LibreOffice",
    files: ["soffice", "libreoffice"],
    debian: ["libreoffice-calc"],
    variable: "LIBREOFFICE",
    without: "CLAYLEDGER_NO_LIBREOFFICE",
    tests: "tests of files by LibreOffice",
  });
  if ("file" in office) process.env.CLAYLEDGER_LIBREOFFICE = office.file;
  else process.env.CLAYLEDGER_LIBREOFFICE_MISSING = office.missing;
}
