/** Gives a promise that is asked for once and then kept, however many ask. A failure is not kept: the next who asks
 * tries again. */
export function workedOutOnce<T>(workOut: () => Promise<T>): () => Promise<T> {
  let kept: Promise<T> | undefined;
  return () => {
    kept ??= workOut().catch((fault: unknown) => {
      kept = undefined;
      throw fault;
    });
    return kept;
  };
}
