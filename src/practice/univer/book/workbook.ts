import type { IMutationInfo, IUndoRedoService } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { FormulaDataModel } from "@univerjs/engine-formula";
import type { FWorkbook } from "@univerjs/sheets/facade";
import { FUNCTION_SERVICES, FunctionService } from "../../host/function-service";
import { fail, HostObject, type MaybeNull, NULL_OBJECT } from "../../host/objects";
import type { DocumentSettings } from "../../host/office-client";
import { type Area, fromUniver, parseArea, splitSheet, toUniver } from "../address";
import { Calculation } from "../calculation";
import type { UniverHandles } from "../engine";
import { repair } from "../repairs";
import { stopSpillsAtTables } from "../spill-guard";
import { Application } from "./application";
import { CommentCollection } from "./comments";
import { watchFormulas } from "./formulas-in";
import { watchHeadings } from "./headings";
import { Metadata } from "./metadata";
import { NamedItemCollection } from "./names";
import type { Range } from "./range";
import { SettingCollection } from "./settings";
import { TableCollection } from "./tables";
import { WorksheetCollection } from "./worksheets";
import { Undoing } from "./undoing";
import type { Worksheet } from "./worksheet";

const SET_VALUES = "sheet.mutation.set-range-values";

/** The workbook that office.js sees, on top of a Univer workbook. Works with a screen and without. */
export class UniverBook extends HostObject {
  readonly scalars = ["AutoSave", "IsDirty", "Name", "ReadOnly"];
  readonly AutoSave = false;
  readonly IsDirty = false;
  readonly ReadOnly = false;
  /** Characters that the settings may hold together. Source: "Office.Settings", Office Add-ins documentation: 2 MB. */
  storage = 2 * 1024 * 1024;
  readonly api: FUniver;
  readonly formulaData: FormulaDataModel;
  readonly calculation: Calculation;
  readonly undoing: Undoing;
  readonly #undo: IUndoRedoService;
  readonly #metadata: Metadata;
  readonly #handles: UniverHandles;

  constructor(
    handles: UniverHandles,
    readonly fbook: FWorkbook,
  ) {
    super();
    const { univer, api, engine, core } = handles;
    const injector = univer.__getInjector();
    this.#handles = handles;
    this.#undo = injector.get(core.IUndoRedoService);
    this.api = api;
    this.formulaData = injector.get(engine.FormulaDataModel);
    this.calculation = new Calculation(handles);
    this.undoing = new Undoing({ api });
    this.#metadata = new Metadata(handles, fbook);
    repair(handles);
    stopSpillsAtTables(handles, this);
    watchFormulas(this);
    watchHeadings(this);
  }

  get Name() {
    return this.fbook.getName();
  }
  get Worksheets() {
    return new WorksheetCollection(this);
  }
  get Tables() {
    return new TableCollection(this, () => true);
  }
  get Names() {
    return new NamedItemCollection(this);
  }
  get Comments() {
    return new CommentCollection(this);
  }
  get Settings() {
    return new SettingCollection(this);
  }
  get Application() {
    return new Application(this);
  }
  /** The client reports custom functions to these services. Here the spreadsheet calls the functions itself. */
  NewObject(name: string) {
    return FUNCTION_SERVICES.test(name) ? new FunctionService() : undefined;
  }
  get CustomFunctions() {
    return new FunctionService();
  }
  GetSelectedRange(): Range {
    const sheet = this.Worksheets.GetActiveWorksheet();
    const found = this.fbook.getActiveRange()?.getRange();
    if (!found) return sheet.GetCell(0, 0);
    const { startRow, startColumn, endRow, endColumn } = found;
    return sheet.GetRangeByIndexes(startRow, startColumn, endRow - startRow + 1, endColumn - startColumn + 1);
  }
  GetActiveCell(): Range {
    const cell = this.fbook.getActiveCell();
    return this.Worksheets.GetActiveWorksheet().GetCell(cell?.getRow() ?? 0, cell?.getColumn() ?? 0);
  }
  /** How an event's `getRange()` asks for its cells. */
  _GetRangeForEventByReferenceId(address: string): Range {
    const { sheet = "", local } = splitSheet(address);
    return this.Worksheets.GetItem(sheet).GetRange(local);
  }
  _GetRangeOrNullObjectForEventByReferenceId(address: string): MaybeNull<Range> {
    const { sheet = "", local } = splitSheet(address);
    return this.Worksheets.find(sheet)?.GetRange(local) ?? NULL_OBJECT;
  }

  /** One batch is one step of Ctrl+Z; Univer remembers only 20 steps, one per command. */
  async asOneStep<T>(work: () => Promise<T>): Promise<T> {
    const batching = this.#undo.__tempBatchingUndoRedo(this.fbook.getId());
    try {
      return await work();
    } finally {
      batching.dispose();
    }
  }

  // For the other host objects

  run(command: string, params: object): void {
    if (this.api.syncExecuteCommand(command, params) === false) {
      fail("GeneralException", ` (the spreadsheet refused ${command})`);
    }
  }
  /** A change that Univer has no command for, with its inverse for Ctrl+Z. */
  mutate(change: IMutationInfo, inverse: IMutationInfo): void {
    this.run(change.id, change.params);
    const unitID = this.fbook.getId();
    this.#undo.pushUndoRedo({ unitID, undoMutations: [inverse], redoMutations: [change] });
  }
  /** Univer shifts cells only in the sheet that is shown, and selects them; nobody is to notice either. */
  shift(command: string, area: Area, sheet: Worksheet): void {
    const shown = this.fbook.getActiveSheet();
    if (sheet.Id !== shown.getSheetId()) this.fbook.setActiveSheet(sheet.fsheet);
    const selected = this.fbook.getActiveRange()?.getRange();
    sheet.area(area).facade();
    void this.api.executeCommand(command, { range: toUniver(area) }); // does its work before it returns
    // A selection's own range does not say which sheet it is in, which Univer asks for.
    if (selected) sheet.area(fromUniver(selected)).facade().activate();
    if (sheet.Id !== shown.getSheetId()) this.fbook.setActiveSheet(shown);
  }
  /** Whether Univer's parser gets to the end of a formula. */
  readable(formula: string): boolean {
    // Not in the parser's last form: it would keep that, without the workbook's names, and answer #NAME? ever after.
    return typeof this.#lexer.treeBuilder(formula, false) !== "string";
  }
  /** The formula as it would stand in a cell so many columns to the right and rows further down. */
  moved(formula: string, columns: number, rows: number): string {
    return this.#lexer.moveFormulaRefOffset(formula, columns, rows);
  }
  get #lexer() {
    return this.#handles.univer.__getInjector().get(this.#handles.engine.LexerTreeBuilder);
  }
  /** The cells behind the source of a validation list: an address, a name, or INDIRECT of a text. */
  listCells(source: string, home: Worksheet): Range | undefined {
    const indirect = /^INDIRECT\("([^"]*)"\)$/i.exec(source)?.[1];
    if (indirect !== undefined) return this.#structured(indirect) ?? this.listCells(indirect, home);
    const named = this.Names.find(source)?.Formula;
    if (named !== undefined) return this.#structured(named.slice(1)) ?? this.listCells(named.slice(1), home);
    const { sheet, local } = splitSheet(source);
    const owner = sheet === undefined ? home : this.Worksheets.find(sheet);
    const area = parseArea(local);
    return area && owner?.area(area);
  }
  #structured(reference: string): Range | undefined {
    const [, table = "", column = ""] = /^([^[\]]+)\[([^[\]]+)\]$/.exec(reference) ?? [];
    return this.Tables.find(table)?.Columns.find(column)?.GetDataBodyRange();
  }
  /** Has the formulas that mention a name parsed and calculated anew: Univer keeps what they meant before. */
  readAgain(name: string): void {
    const { univer, engine } = this.#handles;
    const wanted = name.toLowerCase();
    const mentions = (formula: string) => formula.toLowerCase().includes(wanted);
    const spellings = new Set([name]);
    this.rewriteFormulas((formula) => {
      if (!mentions(formula)) return formula;
      const at = formula.toLowerCase().indexOf(wanted);
      spellings.add(formula.slice(at, at + name.length));
      return formula;
    }, mentions);
    univer
      .__getInjector()
      .get(engine.IFunctionService)
      .deleteFormulaAstCacheKey(...spellings);
  }
  /** Rewrites formulas without a step on the undo stack; `always` says which are written even if unchanged. */
  rewriteFormulas(change: (formula: string) => string, always: (formula: string) => boolean = () => false): void {
    for (const sheet of this.Worksheets.all()) {
      const cellValue: Record<number, Record<number, object>> = {};
      sheet.fsheet
        .getRange(0, 0, sheet.lastRow + 1, sheet.lastColumn + 1)
        .getFormulas()
        .forEach((line, r) =>
          line.forEach((formula, c) => {
            const changed = formula && change(formula);
            if (changed !== formula || (formula !== "" && always(formula))) (cellValue[r] ??= {})[c] = { f: changed };
          }),
        );
      if (Object.keys(cellValue).length === 0) continue;
      this.run(SET_VALUES, { unitId: this.fbook.getId(), subUnitId: sheet.Id, cellValue });
    }
  }
  /** Small things that Univer has no place for; they are saved with the workbook. */
  metadata<T extends object>(part: string): T {
    return this.#metadata.read(part) as T;
  }
  setMetadata(part: string, value: object): void {
    const change = this.#metadata.change(part, value);
    this.mutate(change.redo, change.undo);
  }
  /** `Office.context.document.settings` */
  get documentSettings(): DocumentSettings {
    return {
      read: () => this.metadata("documentSettings"),
      write: (all) => this.run(...this.#metadata.command("documentSettings", all)),
    };
  }
}
