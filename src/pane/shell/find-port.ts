/** The workbook that the pane stands beside. */
import type { WorkbookPort } from "../../workbook/port";

/** What the page of the embedded sheet holds out to the pane in its frame. */
interface EmbeddedHost {
  readonly clayledger?: { readonly port?: WorkbookPort };
}

/** The port of the page around this frame; none where that page is another's (Excel on the web), and may not be looked at. */
function embeddedPort(around: unknown): WorkbookPort | undefined {
  try {
    return (around as EmbeddedHost).clayledger?.port;
  } catch {
    return undefined;
  }
}

/**
 * The embedded sheet's port; else, where Office says that a host is there, Excel's; else none.
 * `office` is Office's own object, which a page without office.js does not have.
 */
export async function findPort(
  around: unknown,
  office: Pick<typeof Office, "onReady"> | undefined,
  makeOfficePort: () => WorkbookPort,
): Promise<WorkbookPort | undefined> {
  const embedded = embeddedPort(around);
  if (embedded || !office) return embedded;
  const { host } = await office.onReady();
  return host ? makeOfficePort() : undefined;
}
