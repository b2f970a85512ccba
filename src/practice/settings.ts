/** What the practice workbook claims to be. */
import type { ApiSets } from "./host/office-client";

/** Functions are called SEW.… in cells. */
export const NAMESPACE = "SEW";

/** The sets that manifest.xml asks for; spilled cells (`getSpillingToRange`) came with ExcelApi 1.12. */
export const DECLARED_SETS: ApiSets = {
  ExcelApi: "1.12",
  SharedRuntime: "1.1",
  CustomFunctionsRuntime: "1.3",
  CustomFunctions: "1.9",
  RichApiRuntime: "1.2",
  AddinCommands: "1.1",
  DialogApi: "1.1",
};
