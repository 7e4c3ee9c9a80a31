/** The pages as they are built (npm run build). */
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";

const dist = path.join(__dirname, "../../dist");

test.each(["index.html", "pane.html", "taskpane.html", "help.html", "first-minutes.html"])(
  "every file that %s loads or links to is built",
  (page) => {
    const html = readFileSync(path.join(dist, page), "utf8");
    const files = [...html.matchAll(/\s(?:href|src)="?([^"\s>#]+)/g)]
      .map(([, address]) => address)
      .filter((address) => !/^(?:data:|https:)/.test(address));
    expect(files.filter((file) => !existsSync(path.join(dist, file)))).toEqual([]);
  },
);
