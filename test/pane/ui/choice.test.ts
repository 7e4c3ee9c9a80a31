/** @jest-environment jsdom */
import { act, createElement } from "react";
import { createRoot } from "react-dom/client";
import { Choice } from "../../../src/pane/ui/parts";
import { FakePort } from "../fake-port";
import { inPane } from "../in-pane";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });

const LABEL = "Field curve meets the laboratory curve at void ratio";
const labels = (count: number): (readonly [string, string])[] =>
  Array.from({ length: count }, (_, index) => [String(index), index === 0 ? LABEL : `Label ${index}`] as const);

test.each([
  ["a long list of labels", 13, "0", 2],
  ["a long list of labels where a short one is chosen", 13, "1", 1],
  ["a short list, whose words fit", 12, "0", 1],
])("%s says the chosen label in full below, where it may be cut off", async (_, count, value, times) => {
  const place = document.body.appendChild(document.createElement("div"));
  const root = createRoot(place);
  const list = () =>
    createElement(Choice<string>, { label: "Name", options: labels(count), value, onChoose: () => undefined });
  await act(async () => root.render(inPane(list, new FakePort())));
  const chosen = labels(count)[Number(value)]![1];
  // One of the texts is the choice in the list itself.
  const texts = [...place.querySelectorAll("*")].filter((one) => one.children.length === 0);
  expect(texts.filter(({ textContent }) => textContent === chosen)).toHaveLength(times);
  await act(async () => root.unmount());
  place.remove();
});
