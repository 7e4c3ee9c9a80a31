/**
 * The environment of tests in Node: a context for each file, as Jest makes it, in which a global such as `Math` is as
 * fast as elsewhere. In the context that Jest makes, every use of a global goes through an interceptor.
 */
import vm from "node:vm";
import { TestEnvironment } from "jest-environment-node";

/**
 * A worker that has nothing left to do ends at once. By itself Node first gives its memory back piece by piece; with the modules of many
 * tests this takes longer than the half second after which Jest ends the worker and says that it did not exit.
 */
if (process.send) process.once("beforeExit", () => process.exit());

/** The functions make an error for every cell without an answer, and its trace costs more than the cell. */
const FRAMES = 20;

export default class OwnContext extends TestEnvironment {
  constructor(config, context) {
    // Jest has no setting for this: its call is answered here.
    const { createContext } = vm;
    vm.createContext = () => createContext(vm.constants.DONT_CONTEXTIFY);
    try {
      super(config, context);
    } finally {
      vm.createContext = createContext;
    }
    this.global.Error.stackTraceLimit = FRAMES;
  }
}
