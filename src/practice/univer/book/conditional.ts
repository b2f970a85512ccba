import type { IConditionFormattingRule } from "@univerjs/sheets-conditional-formatting";
import type {} from "@univerjs/sheets-conditional-formatting/facade";
import { fail, HostCollection, HostObject } from "../../host/objects";
import { fromUniver, intersect } from "../address";
import type { Range } from "./range";

/** What Excel keeps of a rule; Univer gets a new rule each time one of these changes. */
interface Kept {
  readonly formula?: string;
  readonly fill?: string;
  readonly font?: string;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly stopIfTrue?: boolean;
}

/** `range.conditionalFormats`: rules with a formula of their own ("Custom"). */
export class ConditionalFormatCollection extends HostCollection<ConditionalFormat> {
  constructor(private readonly range: Range) {
    super();
  }
  all() {
    const rules = this.range.sheet.fsheet.getConditionalFormattingRules();
    return rules.filter((rule) => touches(rule, this.range)).map(({ cfId }) => new ConditionalFormat(this.range, cfId));
  }
  Add(type: string) {
    if (type !== "Custom") fail("ApiNotFound", `conditional format ${type}`);
    this.range.writable();
    const format = new ConditionalFormat(this.range, `rule-${Math.random().toString(36).slice(2)}`);
    format.change({});
    return format;
  }
  ClearAll() {
    this.range.sheet.Protection.check(this.range);
    for (const format of this.all()) format.Delete();
  }
}

const touches = (rule: IConditionFormattingRule, range: Range) =>
  rule.ranges.some((part) => intersect(fromUniver(part), range));

export class ConditionalFormat extends HostObject {
  readonly scalars = ["Priority", "StopIfTrue", "Type"];
  readonly Type = "Custom";
  readonly Priority = 0;
  constructor(
    private readonly range: Range,
    override readonly Id: string,
  ) {
    super();
  }
  get kept(): Kept {
    return this.range.sheet.kept<Record<string, Kept>>("conditional")[this.Id] ?? {};
  }
  get StopIfTrue() {
    return this.kept.stopIfTrue ?? false;
  }
  set StopIfTrue(stopIfTrue: boolean) {
    this.change({ stopIfTrue });
  }
  get Custom() {
    return new CustomConditionalFormat(this);
  }
  GetRange() {
    const part = this.rule()?.ranges[0];
    return part ? this.range.at(fromUniver(part)) : this.range;
  }
  Delete() {
    this.range.sheet.Protection.check(this.range);
    this.range.sheet.fsheet.deleteConditionalFormattingRule(this.Id);
  }
  change(part: Kept): void {
    const { sheet } = this.range;
    const kept = { ...this.kept, ...part };
    sheet.keep("conditional", { ...sheet.kept("conditional"), [this.Id]: kept });
    const style = {
      ...(kept.fill ? { bg: { rgb: kept.fill } } : {}),
      ...(kept.font ? { cl: { rgb: kept.font } } : {}),
      ...(kept.bold ? { bl: 1 } : {}),
      ...(kept.italic ? { it: 1 } : {}),
    };
    const existing = this.rule();
    const rule = {
      cfId: this.Id,
      ranges: existing?.ranges ?? [this.range.facade().getRange()],
      stopIfTrue: kept.stopIfTrue ?? false,
      // Until there is a formula the rule is for no cell.
      rule: { type: "highlightCell", subType: "formula", value: kept.formula ?? "=FALSE", style },
    } as unknown as IConditionFormattingRule;
    if (existing) sheet.fsheet.setConditionalFormattingRule(this.Id, rule);
    else sheet.fsheet.addConditionalFormattingRule(rule);
  }
  private rule() {
    return this.range.sheet.fsheet.getConditionalFormattingRules().find(({ cfId }) => cfId === this.Id);
  }
}

class CustomConditionalFormat extends HostObject {
  readonly scalars = [];
  constructor(private readonly owner: ConditionalFormat) {
    super();
  }
  get Rule() {
    return new ConditionalRule(this.owner);
  }
  get Format() {
    return new ConditionalRangeFormat(this.owner);
  }
}

class ConditionalRule extends HostObject {
  readonly scalars = ["Formula"];
  constructor(private readonly owner: ConditionalFormat) {
    super();
  }
  get Formula() {
    return this.owner.kept.formula ?? "";
  }
  set Formula(formula: string) {
    this.owner.change({ formula: formula.startsWith("=") ? formula : `=${formula}` });
  }
}

class ConditionalRangeFormat extends HostObject {
  readonly scalars = [];
  constructor(private readonly owner: ConditionalFormat) {
    super();
  }
  get Fill() {
    return new ConditionalFill(this.owner);
  }
  get Font() {
    return new ConditionalFont(this.owner);
  }
}

class ConditionalFill extends HostObject {
  readonly scalars = ["Color"];
  constructor(private readonly owner: ConditionalFormat) {
    super();
  }
  get Color() {
    return this.owner.kept.fill ?? "";
  }
  set Color(fill: string) {
    this.owner.change({ fill });
  }
}

class ConditionalFont extends HostObject {
  readonly scalars = ["Bold", "Color", "Italic"];
  constructor(private readonly owner: ConditionalFormat) {
    super();
  }
  get Color() {
    return this.owner.kept.font ?? "";
  }
  set Color(font: string) {
    this.owner.change({ font });
  }
  get Bold() {
    return this.owner.kept.bold ?? false;
  }
  set Bold(bold: boolean) {
    this.owner.change({ bold });
  }
  get Italic() {
    return this.owner.kept.italic ?? false;
  }
  set Italic(italic: boolean) {
    this.owner.change({ italic });
  }
}
