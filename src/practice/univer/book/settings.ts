import { fail, HostCollection, HostObject } from "../../host/objects";
import { without } from "./metadata";
import type { UniverBook } from "./workbook";

/** `workbook.settings`: small things that an add-in keeps with the workbook. */
export class SettingCollection extends HostCollection<Setting> {
  constructor(private readonly book: UniverBook) {
    super();
  }
  all() {
    return Object.keys(this.book.metadata("settings")).map((key) => new Setting(this.book, key));
  }
  Add(key: string, value: unknown) {
    store(this.book, key, value);
    return this.GetItem(key);
  }
}

export class Setting extends HostObject {
  readonly scalars = ["Key", "Value"];
  constructor(
    private readonly book: UniverBook,
    readonly Key: string,
  ) {
    super();
    this.Id = Key;
  }
  get Value() {
    return this.book.metadata<Record<string, unknown>>("settings")[this.Key] ?? null;
  }
  set Value(value: unknown) {
    store(this.book, this.Key, value);
  }
  Delete() {
    this.book.setMetadata("settings", without(this.book.metadata("settings"), this.Key));
  }
}

/** More than the workbook has room for is refused with the words Excel has for it: that the argument is invalid. */
function store(book: UniverBook, key: string, value: unknown): void {
  const all = { ...book.metadata("settings"), [key]: value };
  if (JSON.stringify(all).length > book.storage) fail("InvalidArgument");
  book.setMetadata("settings", all);
}
