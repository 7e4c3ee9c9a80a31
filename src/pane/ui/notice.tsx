/** A message bar that a screen reader reads aloud: errors at once, other messages at the next pause. */
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
