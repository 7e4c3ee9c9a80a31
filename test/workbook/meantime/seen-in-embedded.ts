/** The ends of several operations that write in the same way. */
const WRITING_A_BLANK_CELL = {
  "the sheet is deleted": "refused",
  "the sheet is renamed": "refused",
  "a row is inserted in the middle": "after",
  "a name is deleted": "refused",
  "a cell to be written is typed into": "refused",
  "the last step is taken back": "after",
  "another workbook is opened": "refused",
  "the same is done in a second pane": "refused",
};

const ADOPTING = {
  "the sheet is deleted": "refused",
  "the sheet is renamed": "refused",
  "a name is deleted": "refused",
  "a cell to be written is typed into": "after, refused",
  "the last step is taken back": "after",
  "another workbook is opened": "refused",
  "the same is done in a second pane": "done, refused",
};

const TAKING_FROM_THE_REGISTER = {
  "the sheet is deleted": "refused",
  "the sheet is renamed": "refused",
  "a row is inserted above": "done, refused",
  "a row is inserted in the middle": "done, refused",
  "a name is deleted": "after, refused",
  "a cell to be written is typed into": "after, refused",
  "the last step is taken back": "after",
  "another workbook is opened": "refused",
  "the same is done in a second pane": "done, refused",
};

const SIGNING = {
  "the last step is taken back": "after",
  "another workbook is opened": "after",
  "the same is done in a second pane": "done, both",
};

const RENEWING_A_SUMMARY = {
  "the sheet is deleted": "refused, done",
  "the sheet is renamed": "done, refused, done",
  "a row is inserted above": "done, refused, done",
  "a row is inserted in the middle": "done, refused, done",
  "a name is deleted": "done, refused, done",
  "the last step is taken back": "after",
  "another workbook is opened": "refused, done",
  "the same is done in a second pane": "done, both, refused, done",
};

/**
 * What is seen at the end of each operation, by what somebody else did in the middle, in the order of the calls of the port: the words of
 * `ends.ts`. An operation or a change that is not named is "done".
 */
export const SEEN: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "enter a reading": WRITING_A_BLANK_CELL,
  "undo a reading": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused",
    "a row is inserted in the middle": "refused",
    "a name is deleted": "refused",
    "a cell to be written is typed into": "refused",
    "the last step is taken back": "after",
    "another workbook is opened": "refused",
    "the same is done in a second pane": "refused",
  },
  "enter the time of a load": WRITING_A_BLANK_CELL,
  "save a pick": WRITING_A_BLANK_CELL,
  "adopt a value": ADOPTING,
  "adopt another value": ADOPTING,
  "take an adopted value back": ADOPTING,
  "take a value of the register": TAKING_FROM_THE_REGISTER,
  "follow a value of the register": TAKING_FROM_THE_REGISTER,
  "write a deflection set": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused",
    "a row is inserted above": "done, refused",
    "a row is inserted in the middle": "after, refused",
    "a name is deleted": "after, refused",
    "a cell to be written is typed into": "after, refused",
    "the last step is taken back": "after",
    "another workbook is opened": "refused",
    "the same is done in a second pane": "refused",
  },
  "answer a question": {
    "the sheet is deleted": "after, refused",
    "the sheet is renamed": "done, refused",
    "a row is inserted in the middle": "after",
    "a name is deleted": "after, refused",
    "a cell to be written is typed into": "after, refused",
    "the last step is taken back": "after",
    "another workbook is opened": "after, refused",
    "the same is done in a second pane": "done, refused",
  },
  "answer the first question": SIGNING,
  "sign a comparison": {
    "the sheet is deleted": "after, refused",
    "the sheet is renamed": "done, refused",
    "a row is inserted in the middle": "after",
    "a name is deleted": "refused",
    "a cell to be written is typed into": "after, refused",
    "the last step is taken back": "after",
    "another workbook is opened": "after, refused",
    "the same is done in a second pane": "done, refused",
  },
  "sign the first comparison": SIGNING,
  "attach a name": {
    "the sheet is deleted": "after, refused, after, refused",
    "the sheet is renamed":
      'done, refused, done, refused, half done: dry_mass is now at C2 of “Data”. There is no sheet called "Data" in this workbook.',
    "a row is inserted above":
      'done, refused, done, half done: dry_mass is now at C2 of “Data”. Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again.',
    "a row is inserted in the middle":
      'done, refused, done, half done: dry_mass is now at C2 of “Data”. Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again.',
    "a name is deleted":
      'after, refused, after, half done: dry_mass is now at C2 of “Data”. Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again.',
    "a cell to be written is typed into":
      'done, refused, done, half done: dry_mass is now at C2 of “Data”. C2 of the sheet "Data" could not be written, and nothing was changed: it holds typed already: say that it may be replaced, or clear it.',
    "the last step is taken back": "after, refused",
    "another workbook is opened": "after, refused, after, refused",
    "the same is done in a second pane": "refused, done",
  },
  "name columns of readings": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "done, refused",
    "a row is inserted above": "done, refused",
    "a row is inserted in the middle": "done, refused",
    "the last step is taken back": "after",
    "another workbook is opened": "refused",
    "the same is done in a second pane": "refused",
  },
  "write the missing formulas": {
    "the sheet is deleted": "done, refused",
    "the sheet is renamed": "done, refused",
    "a row is inserted above": "done, refused",
    "a row is inserted in the middle": "done, refused",
    "a name is deleted": "after, refused",
    "a cell to be written is typed into": "done, refused",
    "the last step is taken back": "after",
    "another workbook is opened": "done, refused",
    "the same is done in a second pane": "done, refused",
  },
  "mend formulas": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused",
    "a row is inserted above": "done, refused",
    "a row is inserted in the middle": "done, refused",
    "a name is deleted": "after, refused",
    "a cell to be written is typed into": "done, refused",
    "the last step is taken back": "after",
    "another workbook is opened": "refused",
  },
  "lay out results": {
    "the sheet is deleted": "after, refused, done",
    "the sheet is renamed":
      'done, refused, half done: There is no sheet called "Data" in this workbook. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a row is inserted above":
      'done, both, refused, half done: Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a row is inserted in the middle":
      'done, both, refused, half done: Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a name is deleted":
      'after, refused, half done: Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a cell to be written is typed into":
      'refused, half done: H2 of the sheet "Data" could not be written, and nothing was changed: it holds typed already: say that it may be replaced, or clear it. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "the last step is taken back": "after",
    "another workbook is opened": "after, refused, done",
    "the same is done in a second pane": "done, refused, done",
  },
  protect: {
    "the sheet is deleted": "after, refused",
    "the sheet is renamed": "done, refused",
    "the last step is taken back": "after",
    "another workbook is opened": "after, refused",
  },
  "lift the protection": {
    "the sheet is deleted": "done, refused",
    "the sheet is renamed": "done, refused",
    "the sheet is protected": "after",
    "the last step is taken back": "after",
    "another workbook is opened": "done, refused",
  },
  "insert a summary": {
    "the sheet is deleted":
      'refused, half done: A6 of the sheet "Summary" could not be written, and nothing was changed: its formula refers to "times_01", which has no cells on the sheet "Data". The new sheet “Summary” is incomplete: delete it, and make it again., done',
    "the sheet is renamed":
      'after, refused, half done: A6 of the sheet "Summary" could not be written, and nothing was changed: its formula refers to "times_01", which has no cells on the sheet "Data". The new sheet “Summary” is incomplete: delete it, and make it again., done',
    "a name is deleted":
      'refused, half done: A6 of the sheet "Summary" could not be written, and nothing was changed: its formula refers to "times_01", which has no cells on the sheet "Data". The new sheet “Summary” is incomplete: delete it, and make it again., done',
    "a cell to be written is typed into": "after, done",
    "the last step is taken back": "after",
    "another workbook is opened":
      'refused, half done: A6 of the sheet "Summary" could not be written, and nothing was changed: its formula refers to "times_01", which has no cells on the sheet "Data". The new sheet “Summary” is incomplete: delete it, and make it again., refused, done',
  },
  "bring a summary up to date": RENEWING_A_SUMMARY,
  "add files to a summary": RENEWING_A_SUMMARY,
  "insert the charts of a summary": {
    "the sheet is deleted":
      'refused, half done: There is no sheet called "Summary" in this workbook. The new sheet “Summary charts” is incomplete: delete it, and make it again., done',
    "the sheet is renamed":
      'done, refused, half done: There is no sheet called "Summary" in this workbook. The new sheet “Summary charts” is incomplete: delete it, and make it again., done',
    "a row is inserted above":
      "done, refused, half done: Rows of “Summary” were inserted or deleted in the meantime, or its names were changed. The new sheet “Summary charts” is incomplete: delete it, and make it again., done",
    "a row is inserted in the middle":
      "done, refused, half done: Rows of “Summary” were inserted or deleted in the meantime, or its names were changed. The new sheet “Summary charts” is incomplete: delete it, and make it again., done",
    "a name is deleted":
      "done, refused, half done: Rows of “Summary” were inserted or deleted in the meantime, or its names were changed. The new sheet “Summary charts” is incomplete: delete it, and make it again., done",
    "the last step is taken back": "after, refused, done",
    "another workbook is opened": "refused, done",
  },
  "import readings and keep the lines": {
    "the sheet is deleted":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook., done',
    "the sheet is renamed":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook., done',
    "a row is inserted in the middle": "after, done",
    "a name is deleted":
      'refused, half done: The sheet "Data" has no cells named "readings_01": choose a data sheet. Nothing was written., done',
    "a cell to be written is typed into": "after, done",
    "the last step is taken back": "after",
    "another workbook is opened": 'refused, half done: The sheet "Data" is not there any more., refused, done',
  },
  "add new readings of a file": {
    "the sheet is deleted":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook., done',
    "the sheet is renamed":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook., done',
    "a row is inserted in the middle": "after, done",
    "a name is deleted":
      'half done: The sheet "Data" has no cells named "readings_01": choose a data sheet. Nothing was written., done',
    "a cell to be written is typed into":
      'refused, half done: Readings of load 1 were entered on “Data” in the meantime, and nothing was written there. What is new in the file was looked up again below: compare it with these readings, and write it if it is still missing., half done: Row 3 of "readings_01" on the sheet "Data" was filled in the meantime, in another window perhaps. Nothing was written: look at the row, and try again., done',
    "the last step is taken back": "after",
    "another workbook is opened": "refused, done",
    "the same is done in a second pane": "refused, done",
  },
};

/** How many steps of undo take the operation back; one, if it is not named. */
export const STEPS: Readonly<Record<string, number>> = {
  "attach a name": 2,
  "lay out results": 2,
  "insert a summary": 2,
  "insert the charts of a summary": 2,
  "import readings and keep the lines": 4,
  "add new readings of a file": 3,
  calculate: 0,
  "look for unfinished work": 0,
};

/** What the next pane says if the pane is closed before a call; the workbook is as it was, if the operation is not named. */
export const CLOSED: Readonly<Record<string, string>> = {
  "attach a name": "as it was; half done",
  "lay out results":
    "as it was; as it was, says: layout of Data; half done, says: layout of Data; done, says: layout of Data",
  "insert a summary":
    "as it was; half done, says: sheet of Summary; half done, says: sheet of Summary, summary of Summary; done, says: sheet of Summary, summary of Summary; done, says: sheet of Summary",
  "bring a summary up to date": "as it was; as it was, says: summary of Summary; done, says: summary of Summary",
  "add files to a summary": "as it was; as it was, says: summary of Summary; done, says: summary of Summary",
  "insert the charts of a summary":
    "as it was; half done, says: sheet of Summary charts; done, says: sheet of Summary charts",
  "import readings and keep the lines":
    "as it was; as it was, says: readings of Data; half done, says: readings of Data; done, says: readings of Data",
  "add new readings of a file":
    "as it was; as it was, says: readings again of Data; half done, says: readings again of Data; done, says: readings again of Data",
};
