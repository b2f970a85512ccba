/** A checker for the add-in's manifest: what the store's own validator would say, without asking anyone outside. */
import { parseDocument } from "htmlparser2";

interface Node {
  readonly name?: string;
  readonly attribs?: Record<string, string>;
  readonly children?: Node[];
  readonly data?: string;
}

/** Sentences about everything that is wrong; none when the manifest is sound. `files` are the paths present in dist. */
export function manifestFaults(
  xml: string,
  { files, development }: { files: ReadonlySet<string>; development: boolean },
): string[] {
  const faults: string[] = [];
  const nodes = flatten(parseDocument(xml, { xmlMode: true }) as unknown as Node);
  const named = (name: string) => nodes.filter((node) => node.name === name);
  const text = (name: string) =>
    named(name)[0]
      ?.children?.map((child) => child.data ?? "")
      .join("") ?? "";

  const defined = new Map<string, Node>();
  for (const node of nodes.filter((item) => /^bt:(?:Image|Url|String)$/.test(item.name ?? "") && item.attribs?.id)) {
    const id = node.attribs!.id!;
    if (defined.has(id)) faults.push(`${id} is defined twice.`);
    if (id.length > 32) faults.push(`${id} is longer than 32 characters.`);
    defined.set(id, node);
  }
  const used = new Set(nodes.flatMap((node) => (node.attribs?.resid ? [node.attribs.resid] : [])));
  for (const id of used) if (!defined.has(id)) faults.push(`${id} is used and not defined.`);
  for (const id of defined.keys()) if (!used.has(id)) faults.push(`${id} is defined and not used.`);
  const controls = nodes
    .filter((node) => /^(?:Group|Control|OfficeTab)$/.test(node.name ?? ""))
    .map((node) => node.attribs?.id);
  if (new Set(controls).size !== controls.length) faults.push("Two controls have one id.");

  for (const [parent, limit] of [
    ["bt:ShortStrings", 125],
    ["bt:LongStrings", 250],
  ] as const)
    for (const node of named(parent)
      .flatMap(flatten)
      .filter((item) => item.name === "bt:String"))
      if ((node.attribs?.DefaultValue ?? "").length > limit)
        faults.push(`${node.attribs?.id} is longer than ${limit} characters.`);

  const page = named("Page")
    .flatMap(flatten)
    .find((node) => node.name === "SourceLocation")?.attribs?.resid;
  const runtime = named("Runtime")[0]?.attribs?.resid;
  if (!page || page !== runtime)
    faults.push("Page and Runtime must name one address: one page for pane and functions.");
  const namespace = defined.get(named("Namespace")[0]?.attribs?.resid ?? "")?.attribs?.DefaultValue ?? "";
  if (!/^[a-z]{1,32}$/i.test(namespace)) faults.push(`The namespace ${namespace} must be letters only.`);
  if (!/^\d+\.\d+\.\d+\.\d+$/.test(text("Version"))) faults.push("The version must have four numbers.");
  if (!/^[\da-f]{8}(?:-[\da-f]{4}){3}-[\da-f]{12}$/.test(text("Id"))) faults.push("The id must be a lower-case GUID.");

  const addresses = nodes
    .flatMap((node) => Object.values(node.attribs ?? {}))
    .filter((value) => /^https?:\/\//.test(value) && !/microsoft\.com|w3\.org/.test(value));
  const base = addresses.find((item) => item.endsWith("/taskpane.html"))?.replace(/taskpane\.html$/, "") ?? "";
  for (const item of new Set(addresses)) {
    if (!item.startsWith("https://")) faults.push(`${item} is not https.`);
    if (!development && /localhost|127\.0\.0\.1/.test(item)) faults.push(`${item} is on this machine.`);
    if (!item.startsWith(base)) faults.push(`${item} is on another host than the pane.`);
    else if (!files.has(item.slice(base.length))) faults.push(`${item} is not in dist.`);
  }
  for (const size of [16, 32, 80])
    if (!named("bt:Image").some((node) => node.attribs?.size === String(size)))
      faults.push(`No icon of ${size} pixels.`);
  return faults;
}

function flatten(node: Node): Node[] {
  return [node, ...(node.children ?? []).flatMap(flatten)];
}
