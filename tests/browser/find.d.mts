export function findBrowser(env?: Readonly<Record<string, string | undefined>>): string | undefined;
