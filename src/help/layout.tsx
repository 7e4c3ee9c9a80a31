/** The frame of a page that needs no other file: its style is within it, and it has no script. */
import type { ReactElement, ReactNode } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { CATALOGUES } from "../pane/text";
import { fileIn, LANGUAGES, type Language } from "../pane/text/language";

interface Page {
  readonly language: Language;
  readonly title: string;
  readonly style: string;
  readonly body: ReactElement;
}

export const toHtml = ({ language, title, style, body }: Page): string =>
  `<!doctype html>\n${renderToStaticMarkup(
    <html lang={language}>
      <head>
        <meta charSet="utf-8" />
        {/* Styles are in the page and on its drawings; there is no script. */}
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

/** Links to the page in the other languages, each by its name in the language itself. */
export const Languages = ({ page, shown }: { page: string; shown: Language }) => (
  <p className="languages">
    {LANGUAGES.filter((language) => language !== shown).map((language) => (
      <a key={language} href={fileIn(page, language)} lang={language} hrefLang={language}>
        {CATALOGUES[language].language}
      </a>
    ))}
  </p>
);

/** Holds content that may be wider than the page: it scrolls by itself, by keyboard too. */
export const Wide = ({ label, children }: { label: string; children: ReactNode }) => (
  <div className="wide" role="region" aria-label={label} tabIndex={0}>
    {children}
  </div>
);
