import {
  METHOD_NAMES,
  METHOD_WORDS,
  methodNamed,
  SPREAD_WORDS,
  spreadRowNamed,
} from "../../../src/reduction/curve/method-words";

test("a method is named by its short name or its words, in any case and with blanks about it", () => {
  for (const name of METHOD_NAMES)
    for (const text of [name, METHOD_WORDS[name], ` ${METHOD_WORDS[name].toUpperCase()} `])
      expect(methodNamed(text)).toBe(name);
  expect(methodNamed("Pacheco")).toBeUndefined();
  expect(methodNamed("")).toBeUndefined();
});

test("a row of the table of methods is named by its short name or its words; any other text stays as it is", () => {
  for (const [name, words] of Object.entries(SPREAD_WORDS))
    for (const text of [name, words, ` ${words.toUpperCase()} `]) expect(spreadRowNamed(text)).toBe(name);
  expect(spreadRowNamed(" Other ")).toBe(" Other ");
});
