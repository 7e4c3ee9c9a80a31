/** The words of the page, in the language of the pane: the page follows the choice that is made there. */
import { hostWords } from "../pane/text/host";
import { fileIn, keptLanguage, language, languageFor, setLanguage } from "../pane/text/language";

/** A word of the page by the key that an element of index.html has; keys of sentences with a name in them give none. */
function wordOf(key: string | undefined): string {
  const found = Object.entries(hostWords()).find(([name]) => name === key)?.[1];
  return typeof found === "string" ? found : "";
}

/**
 * Writes the words into the elements of the page: `data-words` is the text of an element, `data-label` its label for
 * screen readers, `data-title` its title. A link with `data-page` leads to that page in the language.
 */
export function showWords(): void {
  document.documentElement.lang = language();
  for (const one of document.querySelectorAll<HTMLElement>("[data-words]")) one.textContent = wordOf(one.dataset.words);
  for (const one of document.querySelectorAll<HTMLElement>("[data-label]"))
    one.setAttribute("aria-label", wordOf(one.dataset.label));
  for (const one of document.querySelectorAll<HTMLElement>("[data-title]")) one.title = wordOf(one.dataset.title);
  for (const one of document.querySelectorAll<HTMLAnchorElement>("a[data-page]"))
    one.href = fileIn(one.dataset.page ?? "", language());
}

/** Takes the language of the pane: the choice of the person, or the language of the browser. Returns whether it is new. */
export function takeLanguage(query: string): boolean {
  const before = language();
  setLanguage(languageFor(keptLanguage(query), navigator.language));
  return language() !== before;
}

/** Calls `then` each time the pane in the frame was loaded again in another language. */
export function followLanguage(frame: HTMLIFrameElement, then: () => void): void {
  frame.addEventListener("load", () => {
    if (takeLanguage(frame.contentWindow?.location.search ?? "")) then();
  });
}
