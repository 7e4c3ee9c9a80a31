/** The form of another firm becomes a working data sheet. */
import { firmWalk } from "./firm-walk";

firmWalk("down");
