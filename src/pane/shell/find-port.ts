/** Finds the workbook beside the pane. */
import type { WorkbookPort } from "../../workbook/port";

/** What the page of the embedded sheet offers to the pane in its frame. */
interface EmbeddedHost {
  readonly clayledger?: { readonly port?: WorkbookPort };
}

/**
 * The port of the page around this frame; undefined if that page has another origin (Excel on the web) and cannot be
 * read.
 */
function embeddedPort(around: unknown): WorkbookPort | undefined {
  try {
    // The page around may be any page; it has the port or not.
    return (around as EmbeddedHost).clayledger?.port;
  } catch {
    return undefined;
  }
}

/**
 * Returns the port of the embedded sheet, or the port of Excel if Office reports a host, otherwise undefined. `office`
 * is the object of Office, which a page without office.js does not have.
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
