/** Runs after the unit tests and after the tests of files. */
import { removeRunFolder } from "./run-folder";

export default removeRunFolder;
