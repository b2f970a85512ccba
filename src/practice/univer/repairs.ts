/** Corrections of Univer 0.25.1, each with a test in tests/practice/repairs.test.ts. Look here first when it is updated. */
import type { IUndoRedoItem } from "@univerjs/core";
import type { BaseValueObject } from "@univerjs/engine-formula";
import type { FormulaEngine, UniverCore, UniverHandles } from "./engine";

export function repair(handles: UniverHandles): void {
  repairUnfinishedBrackets(handles.engine);
  repairUndoOrder(handles.core);
  repairSort(handles);
  repairTableNames(handles.engine);
  repairQuotedText(handles.engine);
  repairShrunkSpills(handles.engine);
  forgetFormulas(handles);
  passOverRemoved(handles);
}

const repaired = new WeakSet<object>();
/** Prototypes are shared by all books of a process. */
function once(target: object, work: () => void): void {
  if (repaired.has(target)) return;
  repaired.add(target);
  work();
}

interface Lexer {
  treeBuilder(formula: string, suffix?: boolean, names?: object): object | string;
  _suffixExpressionHandler(node: unknown): boolean;
  _currentLexerNode: object;
  _resetTemp(): void;
  _squareBracketState: number;
  _tableBracketState: boolean;
}

/**
 * While someone types `=SUM(Chart[Bust])`, the cell editor parses every unfinished step. The parser forgets to reset its
 * count of open square brackets, so after `Chart[B` it takes every formula entered later for the inside of a bracket
 * and answers #N/A or #NAME?.
 */
function repairUnfinishedBrackets(engine: FormulaEngine): void {
  const lexer = engine.LexerTreeBuilder.prototype as unknown as Lexer;
  once(lexer, () => {
    const reset = lexer._resetTemp;
    lexer._resetTemp = function (this: Lexer) {
      reset.call(this);
      this._squareBracketState = 0;
      this._tableBracketState = false;
    };
    repairRememberedNames(lexer);
  });
}

/**
 * The parser remembers a formula with its names already replaced by what they stand for, by the formula's text alone:
 * the same text in another workbook, or after the name has been pointed elsewhere, gets the old cells.
 */
function repairRememberedNames(lexer: Lexer): void {
  const build = lexer.treeBuilder;
  lexer.treeBuilder = function (this: Lexer, formula, suffix = true, names?) {
    if (!suffix || !names) return build.call(this, formula, suffix, names);
    const tree = build.call(this, formula, false, names); // neither looks it up nor keeps it
    if (typeof tree === "string") return tree;
    return this._suffixExpressionHandler(this._currentLexerNode) ? this._currentLexerNode : "#VALUE!";
  };
}

interface UndoService {
  _tryBatchingElements(item: IUndoRedoItem, next: IUndoRedoItem): void;
}

/**
 * Steps that are batched into one are undone in the order in which they were done: the new sheet goes first, and the
 * table in it can no longer be removed.
 */
function repairUndoOrder(core: UniverCore): void {
  const service = core.LocalUndoRedoService.prototype as unknown as UndoService;
  once(service, () => {
    service._tryBatchingElements = (item, next) => {
      item.redoMutations.push(...next.redoMutations);
      item.undoMutations.unshift(...next.undoMutations);
    };
  });
}

interface ArrayObject {
  getArrayValue(): (BaseValueObject | null)[][];
  getRowCount(): number;
  getColumnCount(): number;
}

/**
 * SORT and SORTBY reorder the array they are given, which is the one that all formulas reading that range share. They
 * get a copy instead.
 */
function repairSort({ univer, engine }: UniverHandles): void {
  const functions = univer.__getInjector().get(engine.IFunctionService);
  for (const name of ["SORT", "SORTBY"]) {
    const executor = functions.getExecutor(name);
    if (!executor) throw new Error(`Univer has no ${name} to repair`);
    const calculate = executor.calculate.bind(executor);
    executor.calculate = (first: BaseValueObject, ...rest: BaseValueObject[]) =>
      calculate(first.isArray() ? copyOf(engine, first as unknown as ArrayObject) : first, ...rest);
  }
}

function copyOf(engine: FormulaEngine, array: ArrayObject): BaseValueObject {
  return engine.ArrayValueObject.create({
    calculateValueList: array.getArrayValue().map((row) => row.slice()),
    rowCount: array.getRowCount(),
    columnCount: array.getColumnCount(),
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

interface ReferenceFactory {
  _checkTokenIsTableReference(token: string): boolean;
}

/** A table may be called CampShirt_body or Camp.shirt; Univer takes neither for a table and answers #NAME?. */
function repairTableNames(engine: FormulaEngine): void {
  const factory = engine.ReferenceNodeFactory.prototype as unknown as ReferenceFactory;
  once(factory, () => {
    const check = factory._checkTokenIsTableReference;
    factory._checkTokenIsTableReference = function (this: ReferenceFactory, token) {
      return check.call(
        this,
        token.replace(/^[^[]*/, (name) => name.replace(/[._\\]/g, "x")),
      );
    };
  });
}

interface ValueFactory {
  create(token: string): { execute(): void; setValue(value: BaseValueObject): void };
}

/** Text in quotes is text; Univer makes a date of "7/8" and "6-12", and a number of "50%" and "1,000". */
function repairQuotedText(engine: FormulaEngine): void {
  const factory = engine.ValueNodeFactory.prototype as unknown as ValueFactory;
  once(factory, () => {
    const create = factory.create;
    factory.create = function (this: ValueFactory, token) {
      const node = create.call(this, token);
      if (/^".*"$/s.test(token)) {
        const text = token.slice(1, -1).replaceAll('""', '"');
        node.execute = () => node.setValue(engine.StringValueObject.create(text));
      }
      return node;
    };
  });
}

interface Reference {
  getArrayFormulaRange(): unknown;
  setArrayFormulaRange(ranges: unknown): void;
  getCurrentRuntimeSheetData(): { getMatrix(): object } | undefined;
  getCurrentRuntimeActiveArrayFormulaRange(): object | undefined;
  setRuntimeArrayFormulaRange(ranges: unknown): void;
  _createRange?(area: unknown): Reference;
}

/**
 * A range such as C1:C10 is made of its two cells, and forgets to take over which areas formulas have filled. Where an
 * answer has become shorter, formulas over it went on counting the cells that it no longer fills; and where it is one
 * cell now, Univer doesn't note that it was calculated anew. The class of those cells is not published: the first one
 * of them shows it.
 */
function repairShrunkSpills(engine: FormulaEngine): void {
  const base = engine.BaseReferenceObject.prototype as unknown as Reference;
  once(base, () => {
    base.getCurrentRuntimeActiveArrayFormulaRange = function (this: Reference) {
      return this.getCurrentRuntimeSheetData()?.getMatrix();
    };
    const set = base.setRuntimeArrayFormulaRange;
    base.setRuntimeArrayFormulaRange = function (this: Reference, ranges) {
      set.call(this, ranges);
      const cell = Object.getPrototypeOf(this) as Reference;
      const create = cell._createRange;
      if (create)
        once(cell, () => {
          cell._createRange = function (this: Reference, area) {
            const made = create.call(this, area);
            made.setArrayFormulaRange(this.getArrayFormulaRange());
            return made;
          };
        });
    };
  });
}

/** What makes a table or a name stand for other cells. */
const POINTED = new Set([
  "formula.mutation.set-super-table",
  "formula.mutation.remove-super-table",
  "formula.mutation.set-defined-name",
  "formula.mutation.remove-defined-name",
]);

interface Memory {
  clear(): void;
  forEach(visit: unknown): void;
}

/**
 * A parsed formula is remembered by its text, with the cells its tables stood for. When a table grows, one calculation
 * goes past what is remembered, and the next is back at the old cells: a person's new column is not there. So all is
 * forgotten whenever a table or a name comes to stand for other cells. Univer keeps the memory to itself, and its own
 * way to forget a workbook's formulas misses the long ones; but it goes through the memory, and so leads to it.
 */
function forgetFormulas({ univer, api, engine }: UniverHandles): void {
  const memory = Object.getPrototypeOf(engine.FORMULA_REF_TO_ARRAY_CACHE) as Memory;
  const generator = univer.__getInjector().get(engine.IFormulaDependencyGenerator) as unknown as {
    _disposeByUnitId(unit: string): void;
  };
  const forget = (unit: string) => {
    const { forEach } = memory;
    memory.forEach = function (this: Memory) {
      this.clear();
    };
    try {
      generator._disposeByUnitId(unit);
    } finally {
      memory.forEach = forEach;
    }
  };
  api.onCommandExecuted(({ id, params }: Readonly<{ id: string; params?: object }>) => {
    if (POINTED.has(id)) forget((params as { unitId: string }).unitId);
  });
}

interface Generator {
  readonly _dependencyTreeCache: ReadonlyMap<number, unknown>;
  readonly _dependencyManagerService: { searchDependency(range: unknown, except?: unknown): Set<number> };
}

/**
 * A formula that was taken away stays in the index of who reads which cells. Univer skips it, and complains of it in the
 * console each time.
 */
function passOverRemoved({ univer, engine }: UniverHandles): void {
  const generator = univer.__getInjector().get(engine.IFormulaDependencyGenerator) as unknown as Generator;
  const { _dependencyManagerService: manager } = generator;
  const search = manager.searchDependency.bind(manager);
  manager.searchDependency = (range, except) => {
    const found = search(range, except);
    for (const id of found) if (!generator._dependencyTreeCache.has(id)) found.delete(id);
    return found;
  };
}
