/**
 * Asks the browser to look for what is no longer held, while long work goes on. By itself it begins when its heap has three times what is
 * held, and goes on filling it meanwhile: with 40 data sheets open, a file of 40 more took 1376 MB at most, with this 1178 MB, in
 * the same time; saving it 1584 and 1361 MB. V8 counts blocks of bytes beside its heap, and begins when they are many. Nobody writes to the
 * block, so the system gives it no memory.
 */

/** The bytes of a block: above the 64 MB at which V8 begins. */
const BLOCK = 96e6;

/** The time between two blocks in ms. */
const PAUSE = 250;

let last = 0;

/** Call it often; it does something four times a second at most. */
export function collectSoon(): void {
  const now = performance.now();
  if (now - last < PAUSE) return;
  last = now;
  try {
    void new ArrayBuffer(BLOCK);
  } catch {
    // A browser without room for the block collects by itself.
  }
}
