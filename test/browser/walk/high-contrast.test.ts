import { walk } from "./walk";

walk("high contrast", { forcedColors: "active", locale: "en-GB" });
