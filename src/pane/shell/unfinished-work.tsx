/** Says, when the pane comes up, what an earlier pane left half done in the workbook, and what to do about it. */
import { Button } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import type { WorkbookPort, WorkNote } from "../../workbook/port";
import { cutOff } from "../live/unfinished";
import { text } from "../text";
import { Notice } from "../ui/notice";

const words = text.unfinished;

export function UnfinishedWork({ port }: { readonly port: WorkbookPort }) {
  const [notes, setNotes] = useState<readonly WorkNote[]>([]);
  useEffect(() => {
    let isShown = true;
    // A workbook that cannot be read now says so on every screen.
    cutOff(port).then(
      (found) => isShown && setNotes(found),
      () => undefined,
    );
    return () => void (isShown = false);
  }, [port]);
  const done = async (id: string): Promise<void> => {
    setNotes((before) => before.filter((note) => note.id !== id));
    await port.strikeWork(id).catch(() => undefined);
  };
  return notes.map(({ id, kind, sheet, since }) => (
    <Notice key={id} intent="warning" title={words.title}>
      {words.begun(words.work[kind](sheet), since)} {words.remedy[kind]}{" "}
      <Button size="small" onClick={() => void done(id)}>
        {words.done}
      </Button>
    </Notice>
  ));
}
