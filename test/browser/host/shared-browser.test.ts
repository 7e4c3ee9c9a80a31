/** All files of a run share one browser: if it ends, each file says so and does not wait. */
import { sharedBrowser, withBrowser } from "../page";

withBrowser("the browser that the files of a run share", () => {
  test("if it has ended, the file says what to do", async () => {
    // Nothing listens at this port.
    await expect(sharedBrowser("ws://127.0.0.1:9/ended")).rejects.toThrow(
      /browser that all files of this run share has ended, .*: run the tests again/,
    );
  });
});
