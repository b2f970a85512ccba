import { HostObject } from "../../host/objects";
import type { Worksheet } from "./worksheet";

/** `worksheet.pageLayout`: accepted and remembered, because the practice workbook does not print. */
export class PageLayout extends HostObject {
  readonly scalars = [
    "BlackAndWhite",
    "BottomMargin",
    "CenterHorizontally",
    "CenterVertically",
    "LeftMargin",
    "Orientation",
    "PaperSize",
    "PrintGridlines",
    "PrintHeadings",
    "RightMargin",
    "TopMargin",
    "Zoom",
  ];
  constructor(private readonly sheet: Worksheet) {
    super();
  }
  SetPrintArea(area: { readonly Address?: string } | string) {
    this.keep("PrintArea", typeof area === "string" ? area : area.Address);
  }
  SetPrintTitleRows(rows: { readonly Address?: string } | string) {
    this.keep("PrintTitleRows", typeof rows === "string" ? rows : rows.Address);
  }
  SetPrintTitleColumns(columns: { readonly Address?: string } | string) {
    this.keep("PrintTitleColumns", typeof columns === "string" ? columns : columns.Address);
  }
  SetPrintMargins(_unit: string, margins: Readonly<Record<string, number>>) {
    this.keep("Margins", margins);
  }
  read(name: string): unknown {
    return this.sheet.kept<Record<string, unknown>>("page")[name] ?? DEFAULTS[name];
  }
  keep(name: string, value: unknown): void {
    this.sheet.keep("page", { ...this.sheet.kept("page"), [name]: value });
  }
}

/** Excel's own, in points; paper size A4 or Letter is up to the printer. */
const DEFAULTS: Readonly<Record<string, unknown>> = {
  BlackAndWhite: false,
  BottomMargin: 54,
  CenterHorizontally: false,
  CenterVertically: false,
  LeftMargin: 50.4,
  Orientation: "Portrait",
  PaperSize: null,
  PrintGridlines: false,
  PrintHeadings: false,
  RightMargin: 50.4,
  TopMargin: 54,
  Zoom: { scale: 100 },
};

for (const name of Object.keys(DEFAULTS)) {
  Object.defineProperty(PageLayout.prototype, name, {
    get(this: PageLayout) {
      return this.read(name);
    },
    set(this: PageLayout, value: unknown) {
      this.keep(name, value);
    },
  });
}
