/** @jest-environment jsdom */
/** The focus stays where a person works when a control is taken off the page. */
import { keepFocus } from "../../../src/pane/shell/keep-focus";
import { turns } from "../../turns";

const at = (id: string): HTMLElement => document.getElementById(id)!;
let end: () => void;

beforeEach(() => {
  document.body.innerHTML = `<button id="tab">Tab</button>
    <ul><li id="card"><a id="link" href="#x">D23</a><div id="form"><button id="save">Save</button></div></li></ul>`;
  end = keepFocus(document);
});
afterEach(() => end());

test("the element around a control that has gone takes the focus, and is no stop of the Tab key afterwards", async () => {
  at("save").focus();
  at("form").remove();
  await turns(2);
  expect(document.activeElement).toBe(at("card"));
  at("link").focus();
  expect(at("card").hasAttribute("tabindex")).toBe(false);
});

test("the focus that the screen moves itself, and that of a control that stays, is left alone", async () => {
  at("save").focus();
  at("form").remove();
  at("tab").focus();
  await turns(2);
  expect(document.activeElement).toBe(at("tab"));
  at("link").remove();
  await turns(2);
  expect(document.activeElement).toBe(at("tab"));
});
