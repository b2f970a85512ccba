import { HostObject } from "../../host/objects";
import type { Worksheet } from "./worksheet";

/** `worksheet.freezePanes` */
export class FreezePanes extends HostObject {
  readonly scalars: string[] = [];
  constructor(private readonly sheet: Worksheet) {
    super();
  }
  FreezeRows(count = 1) {
    this.sheet.fsheet.setFrozenRows(count);
  }
  FreezeColumns(count = 1) {
    this.sheet.fsheet.setFrozenColumns(count);
  }
  Unfreeze() {
    this.sheet.fsheet.cancelFreeze();
  }
}
