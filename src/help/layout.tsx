/** A page that stands alone: its style within it, no script. */
import type { ReactElement, ReactNode } from "react";
import { renderToStaticMarkup } from "react-dom/server";

interface Page {
  readonly title: string;
  readonly style: string;
  readonly body: ReactElement;
}

export const toHtml = ({ title, style, body }: Page): string =>
  `<!doctype html>\n${renderToStaticMarkup(
    <html lang="en">
      <head>
        <meta charSet="utf-8" />
        {/* Styles stand in the page and on its drawings; there is no script. */}
        <meta
          httpEquiv="Content-Security-Policy"
          content="default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'"
        />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{title}</title>
        <link rel="icon" href="data:," />
        <style dangerouslySetInnerHTML={{ __html: style }} />
      </head>
      <body>{body}</body>
    </html>,
  )}\n`;

/** What may be wider than the page: it is scrolled by itself, by keyboard as well. */
export const Wide = ({ label, children }: { label: string; children: ReactNode }) => (
  <div className="wide" role="region" aria-label={label} tabIndex={0}>
    {children}
  </div>
);
