/** Univer on the screen. */
import {
  ICommandService,
  IUndoRedoService,
  LocaleType,
  LocalUndoRedoService,
  LogLevel,
  merge,
  Univer,
  type IWorkbookData,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/lib/facade";
import * as engine from "@univerjs/engine-formula";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import conditionalText from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreText from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationText from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteText from "@univerjs/preset-sheets-note/locales/en-US";
import { UniverSheetsTablePreset } from "@univerjs/preset-sheets-table";
import tableText from "@univerjs/preset-sheets-table/locales/en-US";
import { CellAlertManagerService } from "@univerjs/sheets-ui";
import { defaultTheme } from "@univerjs/themes";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import "@univerjs/preset-sheets-table/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import { UniverBook } from "./book/workbook";
import { messageOf } from "./book/messages";
import { followTyping } from "./editing";
import type { UniverHandles } from "./engine";
import type { SheetFunctions } from "./functions";

export { engine };

export interface ScreenBook extends UniverHandles {
  readonly book: UniverBook;
  /** True while the cell editor is open. */
  readonly editing: () => boolean;
}

export function startOnScreen(
  container: string,
  functions: SheetFunctions,
  snapshot: Partial<IWorkbookData>,
): ScreenBook {
  const text = merge({}, coreText, tableText, noteText, validationText, conditionalText);
  const univer = new Univer({
    logLevel: LogLevel.WARN,
    theme: defaultTheme,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: text as never },
  });
  const formula = { function: functions.classes as never, description: functions.descriptions as never };
  const presets = [
    UniverSheetsCorePreset({ container, formula }),
    UniverSheetsTablePreset(),
    UniverSheetsNotePreset(),
    // The search box of a list takes the keyboard in the middle of a word that is typed into the cell.
    UniverSheetsDataValidationPreset({ showSearchOnDropdown: false, showEditOnDropdown: false }),
    UniverSheetsConditionalFormattingPreset(),
  ];
  for (const preset of presets) {
    for (const plugin of preset.plugins) {
      if (Array.isArray(plugin)) univer.registerPlugin(plugin[0] as never, plugin[1] as never);
      else univer.registerPlugin(plugin as never);
    }
  }
  const api = FUniver.newAPI(univer);
  const core = { ICommandService, IUndoRedoService, LocalUndoRedoService };
  const handles: UniverHandles = { univer, api, engine, core };
  const book = new UniverBook(handles, api.createWorkbook(snapshot));
  showOurMessages(univer, book, functions);
  return { ...handles, book, editing: followTyping(api, book) };
}

/** The pointer over a cell with an error shows what the function had to say instead of a general text. */
function showOurMessages(univer: Univer, book: UniverBook, { messages }: SheetFunctions): void {
  const alerts = univer.__getInjector().get(CellAlertManagerService);
  const show = alerts.showAlert.bind(alerts);
  alerts.showAlert = (alert) => {
    const { subUnitId, row, col } = alert.location;
    const cell = book.Worksheets.find(subUnitId)?.GetCell(row, col);
    show({ ...alert, message: (cell && messageOf(messages, cell)) ?? alert.message });
  };
}
