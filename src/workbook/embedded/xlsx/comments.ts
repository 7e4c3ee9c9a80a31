/** Notes as the comments of an .xlsx file: one part holds the texts, another the boxes in which Excel shows them. */
import { boxOf } from "../../address";
import type { Note } from "../notes";
import { noteCell } from "../notes";
import { heldText, plainText } from "../../file/escapes";
import { MAIN, PACKAGE_RELATIONS, RELATIONS } from "./namespaces";
import type { Parts } from "./parts";
import { all, append, first, parseXml, writeXml } from "../../file/xml";

const COMMENTS_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml";
const BOXES_TYPE = "application/vnd.openxmlformats-officedocument.vmlDrawing";

/** The box of one note, to the right of its cell, hidden until the pointer is on the cell. */
const noteBox = ({ col, row }: Note, index: number): string =>
  `<v:shape id="_x0000_s${1025 + index}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto">` +
  `<v:fill color2="#ffffe1"/><v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"/>` +
  `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/>` +
  `<x:Anchor>${col + 1}, 12, ${row}, 2, ${col + 5}, 12, ${row + 5}, 2</x:Anchor>` +
  `<x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${col}</x:Column></x:ClientData></v:shape>`;

const noteBoxes = (notes: readonly Note[], sheet: number): string =>
  `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">` +
  `<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="${sheet + 1}"/></o:shapelayout>` +
  `<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">` +
  `<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>` +
  `${notes.map((note, index) => noteBox(note, sheet * 1024 + index)).join("")}</xml>`;

function noteWords(notes: readonly Note[]): string {
  const document = parseXml(
    `<comments xmlns="${MAIN}"><authors><author>Clayledger</author></authors><commentList/></comments>`,
  );
  const list = first(document, "commentList")!;
  for (const note of notes) {
    const text = append(append(list, "comment", { ref: noteCell(note), authorId: "0" }), "text");
    // Excel drops blanks at the ends of a text without the mark.
    append(append(text, "r"), "t", { "xml:space": "preserve" }, heldText(note.text));
  }
  return writeXml(document);
}

/** Adds the notes of a sheet to the parts of the file. `sheet` counts from 0. */
export function addComments(parts: Parts, sheet: number, notes: readonly Note[]): void {
  if (notes.length === 0) return;
  parts.set(`xl/comments${sheet + 1}.xml`, noteWords(notes));
  parts.set(`xl/drawings/vmlDrawing${sheet + 1}.vml`, noteBoxes(notes, sheet));

  const relationsPath = `xl/worksheets/_rels/sheet${sheet}.xml.rels`;
  const relations = parts.document(relationsPath, `<Relationships xmlns="${PACKAGE_RELATIONS}"/>`);
  for (const [Id, kind, Target] of [
    ["notes", "comments", `../comments${sheet + 1}.xml`],
    ["noteBoxes", "vmlDrawing", `../drawings/vmlDrawing${sheet + 1}.vml`],
  ] as const)
    append(relations.documentElement, "Relationship", { Id, Type: `${RELATIONS}/${kind}`, Target });

  const document = parts.document(`xl/worksheets/sheet${sheet}.xml`);
  const boxes = append(document.documentElement, "legacyDrawing");
  boxes.setAttributeNS(RELATIONS, "r:id", "noteBoxes");
  first(document, "tableParts")?.before(boxes);

  const types = parts.document("[Content_Types].xml");
  const known = all(types, "Default").some((type) => type.getAttribute("Extension") === "vml");
  if (!known) {
    const extension = append(types.documentElement, "Default", { Extension: "vml", ContentType: BOXES_TYPE });
    types.documentElement.prepend(extension);
  }
  append(types.documentElement, "Override", { ContentType: COMMENTS_TYPE, PartName: `/xl/comments${sheet + 1}.xml` });
}

/** Reads the notes of a part of comments. */
export const readComments = (document: Document): Note[] =>
  all(document, "comment").flatMap((comment) => {
    const box = boxOf(comment.getAttribute("ref") ?? "");
    if (!box) return [];
    const text = all(comment, "t")
      .map((run) => plainText(run.textContent))
      .join("");
    return [{ col: box.col, row: box.row, text }];
  });
