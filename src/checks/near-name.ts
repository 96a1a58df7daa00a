/** The known name that a misspelt one most likely means; undefined when none is near. */
export function nearName(name: string, known: readonly string[]): string | undefined {
  const wanted = simplified(name.slice(0, 80));
  let best: string | undefined;
  // Up to a third of the letters may be wrong, and one at least.
  let least = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(wanted, simplified(candidate));
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

function simplified(name: string): string {
  return name.toLowerCase().replace(/[\s_-]/g, '');
}

/** Insertions, deletions, substitutions and exchanges of neighbours that turn one text into the other. */
function editDistance(a: string, b: string): number {
  let earlier: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const substituted = (row[j - 1] as number) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const exchanged = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      next.push(
        Math.min(
          substituted,
          (row[j] as number) + 1,
          (next[j - 1] as number) + 1,
          exchanged ? (earlier[j - 2] as number) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    earlier = row;
    row = next;
  }
  return row[b.length] as number;
}
