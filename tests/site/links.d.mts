/** Faults of all pages in a folder, one line each; `base` is the path under which the site is served. */
export function linkFaults(folder: string, base: string): { pages: number; links: number; faults: string[] };
