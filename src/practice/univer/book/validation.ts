import type { FDataValidation } from "@univerjs/sheets-data-validation/facade";
import type {} from "@univerjs/sheets-data-validation/facade";
import { fail, HostObject } from "../../host/objects";
import { formatArea } from "../address";
import { without } from "./metadata";
import type { Range } from "./range";

interface Limits {
  readonly formula1: string | number;
  readonly formula2?: string | number;
  readonly operator: string;
}
interface Rule {
  readonly list?: { readonly source: string | Range; readonly inCellDropDown?: boolean };
  readonly decimal?: Limits;
  readonly wholeNumber?: Limits;
  readonly custom?: { readonly formula: string };
}
interface Alert {
  readonly message?: string;
  readonly title?: string;
  readonly showAlert?: boolean;
  readonly style?: string;
}
interface Prompt {
  readonly message?: string;
  readonly title?: string;
  readonly showPrompt?: boolean;
}
interface Kept {
  readonly Rule?: Rule;
  readonly ErrorAlert?: Alert;
  readonly Prompt?: Prompt;
  readonly IgnoreBlanks?: boolean;
}

const TYPES: Readonly<Record<string, string>> = {
  list: "List",
  decimal: "Decimal",
  whole: "WholeNumber",
  custom: "Custom",
};

/** `range.dataValidation`: a list of values or of cells, number limits, or a formula. */
export class DataValidation extends HostObject {
  readonly scalars = ["ErrorAlert", "IgnoreBlanks", "Prompt", "Rule", "Type"];
  constructor(private readonly range: Range) {
    super();
  }
  private get current(): FDataValidation | undefined {
    return this.range.facade().getDataValidation() ?? undefined;
  }
  private get key() {
    return formatArea(this.range);
  }
  private get kept(): Kept {
    return this.range.sheet.kept<Record<string, Kept>>("validation")[this.key] ?? {};
  }
  private keep(change: Kept) {
    const { sheet } = this.range;
    this.range.writable();
    sheet.keep("validation", { ...sheet.kept("validation"), [this.key]: { ...this.kept, ...change } });
  }
  get Type() {
    const { current } = this;
    return current ? (TYPES[current.getCriteriaType()] ?? "Inconsistent") : "None";
  }
  get IgnoreBlanks() {
    return this.kept.IgnoreBlanks ?? true;
  }
  set IgnoreBlanks(IgnoreBlanks: boolean) {
    this.keep({ IgnoreBlanks });
    this.apply();
  }
  get Rule(): Rule {
    return this.kept.Rule ?? {};
  }
  set Rule(rule: Rule) {
    const source = rule.list?.source;
    const plain: Rule = typeof source === "object" ? { list: { ...rule.list, source: `=${source.Address}` } } : rule;
    if (!this.criteria(plain)) fail("ApiNotFound", `validation by ${Object.keys(rule).join(", ")}`);
    this.keep({ Rule: plain });
    this.apply();
  }
  get ErrorAlert(): Alert {
    return this.kept.ErrorAlert ?? { showAlert: true, style: "Stop", message: "", title: "" };
  }
  set ErrorAlert(ErrorAlert: Alert) {
    this.keep({ ErrorAlert });
    this.apply();
  }
  get Prompt(): Prompt {
    return this.kept.Prompt ?? { showPrompt: true, message: "", title: "" };
  }
  set Prompt(Prompt: Prompt) {
    this.keep({ Prompt });
    this.apply();
  }
  Clear() {
    const { sheet } = this.range;
    sheet.Protection.check(this.range);
    sheet.keep("validation", without(sheet.kept("validation"), this.key));
    this.range.onSheet()?.setDataValidation(null);
  }

  private apply(): void {
    const alert = this.ErrorAlert;
    const criteria = this.criteria(this.Rule);
    if (!criteria) return;
    criteria.setAllowBlank(this.IgnoreBlanks);
    criteria.setAllowInvalid(alert.showAlert === false || (alert.style ?? "Stop") !== "Stop");
    if (alert.message) criteria.setOptions({ showErrorMessage: true, error: alert.message });
    this.range.writable().setDataValidation(criteria.build());
  }

  private criteria({ list, custom, decimal, wholeNumber }: Rule) {
    const { sheet } = this.range;
    const { book } = sheet;
    const builder = book.api.newDataValidation();
    if (list && typeof list.source === "string") {
      const { source, inCellDropDown = true } = list;
      if (source.startsWith("=")) {
        // Excel refuses a table's column here, though it takes a name that stands for one, or INDIRECT.
        if (/^=[\p{L}_][\p{L}\p{N}_.]*\[/u.test(source))
          fail("InvalidArgument", " (a list can't name a table's column)");
        const cells = book.listCells(source.slice(1), sheet);
        if (!cells) return fail("ApiNotFound", `a validation list from ${source}`);
        return builder.requireValueInRange(cells.facade(), false, inCellDropDown);
      }
      const values = source.split(",").map((text) => text.trim());
      return builder.requireValueInList(values, false, inCellDropDown);
    }
    if (custom) return builder.requireFormulaSatisfied(custom.formula);
    const limits = decimal ?? wholeNumber;
    if (!limits) return undefined;
    const whole = wholeNumber !== undefined;
    const a = Number(limits.formula1);
    const b = Number(limits.formula2);
    if (Number.isNaN(a)) fail("ApiNotFound", "limits that are formulas");
    switch (limits.operator) {
      case "Between":
        return builder.requireNumberBetween(a, b, whole);
      case "NotBetween":
        return builder.requireNumberNotBetween(a, b, whole);
      case "EqualTo":
        return builder.requireNumberEqualTo(a, whole);
      case "NotEqualTo":
        return builder.requireNumberNotEqualTo(a, whole);
      case "GreaterThan":
        return builder.requireNumberGreaterThan(a, whole);
      case "GreaterThanOrEqualTo":
        return builder.requireNumberGreaterThanOrEqualTo(a, whole);
      case "LessThan":
        return builder.requireNumberLessThan(a, whole);
      case "LessThanOrEqualTo":
        return builder.requireNumberLessThanOrEqualTo(a, whole);
      default:
        return fail("InvalidArgument", ` (operator ${limits.operator})`);
    }
  }
}
