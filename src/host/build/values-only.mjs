/**
 * A loader for webpack: runs a module whose exports are plain data, and puts the values in the bundle instead of the
 * code that makes them.
 */
export async function pitch(request) {
  const exported = await this.importModule(`${this.resourcePath}.webpack[javascript/auto]!=!${request}`);
  return Object.entries(exported)
    .map(([name, value]) => `export const ${name} = ${JSON.stringify(value)};`)
    .join("\n");
}
