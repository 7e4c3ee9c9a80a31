/** The ends of several operations that write in the same way. */
const INSERTING_A_SHEET = {
  "the workbook's structure is protected": "refused, done",
  "a sheet is added": "after, done",
};

const WRITING_A_BLANK_CELL = {
  "the sheet is deleted": "refused",
  "the sheet is renamed": "refused, done",
  "a row is inserted in the middle": "after",
  "a name is deleted": "refused, done",
  "a cell to be written is typed into": "refused",
  "the same is done in a second pane": "refused, done, refused",
};

const ADOPTING = {
  "the sheet is deleted": "refused",
  "the sheet is renamed": "refused, done",
  "a name is deleted": "refused, done",
  "a cell to be written is typed into": "after, refused",
  "the same is done in a second pane": "done, refused, done, refused",
};

const TAKING_FROM_THE_REGISTER = {
  "the sheet is deleted": "refused",
  "the sheet is renamed": "refused, done",
  "the sheet is protected": "done, refused",
  "the sheet is protected with a password": "refused",
  "a row is inserted above": "done, refused, done",
  "a row is inserted in the middle": "done, refused, done",
  "a name is deleted": "after, refused, done",
  "the same is done in a second pane": "done, refused, done, refused",
  "a cell to be written is typed into": "after, refused",
};

const SIGNING = {
  "the workbook's structure is protected": "refused, done",
  "a sheet is added": "after, done",
  "the same is done in a second pane": "done, both, done",
};

const RENEWING_A_SUMMARY = {
  "the sheet is deleted": "refused, done",
  "the sheet is renamed": "done, refused, done",
  "the sheet is protected": "done, refused, done",
  "the sheet is protected with a password": "refused, done",
  "a row is inserted above": "done, refused, done",
  "a row is inserted in the middle": "done, refused, done",
  "a name is deleted": "done, refused, done",
  "the same is done in a second pane":
    'done, both, done, refused, half done: Somebody else changed cells of the sheet "Summary" in the meantime. Nothing was written: look at the cells, and try again., done',
};

/**
 * What is seen at the end of each operation, by what somebody else did in the middle, in the order of the requests: the words of
 * `ends.ts`. An operation or a change that is not named is "done".
 */
export const SEEN: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "insert a German data sheet": INSERTING_A_SHEET,
  "insert the sheet of limits": INSERTING_A_SHEET,
  "insert a calculation book": {
    "the sheet is deleted": "refused, done",
    "the sheet is renamed": "refused, done",
    "the workbook's structure is protected": "refused, done",
    "a row is inserted above": "after, refused, done",
    "a row is inserted in the middle": "done, refused, done",
    "a name is deleted": "done, refused, done",
    "a sheet is added": "after, done",
  },
  "insert charts": INSERTING_A_SHEET,
  "insert a sheet to print": {
    "the sheet is deleted": "refused, done",
    "the sheet is renamed": "refused, done",
    "the workbook's structure is protected": "refused, done",
    "a name is deleted": "after, done",
    "a sheet is added": "after, done",
    "a cell to be written is typed into": "after, done",
  },
  "insert a register": {
    "the sheet is deleted": "refused, done",
    "the sheet is renamed": "refused, done",
    "the workbook's structure is protected": "refused, done",
    "a sheet is added": "after, done",
  },
  "make the reports of all tests": {
    "the sheet is deleted": "refused, done",
    "the sheet is renamed": "refused, done",
    "the workbook's structure is protected": "refused, done",
    "a row is inserted above": "after, refused, done",
    "a row is inserted in the middle": "after, refused, done",
    "rows are filtered": "after, done",
    "a name is deleted": "after, refused, done",
    "a sheet is added": "after, done",
    "a cell to be written is typed into": "after, done",
  },
  "enter a reading": WRITING_A_BLANK_CELL,
  "undo a reading": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused, done",
    "a row is inserted in the middle": "refused",
    "a name is deleted": "refused, done",
    "a cell to be written is typed into": "refused",
    "the same is done in a second pane": "refused, done, refused",
  },
  "enter the time of a load": WRITING_A_BLANK_CELL,
  "save a pick": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused, done",
    "a row is inserted in the middle": "after",
    "a name is deleted": "refused, done",
    "a cell to be written is typed into": "refused",
    "the same is done in a second pane": "refused, done, refused, done, refused",
  },
  "adopt a value": ADOPTING,
  "adopt another value": ADOPTING,
  "take an adopted value back": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused, done",
    "a name is deleted": "refused, done",
    "the same is done in a second pane": "done, refused, done, refused",
    "a cell to be written is typed into": "after, refused",
  },
  "take a value of the register": TAKING_FROM_THE_REGISTER,
  "write a deflection set": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused, done",
    "the sheet is protected": "done, refused",
    "the sheet is protected with a password": "refused",
    "a row is inserted above": "done, refused, done",
    "a row is inserted in the middle": "after, refused, done",
    "a name is deleted": "after, refused, done",
    "the same is done in a second pane": "refused, done, refused, done, refused",
    "a cell to be written is typed into": "after, refused",
  },
  "answer a question": {
    "the sheet is deleted": "after, refused",
    "the sheet is renamed": "done, refused, done",
    "a row is inserted in the middle": "after",
    "a name is deleted": "after, refused, done",
    "a cell to be written is typed into": "after, refused",
    "the same is done in a second pane": "done, refused",
  },
  "answer the first question": SIGNING,
  "sign a comparison": {
    "the sheet is deleted": "after, refused",
    "the sheet is renamed": "done, refused, done",
    "a row is inserted in the middle": "after",
    "a name is deleted": "refused, done",
    "a cell to be written is typed into": "after, refused",
    "the same is done in a second pane": "done, refused",
  },
  "sign the first comparison": SIGNING,
  "attach a name": {
    "the sheet is deleted": "after, refused, after, refused",
    "the same is done in a second pane": "refused, done, refused, done",
    "another sheet comes to the front": "after, done",
    "the sheet is renamed":
      'done, refused, done, refused, half done: dry_mass is now at C2 of “Data”. There is no sheet called "Data" in this workbook., half done: dry_mass is now at C2 of “Data”. Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again., done',
    "the sheet is protected":
      'done, half done: dry_mass is now at C2 of “Data”. Excel could not write into the sheet "Data": it is protected, or open for reading only: unprotect it or save a copy, and try again. The cells are as they were.',
    "the sheet is protected with a password":
      'half done: dry_mass is now at C2 of “Data”. The sheet is protected with a password: lift it in Excel (Review, Unprotect Sheet), and try again. Nothing was changed., half done: dry_mass is now at C2 of “Data”. Excel could not write into the sheet "Data": it is protected, or open for reading only: unprotect it or save a copy, and try again. The cells are as they were.',
    "a row is inserted above":
      'after, refused, done, half done: dry_mass is now at C2 of “Data”. Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again., done',
    "a row is inserted in the middle":
      'after, refused, done, half done: dry_mass is now at C2 of “Data”. Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again., done',
    "a name is deleted":
      'after, refused, after, half done: dry_mass is now at C2 of “Data”. Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again., half done: dry_mass is now at C2 of “Data”. C2 of the sheet "Data" could not be written, and nothing was changed: its formula refers to "ring_mass", which has no cells on the sheet "Data"., done',
    "a cell to be written is typed into":
      'done, refused, done, half done: dry_mass is now at C2 of “Data”. C2 of the sheet "Data" could not be written, and nothing was changed: it holds typed already: say that it may be replaced, or clear it., half done: dry_mass is now at C2 of “Data”. Somebody else changed cells of the sheet "Data" in the meantime. Nothing was written: look at the cells, and try again.',
  },
  "name columns of readings": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "done, refused, done",
    "a row is inserted above": "after, refused, done",
    "a row is inserted in the middle": "after, refused, done",
    "the same is done in a second pane": "refused, done, refused",
    "another sheet comes to the front": "refused, done",
  },
  "write the missing formulas": {
    "the sheet is deleted": "done, refused",
    "the sheet is renamed": "done, refused, done",
    "the sheet is protected": "done, refused",
    "the sheet is protected with a password": "refused",
    "a row is inserted above": "done, refused, done",
    "a row is inserted in the middle": "done, refused, done",
    "a name is deleted": "after, refused, done",
    "the same is done in a second pane": "done, refused",
    "another sheet comes to the front": "after, done",
    "a cell to be written is typed into": "done, refused",
  },
  "mend formulas": {
    "the sheet is deleted": "refused",
    "the sheet is renamed": "refused, done",
    "the sheet is protected": "done, refused",
    "the sheet is protected with a password": "refused",
    "a row is inserted above": "done, refused, done",
    "a row is inserted in the middle": "done, refused, done",
    "a name is deleted": "after, refused, done",
    "the same is done in a second pane": "done, refused",
    "a cell to be written is typed into": "done, refused",
  },
  "lay out results": {
    "the sheet is deleted": "refused, done",
    "the sheet is protected with a password":
      "half done: The sheet is protected with a password: lift it in Excel (Review, Unprotect Sheet), and try again. Nothing was changed. The cells of “Data” have their names already: write the missing formulas, and type the labels., done",
    "the same is done in a second pane": "done, refused, done, refused, done, refused, done",
    "another sheet comes to the front": "refused, done",
    "the sheet is protected":
      'done, half done: Excel could not write into the sheet "Data": it is protected, or open for reading only: unprotect it or save a copy, and try again. The cells are as they were. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "the sheet is renamed":
      'done, refused, half done: There is no sheet called "Data" in this workbook. The cells of “Data” have their names already: write the missing formulas, and type the labels., half done: Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a row is inserted above":
      'after, refused, half done: Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a row is inserted in the middle":
      'after, refused, half done: Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a name is deleted":
      'after, refused, half done: Rows or columns of the sheet "Data" were inserted or deleted in the meantime, or its names were changed. Nothing was written: look at the sheet, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., half done: H2 of the sheet "Data" could not be written, and nothing was changed: its formula refers to "ring_mass", which has no cells on the sheet "Data". The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
    "a cell to be written is typed into":
      'refused, half done: H2 of the sheet "Data" could not be written, and nothing was changed: it holds typed already: say that it may be replaced, or clear it. The cells of “Data” have their names already: write the missing formulas, and type the labels., half done: Somebody else changed cells of the sheet "Data" in the meantime. Nothing was written: look at the cells, and try again. The cells of “Data” have their names already: write the missing formulas, and type the labels., done',
  },
  "enter formulas again": {
    "the sheet is deleted": "done, refused",
    "the sheet is renamed": "done, refused, done",
    "the sheet is protected": "done, refused, done",
    "the sheet is protected with a password": "refused, done",
    "a row is inserted in the middle": "done, refused, done",
    "another sheet comes to the front": "after, done",
  },
  protect: {
    "the sheet is deleted": "after, refused",
    "the sheet is renamed": "done, refused, done",
    "another sheet comes to the front": "after, done",
    "another cell is written": "after",
  },
  "lift the protection": {
    "the sheet is deleted": "done, refused",
    "the sheet is renamed": "done, refused, done",
    "the sheet is protected": "after",
    "the sheet is protected with a password": "refused",
    "another sheet comes to the front": "after, done",
    "another cell is written": "after",
  },
  "insert a summary": {
    "the workbook's structure is protected": "refused, done",
    "a sheet is added": "after, done",
    "a cell to be written is typed into": "after, done",
    "the sheet is deleted":
      'refused, half done: A6 of the sheet "Summary" could not be written, and nothing was changed: its formula refers to "times_01", which has no cells on the sheet "Data". The new sheet “Summary” is incomplete: delete it, and make it again., half done: There is no sheet called "Summary" in this workbook. The new sheet “Summary” is incomplete: delete it, and make it again., done',
    "the sheet is renamed":
      'refused, half done: A6 of the sheet "Summary" could not be written, and nothing was changed: its formula refers to "times_01", which has no cells on the sheet "Data". The new sheet “Summary” is incomplete: delete it, and make it again., done',
    "a name is deleted":
      'half done: A6 of the sheet "Summary" could not be written, and nothing was changed: its formula refers to "times_01", which has no cells on the sheet "Data". The new sheet “Summary” is incomplete: delete it, and make it again., done',
  },
  "bring a summary up to date": RENEWING_A_SUMMARY,
  "add files to a summary": RENEWING_A_SUMMARY,
  "insert the charts of a summary": {
    "the sheet is deleted":
      'refused, half done: There is no sheet called "Summary" in this workbook. The new sheet “Summary charts” is incomplete: delete it, and make it again.',
    "the sheet is renamed":
      'refused, half done: There is no sheet called "Summary" in this workbook. The new sheet “Summary charts” is incomplete: delete it, and make it again.',
    "the workbook's structure is protected": "refused, done",
    "a row is inserted above":
      "after, refused, half done: Rows of “Summary” were inserted or deleted in the meantime, or its names were changed. The new sheet “Summary charts” is incomplete: delete it, and make it again.",
    "a row is inserted in the middle":
      "after, refused, half done: Rows of “Summary” were inserted or deleted in the meantime, or its names were changed. The new sheet “Summary charts” is incomplete: delete it, and make it again.",
    "a name is deleted":
      "done, refused, half done: Rows of “Summary” were inserted or deleted in the meantime, or its names were changed. The new sheet “Summary charts” is incomplete: delete it, and make it again.",
    "a sheet is added": "after, done",
    "another cell is written": "after, done",
  },
  "follow a value of the register": TAKING_FROM_THE_REGISTER,
  "insert a file": INSERTING_A_SHEET,
  "lock a report as an issue": {
    "the sheet is deleted": "refused, done",
    "the sheet is renamed": "refused, done",
    "the workbook's structure is protected": "refused, done",
    "a row is inserted above": "after, refused, done",
    "a row is inserted in the middle": "after, refused, done",
    "a name is deleted": "after, refused, done",
    "a sheet is added": "after, done",
    "a cell to be written is typed into": "after, done",
    "the same is done in a second pane": "done, both, done",
  },
  "import readings and keep the lines": {
    "the sheet is deleted":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook.',
    "the sheet is renamed":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook., done',
    "the workbook's structure is protected": "refused, done",
    "a row is inserted in the middle": "after",
    "a name is deleted":
      'refused, half done: The sheet "Data" has no cells named "readings_01": choose a data sheet. Nothing was written., half done: There is no sheet called "Data" in this workbook.',
    "a sheet is added": "after, done",
    "a cell to be written is typed into": "after",
  },
  "add new readings of a file": {
    "the sheet is deleted":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook., done',
    "the sheet is renamed":
      'refused, half done: The sheet "Data" is not there any more., half done: There is no sheet called "Data" in this workbook., done',
    "a row is inserted in the middle": "after, done",
    "a name is deleted":
      'half done: The sheet "Data" has no cells named "readings_01": choose a data sheet. Nothing was written., half done: There is no sheet called "Data" in this workbook., done',
    "a cell to be written is typed into":
      'refused, half done: Readings of load 1 were entered on “Data” in the meantime, and nothing was written there. What is new in the file was looked up again below: compare it with these readings, and write it if it is still missing., half done: Row 3 of "readings_01" on the sheet "Data" was filled in the meantime, in another window perhaps. Nothing was written: look at the row, and try again., done',
    "the same is done in a second pane": "refused, done, refused, done",
  },
};
