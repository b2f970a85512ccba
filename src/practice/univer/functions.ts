/** Makes the add-in's custom functions known to Univer: the bundle calculates, functions.json describes. */
import type { BaseFunction, BaseValueObject, IFunctionInfo } from "@univerjs/engine-formula";
import { type Bundle, ERROR_CODES, type Implementation } from "./bundle";
import { argument, type BlankCells, plainError } from "./arguments";
import type { FormulaEngine } from "./engine";
import { type Messages, reply } from "./answers";

export interface Parameter {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
}
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly Parameter[];
  /** Error cells are handed over; otherwise the first of them is the answer. */
  readonly allowErrorForDataTypeAny?: boolean;
}
/** functions.json */
export interface Metadata {
  readonly functions: readonly FunctionMetadata[];
}

export type FunctionClass = new (name: string) => BaseFunction;
export interface SheetFunctions {
  /** For the `function` option of Univer's formula plugin. */
  readonly classes: readonly [FunctionClass, string][];
  /** For its `description` option: autocomplete, and the hint under a formula. */
  readonly descriptions: readonly IFunctionInfo[];
  /** Why a cell shows an error, by sheet and cell. */
  readonly messages: Messages;
}

export interface FunctionSources {
  readonly engine: FormulaEngine;
  readonly namespace: string;
  readonly metadata: Metadata;
  readonly bundle: Bundle;
  /** What a blank cell arrives as: Excel for the web says null, Excel for Windows 0. */
  readonly blanks?: BlankCells;
}

/** @throws Error when functions.json lists a function that the bundle does not have */
export function sheetFunctions(sources: FunctionSources): SheetFunctions {
  const { namespace, metadata, bundle } = sources;
  const messages: Messages = new Map();
  const classes = metadata.functions.map((info): [FunctionClass, string] => {
    const implementation = bundle.get(info.id.toUpperCase());
    if (!implementation) throw new Error(`functions.json lists ${info.id}, but functions.js does not associate it`);
    return [functionClass(sources, info, implementation, messages), `${namespace}.${info.name}`];
  });
  // By name, so that what has been typed in full comes first in the list of suggestions: Enter takes the first.
  const byName = [...metadata.functions].sort((a, b) => (a.name < b.name ? -1 : 1));
  return { classes, descriptions: byName.map((info) => describe(sources, info)), messages };
}

function functionClass(
  { engine, blanks = null }: FunctionSources,
  info: FunctionMetadata,
  implementation: Implementation,
  messages: Messages,
): FunctionClass {
  const { parameters } = info;
  const last = parameters.at(-1)?.repeating ? parameters.at(-1) : undefined;
  const fixed = last ? parameters.slice(0, -1) : parameters;
  const required = parameters.filter(({ optional, repeating }) => !optional && !repeating).length;
  const keepErrors = info.allowErrorForDataTypeAny ?? false;
  return class extends engine.BaseFunction {
    // -1 is Univer's way of saying that a function has no parameters.
    override minParams = parameters.length > 0 ? required : -1;
    override maxParams = parameters.length === 0 ? -1 : last ? 255 : parameters.length;

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const place = { sheet: this.subUnitId ?? "", row: this.row, column: this.column };
      const convert = (parameter: Parameter, value: BaseValueObject | undefined) =>
        argument(parameter, value, { blanks, keepErrors });
      try {
        const args: unknown[] = fixed.map((parameter, at) => convert(parameter, given[at]));
        if (last) args.push(given.slice(fixed.length).map((value) => convert(last, value)));
        const result = implementation(...args, { functionName: info.id, address: undefined });
        return reply(engine, result, place, messages);
      } catch (error) {
        return reply(
          engine,
          plainError(error) ?? { type: "Error", basicValue: ERROR_CODES.invalidValue },
          place,
          messages,
        );
      }
    }
  };
}

function describe({ engine, namespace }: FunctionSources, info: FunctionMetadata): IFunctionInfo {
  const text = info.description ?? "";
  return {
    functionName: `${namespace}.${info.name}`,
    functionType: engine.FunctionType.User,
    description: text,
    abstract: text,
    functionParameter: info.parameters.map(({ name, description, optional, repeating }) => ({
      name,
      detail: description ?? "",
      example: "",
      require: optional ? 0 : 1,
      repeat: repeating ? 1 : 0,
    })),
  };
}
