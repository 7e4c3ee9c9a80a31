/**
 * Waits for turns of the real clock, each of some milliseconds. Turns are counted, because a machine that is busy with other work may
 * be late with one of them: timers and promises that are due then still run before the next turn.
 */
export async function turns(count: number, ms = 0): Promise<void> {
  for (let turn = 0; turn < count; turn++) await new Promise((resolve) => setTimeout(resolve, ms));
}
