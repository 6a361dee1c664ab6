/** Number of letters to insert, drop, replace or swap with their neighbour to turn one word into another. */
function editDistance(from: string, to: string): number {
  let before: number[] = [];
  let previous = Array.from({ length: to.length + 1 }, (_, j) => j);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const replaced = previous[j - 1]! + (from[i - 1] === to[j - 1] ? 0 : 1);
      let best = Math.min(previous[j]! + 1, row[j - 1]! + 1, replaced);
      if (i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1])
        best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
    }
    before = previous;
    previous = row;
  }
  return previous[to.length]!;
}

/** The known word that was probably meant; undefined where none is near. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const wanted = word.toLowerCase().slice(0, 60);
  const ranked = known
    .map((candidate) => ({ candidate, distance: editDistance(wanted, candidate.toLowerCase()) }))
    .sort((a, b) => a.distance - b.distance);
  const best = ranked[0];
  if (!best) return undefined;
  return best.distance <= Math.max(1, Math.floor(best.candidate.length / 3)) ? best.candidate : undefined;
}
