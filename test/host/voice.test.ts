/** @jest-environment jsdom */
/** How long the page's messages stay. */
import { makeVoice } from "../../src/host/voice";
import type { Refusals } from "../../src/host/refusals";
import { english, say } from "../../src/reduction/message";

let message: HTMLElement;
let voice: ReturnType<typeof makeVoice>;
let now: number;
let refusals: Refusals;
let added: string[];
let clock: jest.SpyInstance;

beforeEach(() => {
  message = document.createElement("p");
  added = [];
  refusals = { add: (sentence) => added.push(english(sentence)), look: jest.fn(), sayAgain: () => undefined };
  voice = makeVoice(message, document.createElement("dialog"), () => undefined, refusals);
  now = 0;
  clock = jest.spyOn(performance, "now").mockImplementation(() => now);
});
afterEach(() => clock.mockRestore());

test("a refusal goes with the next step, but not with the step of the key that was refused", () => {
  voice.refuse(say`B4 is protected`);
  now = 100;
  voice.moveOn();
  expect(message.textContent).toBe("B4 is protected");
  now = 1000;
  voice.moveOn();
  expect(message.textContent).toBe("");
});

test("a refused entry is kept apart from the message, and looked after whenever something is done or said", () => {
  voice.tell("demonstration.xlsx is open.");
  voice.refuse(say`M12 was not changed`, { cells: "M12", isAsItWas: () => true });
  expect(added).toEqual(["M12 was not changed"]);
  expect(message.textContent).toBe("demonstration.xlsx is open.");
  const looked = jest.mocked(refusals.look).mock.calls.length;
  voice.moveOn();
  voice.tell("demonstration.xlsx was saved.");
  expect(jest.mocked(refusals.look).mock.calls.length).toBe(looked + 2);
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
