/**
 * The room that the steps of undo take. The engine keeps of each step its commands and its changes, as long as the workbook is open:
 * 1.5 MB for an inserted data sheet, a quarter of what the sheet itself takes. Here the oldest steps are let go when all take more
 * than MOST_BYTES.
 * Casts: the engine's types do not tell what it keeps of a step.
 */

/** What the engine keeps of a step. */
export interface KeptStep {
  _commands: readonly { readonly content?: unknown }[];
  _changes: readonly unknown[];
}

/** The room for all steps, about: a dozen inserted data sheets, or a hundred thousand cells written. The engine keeps 99 steps at most. */
export const MOST_BYTES = 16e6;

/** What a change and a command take, about, in bytes; the text of a formula comes on top. */
const CHANGE = 28;
const COMMAND = 100;

function bytesOf({ _commands, _changes }: KeptStep): number {
  let bytes = CHANGE * _changes.length + COMMAND * _commands.length;
  for (const { content } of _commands) if (typeof content === "string") bytes += content.length;
  return bytes;
}

/** The steps whose commands and changes are kept. */
export class StepRoom {
  /** By the id of a step, the oldest first. */
  readonly #steps = new Map<string, { readonly step: KeptStep; readonly bytes: number }>();
  #bytes = 0;

  has(id: string): boolean {
    return this.#steps.has(id);
  }

  add(id: string, step: KeptStep): void {
    const bytes = bytesOf(step);
    this.#steps.set(id, { step, bytes });
    this.#bytes += bytes;
  }

  /** Lets go what the engine keeps of a step that is neither undone nor redone any more. */
  letGo(id: string): void {
    const found = this.#steps.get(id);
    if (!found) return;
    this.#steps.delete(id);
    this.#bytes -= found.bytes;
    Object.assign(found.step, { _commands: [], _changes: [] });
  }

  /** The ids of the oldest steps that are to be let go so that the others have room; none of `wanted` is among them. */
  excess(wanted: ReadonlySet<string>): string[] {
    const gone: string[] = [];
    let bytes = this.#bytes;
    for (const [id, { bytes: own }] of this.#steps) {
      if (bytes <= MOST_BYTES) break;
      if (wanted.has(id)) continue;
      gone.push(id);
      bytes -= own;
    }
    return gone;
  }
}
