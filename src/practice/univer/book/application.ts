import { HostObject } from "../../host/objects";
import type { UniverBook } from "./workbook";

/** `workbook.application`: an English (United States) Excel that calculates by itself. */
export class Application extends HostObject {
  readonly scalars = [
    "CalculationMode",
    "CalculationState",
    "DecimalSeparator",
    "ThousandsSeparator",
    "UseSystemSeparators",
  ];
  readonly DecimalSeparator = ".";
  readonly ThousandsSeparator = ",";
  readonly UseSystemSeparators = true;
  constructor(private readonly book: UniverBook) {
    super();
  }
  get CalculationMode() {
    return "Automatic";
  }
  get CalculationState() {
    return this.book.calculation.idle ? "Done" : "Pending";
  }
  get CultureInfo() {
    return new CultureInfo();
  }
  Calculate(_type: string) {
    this.book.api.getFormula().executeCalculation();
  }
  SuspendApiCalculationUntilNextSync() {
    // Nothing is calculated before the next read anyway.
  }
  SuspendScreenUpdatingUntilNextSync() {
    // The grid draws by itself.
  }
}

class CultureInfo extends HostObject {
  readonly scalars = ["Name"];
  readonly Name = "en-US";
  get NumberFormat() {
    return new NumberFormatInfo();
  }
}
class NumberFormatInfo extends HostObject {
  readonly scalars = ["NumberDecimalSeparator", "NumberGroupSeparator"];
  readonly NumberDecimalSeparator = ".";
  readonly NumberGroupSeparator = ",";
}
