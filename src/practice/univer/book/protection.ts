/** `worksheet.protection`: a protected sheet answers every write with AccessDenied, except to unlocked cells. */
import { fail, HostObject } from "../../host/objects";
import { type Area, formatArea, intersect, parseArea } from "../address";
import type { Worksheet } from "./worksheet";

interface Kept {
  readonly options?: object | null;
  readonly password?: string;
  readonly on?: boolean;
  /** Addresses of cells that stay open. */
  readonly unlocked?: readonly string[];
}

export class WorksheetProtection extends HostObject {
  readonly scalars = ["Options", "Protected"];
  constructor(private readonly sheet: Worksheet) {
    super();
  }

  private get kept(): Kept {
    return this.sheet.kept<Kept>("protection");
  }
  get Protected(): boolean {
    return this.kept.on ?? false;
  }
  get Options(): object | null {
    return this.Protected ? (this.kept.options ?? {}) : null;
  }
  Protect(options: object | null = null, password = "") {
    if (this.Protected) fail("InvalidOperation", " (the sheet is protected already)");
    this.sheet.keep("protection", { ...this.kept, on: true, options, password });
  }
  Unprotect(password = "") {
    if (this.Protected && password !== (this.kept.password ?? "")) fail("InvalidArgument", " (the password is wrong)");
    const { unlocked = [] } = this.kept;
    this.sheet.keep("protection", { unlocked });
  }

  /** Answers AccessDenied when the sheet is protected and not all of these cells are open. */
  check(area?: Area): void {
    if (this.Protected && !(area && this.isOpen(area))) fail("AccessDenied");
  }
  isOpen(area: Area): boolean {
    const { unlocked = [] } = this.kept;
    return unlocked.some((address) => {
      const open = parseArea(address);
      const common = open && intersect(open, area);
      return common?.rows === area.rows && common.columns === area.columns;
    });
  }
  setLocked(area: Area, locked: boolean): void {
    this.check();
    const address = formatArea(area);
    const { unlocked = [] } = this.kept;
    const others = unlocked.filter((one) => one !== address);
    this.sheet.keep("protection", { ...this.kept, unlocked: locked ? others : [...others, address] });
  }
}
