/**
 * Carries out one batch of the office.js client.
 *
 * The client turns `Excel.run` into JSON: a list of actions on object paths. Every path is resolved by calling a
 * member of a host object that has the same (PascalCase) name, so this file knows nothing about worksheets or tables.
 */
import { type Any, callMember, readMember, setMember } from "./members";
import { fail, HostCollection, HostError, HostObject, NULL_OBJECT } from "./objects";

interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly unknown[];
}
interface ObjectPath {
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
}
interface Query {
  readonly Select?: readonly string[];
  readonly Expand?: readonly string[];
  readonly Skip?: number;
  readonly Top?: number;
}
interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly QueryInfo?: Query;
  readonly ArgumentInfo?: ArgumentInfo;
}
/** What the client sends. */
export interface Batch {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<number, ObjectPath>>;
}
/** What it wants back. */
export interface Reply {
  readonly Results: readonly { readonly ActionId: number; readonly Value: unknown }[];
  readonly Error?: {
    readonly Code: string;
    readonly Message: string;
    readonly ActionIndex: number;
    readonly HttpStatusCode: number;
  };
}

const ACTION = { instantiate: 1, query: 2, method: 3, setProperty: 4, trace: 5, queryAsJson: 7 } as const;
const PATH = { global: 1, new: 2, method: 3, property: 4, indexer: 5, reference: 6 } as const;
/** Members whose answer depends on calculated values although nothing is loaded. */
const READS_VALUES = /^(?:Get(?:UsedRange|SurroundingRegion|Spill)|CopyFrom$)/;

const pascal = (name: string) => (name.startsWith("_") ? name : name.charAt(0).toUpperCase() + name.slice(1));

export interface ExecutorOptions {
  /** Waits until formulas show the effect of everything written so far. */
  readonly settle?: () => Promise<void>;
  /** Lets the host treat a whole batch as one thing, for instance as one step of undo. */
  readonly around?: (work: () => Promise<Reply>) => Promise<Reply>;
  /** Asked before each batch: an error stands for the batch, for instance while a cell is being edited. */
  readonly refuse?: (batch: Batch) => HostError | undefined;
}

export class Executor {
  readonly #references = new Map<string, HostObject>();
  #nextReference = 1;
  #queue: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly root: Any,
    private readonly options: ExecutorOptions = {},
  ) {}

  /** How many ranges the client has asked to be remembered and not yet given back. */
  get referenceCount(): number {
    return this.#references.size;
  }

  /** Batches run one after the other, as in Excel, although each may have to wait for a calculation. */
  run(batch: Batch): Promise<Reply> {
    const { around = (work) => work() } = this.options;
    const reply = this.#queue.then(() => around(() => this.#carryOut(batch)));
    this.#queue = reply.catch(() => undefined);
    return reply;
  }

  async #carryOut(batch: Batch): Promise<Reply> {
    const objects = new Map<number, unknown>();
    const Results: { ActionId: number; Value: unknown }[] = [];
    const refused = this.options.refuse?.(batch);
    if (refused) return { Results, Error: replyError(refused, 0) };
    for (const [index, action] of batch.Actions.entries()) {
      try {
        if (this.#needsValues(action, batch, objects)) await this.options.settle?.();
        Results.push({ ActionId: action.Id, Value: (await this.#act(action, batch, objects)) ?? null });
      } catch (error) {
        return { Results, Error: replyError(error, index) };
      }
    }
    return { Results };
  }

  #needsValues(action: Action, batch: Batch, done: ReadonlyMap<number, unknown>): boolean {
    if (action.ActionType === ACTION.query || action.ActionType === ACTION.queryAsJson) return true;
    if (READS_VALUES.test(action.Name)) return true;
    for (let id = action.ObjectPathId; id && !done.has(id); id = batch.ObjectPaths[id]?.ParentObjectPathId ?? 0) {
      if (READS_VALUES.test(batch.ObjectPaths[id]?.Name ?? "")) return true;
    }
    return false;
  }

  async #act(action: Action, batch: Batch, objects: Map<number, unknown>): Promise<unknown> {
    if (action.ActionType === ACTION.trace) return null;
    const resolve = (id: number): Any => {
      if (!objects.has(id)) objects.set(id, this.#follow(batch.ObjectPaths[id], resolve) ?? NULL_OBJECT);
      return objects.get(id);
    };
    const target = resolve(action.ObjectPathId);
    const args = argumentsOf(action.ArgumentInfo, resolve);
    switch (action.ActionType) {
      case ACTION.instantiate:
        return this.#identity(target);
      case ACTION.query:
        return this.#project(target, action.QueryInfo ?? {});
      case ACTION.setProperty:
        return setMember(target, action.Name, args[0]);
      case ACTION.method: {
        if (action.Name === "_KeepReference") return null; // #identity() has remembered it already
        if (action.Name === "_RemoveReference") return void this.#references.delete(args[0] as string);
        const result = await callMember(target, action.Name, args);
        return result instanceof HostObject || result === NULL_OBJECT ? this.#identity(result) : result;
      }
      default:
        return fail("ApiNotFound", `action type ${action.ActionType}`);
    }
  }

  #follow(path: ObjectPath | undefined, resolve: (id: number) => Any): Any {
    if (!path) return NULL_OBJECT;
    const parent = () => resolve(path.ParentObjectPathId);
    const args = () => argumentsOf(path.ArgumentInfo, resolve);
    switch (path.ObjectPathType) {
      case PATH.global:
        return this.root;
      case PATH.new:
        return this.root.NewObject?.(path.Name) ?? fail("ApiNotFound", path.Name);
      case PATH.method:
        return callMember(parent(), path.Name, args());
      case PATH.indexer:
        return callMember(parent(), "GetItem", args());
      case PATH.property:
        return readMember(parent(), path.Name);
      case PATH.reference:
        return this.#references.get(path.Name) ?? fail("InvalidReference");
      default:
        return NULL_OBJECT;
    }
  }

  #identity(target: Any): Record<string, unknown> | null {
    if (target === NULL_OBJECT) return null;
    const result: Record<string, unknown> = {};
    if (target?.tracked) {
      target.referenceId ??= `r${this.#nextReference++}`;
      this.#references.set(target.referenceId, target);
      result["_ReferenceId"] = target.referenceId;
    }
    if (target?.Id !== undefined) result["Id"] = target.Id;
    return result;
  }

  /** `load`: the wanted properties as plain data, nested objects included. */
  #project(target: Any, query: Query): Record<string, unknown> | null {
    if (target === NULL_OBJECT || target === null || target === undefined) return null;
    const select = [
      ...(query.Select?.length ? query.Select : ["*"]),
      ...(query.Expand ?? []).map((name) => `${name}/*`),
    ];
    if (target instanceof HostCollection) return this.#projectCollection(target, query, select);
    const result: Record<string, unknown> = { ...this.#identity(target) };
    const nested = new Map<string, string[]>();
    for (const wanted of select) {
      const [head = "*", ...rest] = wanted.split("/");
      if (head === "*" || head === "$all") {
        for (const key of target.scalars ?? []) result[key] = target[key];
        continue;
      }
      const key = pascal(head);
      const value = readMember(target, key);
      if (value instanceof HostObject || value === NULL_OBJECT) {
        nested.set(key, [...(nested.get(key) ?? []), rest.join("/") || "*"]);
      } else result[key] = value;
    }
    for (const [key, Select] of nested) result[key] = this.#project(target[key], { Select });
    return result;
  }

  #projectCollection(target: HostCollection<Any>, query: Query, select: readonly string[]): Record<string, unknown> {
    const skip = query.Skip ?? 0;
    const items = target.all().slice(skip, query.Top ? skip + query.Top : undefined);
    const own = select.filter((name) => !/^items\//.test(name) && name !== "items" && pascal(name) in target);
    const Select = select.filter((name) => !own.includes(name)).map((name) => name.replace(/^items\//, ""));
    const result: Record<string, unknown> = {};
    if (Select.length > 0) {
      result["_Items"] = items.map((item, _Index) => ({
        ...this.#project(item, { Select: Select.map((name) => (name === "items" ? "*" : name)) }),
        ...this.#identity(item),
        _Index,
      }));
    }
    for (const name of own) result[pascal(name)] = readMember(target, pascal(name));
    if (select.includes("*")) result["Count"] = target.Count;
    return result;
  }
}

function replyError(error: unknown, ActionIndex: number) {
  const known = error instanceof HostError;
  const Code = known ? error.code : "GeneralException";
  const Message = known
    ? error.message
    : `Practice workbook: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
  return { Code, Message, ActionIndex, HttpStatusCode: Code === "ItemNotFound" ? 404 : 400 };
}

/** Arguments may be objects of the same batch: those are sent as the number of their path. */
function argumentsOf(info: ArgumentInfo | undefined, resolve: (id: number) => Any): unknown[] {
  const convert = (value: unknown, ids: unknown): unknown => {
    if (Array.isArray(value)) return value.map((item, at) => convert(item, Array.isArray(ids) ? ids[at] : 0));
    return typeof ids === "number" && ids > 0 ? resolve(ids) : value;
  };
  return (info?.Arguments ?? []).map((value, at) => convert(value, info?.ReferencedObjectPathIds?.[at] ?? 0));
}
