/** A screen as in the pane: with the look of Fluent, and with the workbook that it follows. */
import { FluentProvider, webLightTheme } from "@fluentui/react-components";
import { createElement, type ComponentType, type ReactElement } from "react";
import { FollowedWorkbook } from "../../src/pane/live/use-test";
import type { WorkbookPort } from "../../src/workbook/port";

export const inPane = (Screen: ComponentType<{ port: WorkbookPort }>, port: WorkbookPort): ReactElement =>
  createElement(
    FluentProvider,
    { theme: webLightTheme },
    createElement(FollowedWorkbook, { port, children: createElement(Screen, { port }) }),
  );
