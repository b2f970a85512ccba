/** What Excel keeps and Univer does not: in the workbook's own metadata, saved with it, and undone with the rest. */
import type { IMutationInfo } from "@univerjs/core";
import type { FWorkbook } from "@univerjs/sheets/facade";
import type { UniverHandles } from "../engine";

const COMMAND = "practice.mutation.set-metadata";
const MUTATION = 2; // Univer's CommandType

interface Params {
  readonly unitId: string;
  readonly part: string;
  readonly value: object;
}

export class Metadata {
  constructor(
    { univer, core }: UniverHandles,
    private readonly fbook: FWorkbook,
  ) {
    const commands = univer.__getInjector().get(core.ICommandService);
    if (commands.hasCommand(COMMAND)) return;
    commands.registerCommand({
      id: COMMAND,
      type: MUTATION,
      handler: (_accessor: unknown, params: object) => {
        const { part, value } = params as Params;
        this.fbook.setCustomMetadata({ ...this.fbook.getCustomMetadata(), [part]: value });
        return true;
      },
    });
  }
  read(part: string): object {
    return (this.fbook.getCustomMetadata()?.[part] as object | undefined) ?? {};
  }
  command(part: string, value: object): [string, Params] {
    return [COMMAND, { unitId: this.fbook.getId(), part, value }];
  }
  change(part: string, value: object): { readonly redo: IMutationInfo; readonly undo: IMutationInfo } {
    const [id, params] = this.command(part, value);
    return { redo: { id, params }, undo: { id, params: { ...params, value: this.read(part) } } };
  }
}

/** The same entries but one. */
export function without(all: object, key: string): object {
  return Object.fromEntries(Object.entries(all).filter(([name]) => name !== key));
}
