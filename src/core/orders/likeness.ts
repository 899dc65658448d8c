/**
 * The names most like `text`, best first: what a mistyped name may have meant. Likeness is Dice's
 * coefficient of letter pairs (Dice 1945, Ecology 26:297), which forgives swapped words and endings.
 */
export function mostLike(text: string, names: readonly string[], count = 3): readonly string[] {
  const wanted = letterPairs(text);
  return names
    .map((name) => ({ name, likeness: dice(wanted, letterPairs(name)) }))
    .filter(({ likeness }) => likeness > 0.2)
    .sort((a, b) => b.likeness - a.likeness || (a.name < b.name ? -1 : 1))
    .slice(0, count)
    .map(({ name }) => name);
}

/** A name as people compare it: case, accents of width and doubled spaces do not count. */
export const foldName = (name: string): string =>
  name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase();

/**
 * What a text calls by name: the one of just that name or else, where the text is the beginning of a name up to the
 * end of a word, all that begin so. `open B` calls `open B baritone`; `baritone` may call two.
 */
export function calledBy<Named extends { readonly name: string }>(
  text: string,
  known: readonly Named[],
): readonly Named[] {
  const wanted = foldName(text);
  if (wanted === '') return [];
  const same = known.filter(({ name }) => foldName(name) === wanted);
  return same.length > 0 ? same : known.filter(({ name }) => foldName(name).startsWith(`${wanted} `));
}

function letterPairs(text: string): ReadonlySet<string> {
  const letters = ` ${foldName(text)} `;
  const pairs = new Set<string>();
  for (let at = 0; at < letters.length - 1; at++) pairs.add(letters.slice(at, at + 2));
  return pairs;
}

function dice(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  let shared = 0;
  for (const pair of a) if (b.has(pair)) shared++;
  return (2 * shared) / (a.size + b.size);
}
