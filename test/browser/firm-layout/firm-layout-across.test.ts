/** The form of a firm whose tables of loads and readings lie on their side becomes a working data sheet. */
import { firmWalk } from "./firm-walk";

firmWalk("across");
