import { walk } from "./walk";

walk("dark", { colorScheme: "dark", locale: "de-DE" });
