/** The steps by which a person adds the add-in to Excel by hand, where `npm run excel` cannot. */

const FIRST_MINUTES = "https://localhost:3000/first-minutes.html";

const ON_THE_WEB = (manifest: string): readonly string[] => [
  "Open https://localhost:3000/taskpane.html in the browser that will show Excel, and accept the warning: the certificate is this machine's own.",
  "In the same browser, on this machine, open Excel on the web with a new workbook.",
  `Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in: choose ${manifest}`,
  'Chrome and Edge from version 141 ask whether the page may reach the local network: choose "Allow". A blank pane means that it was not allowed.',
];

const ON_WINDOWS = (manifest: string): readonly string[] => [
  `Put ${manifest} into a shared folder.`,
  "In Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs; enter the folder as \\\\your-pc\\folder, Add catalog, tick Show in Menu, OK; restart Excel.",
  "Home, Add-ins, More Add-ins, SHARED FOLDER, Clayledger, Add.",
];

const ON_A_MAC = (manifest: string): readonly string[] => [
  `Copy ${manifest} to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef (make the folder if it is not there), and restart Excel.`,
  "Home, Add-ins: choose Clayledger under Developer Add-ins. Excel forgets it at its next start: choose it again.",
];

/** Numbered steps for this system; for a system without Excel, the steps for Excel on the web. */
export function stepsFor(platform: NodeJS.Platform, manifest: string): string {
  const steps = platform === "win32" ? ON_WINDOWS : platform === "darwin" ? ON_A_MAC : ON_THE_WEB;
  const all = [
    ...steps(manifest),
    `Home, Open ledger opens the pane. ${FIRST_MINUTES} says what must be seen in the first ten minutes.`,
  ];
  return all.map((step, index) => `${index + 1}. ${step}`).join("\n");
}
