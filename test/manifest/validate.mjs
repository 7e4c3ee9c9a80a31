/**
 * Checks XML texts against Microsoft's manifest schema (xsd/, see its licence note). The validator is an ES module,
 * which jest cannot load, so this runs as its own process: its input is a JSON array of texts, its output an array of
 * complaints.
 */
import path from "node:path";
import { fileURLToPath } from "node:url";
import fs from "node:fs";
import { XmlDocument, XsdValidator } from "libxml2-wasm";
import { xmlRegisterFsInputProviders } from "libxml2-wasm/lib/nodejs.mjs";

xmlRegisterFsInputProviders();
const schema = path.join(path.dirname(fileURLToPath(import.meta.url)), "xsd/OfficeAppManifestV1_1.xsd");
const validator = XsdValidator.fromDoc(XmlDocument.fromBuffer(fs.readFileSync(schema), { url: schema }));

const complaint = (text) => {
  try {
    validator.validate(XmlDocument.fromString(text));
    return "";
  } catch (error) {
    return error.message.trim();
  }
};

process.stdout.write(JSON.stringify(JSON.parse(fs.readFileSync(0, "utf8")).map(complaint)));
