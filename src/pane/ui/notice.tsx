/** A message bar that a screen reader hears: errors at once, the rest when there is a pause. */
import { MessageBar, MessageBarBody, MessageBarTitle } from "@fluentui/react-components";
import type { ReactNode } from "react";

export interface NoticeProps {
  readonly intent: "success" | "warning" | "error" | "info";
  readonly title?: string;
  readonly children: ReactNode;
}

export const Notice = ({ intent, title, children }: NoticeProps) => (
  <div role={intent === "error" ? "alert" : "status"}>
    <MessageBar intent={intent} layout="multiline">
      <MessageBarBody>
        {title !== undefined && <MessageBarTitle>{title}</MessageBarTitle>}
        {children}
      </MessageBarBody>
    </MessageBar>
  </div>
);
