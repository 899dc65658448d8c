/** Asks the server for JSON. A refusal is thrown with the server's own words, where it has any. */
export async function askJson<T>(path: string, signal: AbortSignal): Promise<T> {
  const answer = await fetch(path, { headers: { accept: 'application/json' }, signal });
  if (!answer.ok) throw new Error(await wordsOf(answer));
  return (await answer.json()) as T;
}

async function wordsOf(answer: Response): Promise<string> {
  const fallback = `The server answered ${answer.status}.`;
  try {
    const problem = (await answer.json()) as { detail?: unknown };
    return typeof problem.detail === 'string' ? problem.detail : fallback;
  } catch {
    return fallback;
  }
}
