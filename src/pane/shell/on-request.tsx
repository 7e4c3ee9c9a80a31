/** Says that Excel calculates only when it is asked, so that nobody takes old results for new ones. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { WorkbookPort } from "../../workbook/port";
import { useIsOnRequest } from "../live/use-test";
import { text } from "../text";
import { sentenceOf } from "../text/sentence";
import { Notice } from "../ui/notice";

const words = text.onRequest;

export function OnRequest({ port }: { readonly port: WorkbookPort }) {
  const isOnRequest = useIsOnRequest();
  const [refusal, setRefusal] = useState<string>();
  if (!isOnRequest) return null;
  const calculate = async (): Promise<void> => {
    setRefusal(undefined);
    await port.calculate().catch((error: unknown) => setRefusal(sentenceOf(error)));
  };
  return (
    <Notice intent="warning" title={words.title}>
      {words.may}{" "}
      <Button size="small" onClick={() => void calculate()}>
        {words.calculate}
      </Button>
      {refusal !== undefined && ` ${refusal}`}
    </Notice>
  );
}
