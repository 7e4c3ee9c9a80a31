/** @jest-environment jsdom */
import { keepLanguage, keptLanguage, languageFor, withLanguage } from "../../../src/pane/text/language";

let changed: jest.SpyInstance | undefined;
afterEach(() => {
  changed?.mockRestore();
  window.localStorage.clear();
});

test("the first tag for which the pane has a language is taken, English if there is none", () => {
  expect(languageFor(undefined, "de-AT", "en-GB")).toBe("de");
  expect(languageFor("en", "de-DE")).toBe("en");
  expect(languageFor(null, "fr-FR", "DE_ch")).toBe("de");
  expect(languageFor("fr", undefined)).toBe("en");
  // Not every tag that begins with these letters: "den" is Slave (Athapascan).
  expect(languageFor("den")).toBe("en");
});

test("a choice is kept, found again, and cancelled", () => {
  expect(keptLanguage("")).toBeUndefined();
  expect(keepLanguage("de")).toBe(true);
  expect(keptLanguage("")).toBe("de");
  expect(keepLanguage(undefined)).toBe(true);
  expect(keptLanguage("")).toBeUndefined();
});

test("a stored value that is damaged counts as none", () => {
  window.localStorage.setItem("clayledger.language", "klingon");
  expect(keptLanguage("")).toBeUndefined();
});

test("if nothing can be stored, the choice is put into the address, and the rest of the address stays", () => {
  changed = jest.spyOn(window, "localStorage", "get").mockImplementation(() => {
    throw new DOMException("denied", "SecurityError");
  });
  expect(keepLanguage("de")).toBe(false);
  expect(keptLanguage("")).toBeUndefined();
  const address = withLanguage("https://localhost:3000/taskpane.html?_host_Info=Excel$Web#a", "de");
  expect(keptLanguage(new URL(address).search)).toBe("de");
  expect(new URL(address).searchParams.get("_host_Info")).toBe("Excel$Web");
  expect(new URL(address).hash).toBe("#a");
  expect(withLanguage(address, undefined)).not.toContain("language");
  expect(withLanguage("https://localhost:3000/pane.html", undefined)).toBe("https://localhost:3000/pane.html");
});

test("a runtime without storage keeps nothing, and says so", () => {
  changed = jest.spyOn(window, "localStorage", "get").mockReturnValue(null as unknown as Storage);
  expect(keptLanguage("")).toBeUndefined();
  expect(keepLanguage("de")).toBe(false);
});

test("full storage is not an error either", () => {
  changed = jest.spyOn(Storage.prototype, "setItem").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  expect(keepLanguage("de")).toBe(false);
});
