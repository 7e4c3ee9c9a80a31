/** @jest-environment jsdom */
/** How long the page's messages stay. */
import { makeVoice } from "../../src/host/voice";
import { say } from "../../src/reduction/message";

let message: HTMLElement;
let voice: ReturnType<typeof makeVoice>;
let now: number;

beforeEach(() => {
  message = document.createElement("p");
  voice = makeVoice(message, document.createElement("dialog"), () => undefined);
  now = 0;
  jest.spyOn(performance, "now").mockImplementation(() => now);
});
afterEach(() => jest.restoreAllMocks());

test("a refusal goes with the next step, but not with the step of the key that was refused", () => {
  voice.refuse(say`B4 is protected`);
  now = 100;
  voice.moveOn();
  expect(message.textContent).toBe("B4 is protected");
  now = 1000;
  voice.moveOn();
  expect(message.textContent).toBe("");
});

test("what was done can be read for a while, and then gives its line back; a failure stays", () => {
  voice.tell("demonstration.xlsx is open.");
  now = 5000;
  voice.moveOn();
  expect(message.textContent).toBe("demonstration.xlsx is open.");
  now = 30_000;
  voice.moveOn();
  expect(message.textContent).toBe("");
  voice.fail("The file is damaged.");
  now = 90_000;
  voice.moveOn();
  expect(message.textContent).toBe("The file is damaged.");
});
