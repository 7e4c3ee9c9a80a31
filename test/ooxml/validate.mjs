/**
 * Checks parts of .xlsx files against the schemas of ISO/IEC 29500 (xsd/, see its licence note). The validator is an ES
 * module, which jest cannot load, so this runs as its own process: its input is a JSON array of { schema, text }, its
 * output an array of arrays of complaints. Before the check it removes what a reader may ignore: the namespaces that
 * the root lists as mc:Ignorable, and xml:space.
 */
import fs from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { XmlDocument, XsdValidator } from "libxml2-wasm";
import { xmlRegisterFsInputProviders } from "libxml2-wasm/lib/nodejs.mjs";

xmlRegisterFsInputProviders();
const folder = path.join(path.dirname(fileURLToPath(import.meta.url)), "xsd");
const MARKUP = "http://schemas.openxmlformats.org/markup-compatibility/2006";
const XML = "http://www.w3.org/XML/1998/namespace";

const validators = new Map();
function validatorOf(schema) {
  if (!validators.has(schema)) {
    const url = path.join(folder, schema);
    validators.set(schema, XsdValidator.fromDoc(XmlDocument.fromBuffer(fs.readFileSync(url), { url })));
  }
  return validators.get(schema);
}

function takeOut(root, namespace) {
  for (const kind of ["@", ""])
    for (const found of root.find(`.//${kind}*[namespace-uri()="${namespace}"]`)) found.remove();
}

function withoutIgnorable(document) {
  const { root } = document;
  const ignorable = root.find(`@*[local-name()="Ignorable" and namespace-uri()="${MARKUP}"]`)[0]?.value ?? "";
  for (const prefix of ignorable.split(/\s+/).filter(Boolean)) {
    const namespace = root.namespaces[prefix];
    if (namespace === undefined)
      throw new Error(`mc:Ignorable names the prefix ${prefix}, which the root does not declare`);
    takeOut(root, namespace);
  }
  for (const namespace of [MARKUP, XML]) takeOut(root, namespace);
  return document;
}

function complaints({ schema, text }) {
  try {
    const document = withoutIgnorable(XmlDocument.fromString(text));
    try {
      validatorOf(schema).validate(document);
    } finally {
      document.dispose();
    }
    return [];
  } catch (error) {
    return (error.details?.length ? error.details : [error]).map(({ message, line }) =>
      `${line ? `line ${line}: ` : ""}${message}`.trim(),
    );
  }
}

process.stdout.write(JSON.stringify(JSON.parse(fs.readFileSync(0, "utf8")).map(complaints)));
