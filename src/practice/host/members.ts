/** Members are looked up by the name that the client sends. One that the workbook lacks fails loudly, never silently. */
import { fail, NULL_OBJECT } from "./objects";

/** A host object as the executor sees it: names are only known at run time, so types end here. */
export type Any = any;

/** The client's own bookkeeping, which needs no answer. */
const HOUSEKEEPING = /^_ValidateArraySize$/;

export function callMember(target: Any, name: string, args: readonly unknown[]): Any {
  if (target === NULL_OBJECT) return NULL_OBJECT;
  // The client sends null for what was left out.
  if (typeof target[name] === "function") return target[name](...args.map((argument) => argument ?? undefined));
  return HOUSEKEEPING.test(name) ? null : fail("ApiNotFound", `${target.constructor.name}.${name}()`);
}

export function readMember(target: Any, name: string): Any {
  if (target === NULL_OBJECT) return NULL_OBJECT;
  const value = target[name];
  return value === undefined ? fail("ApiNotFound", `${target.constructor.name}.${name}`) : value;
}

export function setMember(target: Any, name: string, value: unknown): void {
  if (target === NULL_OBJECT) fail("ItemNotFound");
  let owner = target;
  let descriptor: PropertyDescriptor | undefined;
  while (owner && !(descriptor = Object.getOwnPropertyDescriptor(owner, name))) owner = Object.getPrototypeOf(owner);
  if (!descriptor) fail("ApiNotFound", `${target.constructor.name}.${name} (setting)`);
  if (!descriptor.set) fail("InvalidArgument", ` (${name} is read-only)`);
  target[name] = value;
}
