/**
 * The functions of dist/functions.js, in place of the modules of src/functions: the project `built` of jest.config.mjs runs the
 * tests of the functions on the file that Excel loads. A refusal is a `CellError`, as the tests expect.
 */
const { CellError } = require("../../src/functions/cells");
const { say, verbatim } = require("../../src/reduction/message");

class HostError extends CellError {
  constructor(code, message) {
    super(code, say`${verbatim(message)}`);
  }
}

const functions = {};
globalThis.CustomFunctions = {
  associate: (name, compute) => Object.assign(functions, { [name]: compute }),
  Error: HostError,
};
require("../../dist/functions.js");

module.exports = functions;
