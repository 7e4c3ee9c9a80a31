/** Workbooks of other programs, as .xlsx files written by exceljs. */
import ExcelJS from "exceljs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

const bytesOf = async (workbook: ExcelJS.Workbook): Promise<Uint8Array> =>
  new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);

/** Two sheets, a name of the workbook, formulas and a note. */
export async function foreignFile(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Ring");
  sheet.getCell("A1").value = "Mass";
  sheet.getCell("B1").value = 12.5;
  sheet.getCell("B2").value = "00123";
  sheet.getCell("B3").value = { formula: "B1*2", result: 25 };
  sheet.getCell("B1").note = "Weighed twice";
  workbook.definedNames.add("Ring!$B$1", "tin");
  const other = workbook.addWorksheet("Other");
  other.getCell("A1").value = { formula: "Ring!B1+1", result: 13.5 };
  return bytesOf(workbook);
}

export const POINTS = [
  [1, 0.8],
  [10, 0.7],
  [100, 0.5],
];

const NAMESPACES = {
  chart: "http://schemas.openxmlformats.org/drawingml/2006/chart",
  drawing: "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
  main: "http://schemas.openxmlformats.org/drawingml/2006/main",
  office: "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
  package: "http://schemas.openxmlformats.org/package/2006/relationships",
};

const relation = (kind: string, target: string): string =>
  `<Relationships xmlns="${NAMESPACES.package}"><Relationship Id="rId1" Type="${NAMESPACES.office}/${kind}" Target="${target}"/></Relationships>`;

function chartPart(): string {
  const cells = (tag: string, column: string): string =>
    `<c:${tag}><c:numRef><c:f>Curve!$${column}$1:$${column}$3</c:f></c:numRef></c:${tag}>`;
  const axis = (id: number, crosses: number, side: string): string =>
    `<c:valAx><c:axId val="${id}"/><c:scaling/><c:delete val="0"/><c:axPos val="${side}"/><c:crossAx val="${crosses}"/></c:valAx>`;
  const series = `<c:ser><c:idx val="0"/><c:order val="0"/>${cells("xVal", "A")}${cells("yVal", "B")}</c:ser>`;
  const scatter = `<c:scatterChart><c:scatterStyle val="lineMarker"/>${series}<c:axId val="1"/><c:axId val="2"/></c:scatterChart>`;
  return `<c:chartSpace xmlns:c="${NAMESPACES.chart}"><c:chart><c:plotArea><c:layout/>${scatter}${axis(1, 2, "b")}${axis(2, 1, "l")}</c:plotArea></c:chart></c:chartSpace>`;
}

function drawingPart(): string {
  const corner = (name: string, col: number, row: number): string =>
    `<xdr:${name}><xdr:col>${col}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  const about = `<xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="Chart 1"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>`;
  const size = `<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>`;
  const chart = `<a:graphic><a:graphicData uri="${NAMESPACES.chart}"><c:chart xmlns:c="${NAMESPACES.chart}" r:id="rId1"/></a:graphicData></a:graphic>`;
  const anchor = `<xdr:twoCellAnchor>${corner("from", 3, 1)}${corner("to", 9, 15)}<xdr:graphicFrame macro="">${about}${size}${chart}</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`;
  return `<xdr:wsDr xmlns:xdr="${NAMESPACES.drawing}" xmlns:a="${NAMESPACES.main}" xmlns:r="${NAMESPACES.office}">${anchor}</xdr:wsDr>`;
}

/**
 * A sheet "Curve" with POINTS and a scatter chart of them: exceljs writes the cells, and this function adds the parts
 * of the chart.
 */
export async function fileWithChart(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  workbook.addWorksheet("Curve").addRows(POINTS);
  const parts = unzipSync(await bytesOf(workbook));
  const put = (path: string, text: string): void => void (parts[path] = strToU8(`<?xml version="1.0"?>${text}`));
  const addAtEnd = (path: string, end: string, text: string): void =>
    void (parts[path] = strToU8(strFromU8(parts[path]).replace(end, `${text}${end}`)));
  put("xl/charts/chart1.xml", chartPart());
  put("xl/drawings/drawing1.xml", drawingPart());
  put("xl/drawings/_rels/drawing1.xml.rels", relation("chart", "../charts/chart1.xml"));
  put("xl/worksheets/_rels/sheet1.xml.rels", relation("drawing", "../drawings/drawing1.xml"));
  const drawing = `<drawing xmlns:r="${NAMESPACES.office}" r:id="rId1"/>`;
  addAtEnd("xl/worksheets/sheet1.xml", "</worksheet>", drawing);
  const type = (part: string, kind: string): string =>
    `<Override PartName="/xl/${part}" ContentType="application/vnd.openxmlformats-officedocument.${kind}+xml"/>`;
  const types = type("charts/chart1.xml", "drawingml.chart") + type("drawings/drawing1.xml", "drawing");
  addAtEnd("[Content_Types].xml", "</Types>", types);
  return zipSync(parts);
}
