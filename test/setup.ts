/** Runs before the unit tests. */
import { makeRunFolder } from "./run-folder";

export default makeRunFolder;
