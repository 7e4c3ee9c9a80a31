import { walk } from "./walk";

walk("light", { colorScheme: "light", locale: "en-GB" });
