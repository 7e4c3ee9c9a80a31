/** Settings that add-ins keep in the workbook. */
import { invalidArgument, notFound } from "../refusal";
import { Being, Collection, type Host } from "./being";

export class SettingCollection extends Collection<Setting> {
  readonly className = "SettingCollection";
  get items(): Setting[] {
    return [...this.host.book.settings.keys()].map((key) => new Setting(this.host, key));
  }
  /** Settings of more than 2 MB together are refused (office-js issues 621 and 3957). */
  add(key: string, value: unknown): Setting {
    const others = [...this.host.book.settings].filter(([name]) => name !== key);
    if (JSON.stringify([...others, [key, value]]).length > 2 * 1024 * 1024)
      throw invalidArgument("The settings of a workbook take at most 2 MB.");
    this.host.book.settings.set(key, value);
    return new Setting(this.host, key);
  }
  getItemOrNullObject(key: string): Setting | null {
    return this.host.book.settings.has(key) ? new Setting(this.host, key) : null;
  }
  getItem(key: string): Setting {
    const found = this.getItemOrNullObject(key);
    if (!found) throw notFound(`the setting "${key}"`);
    return found;
  }
}

class Setting extends Being {
  readonly className = "Setting";
  constructor(
    host: Host,
    readonly key: string,
  ) {
    super(host);
  }
  get value(): unknown {
    return this.host.book.settings.get(this.key);
  }
  set value(value: unknown) {
    this.host.book.settings.set(this.key, value);
  }
  delete(): void {
    this.host.book.settings.delete(this.key);
  }
}
