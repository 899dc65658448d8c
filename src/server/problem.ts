/** What goes wrong on the way to the workshop, thrown where it is found and answered as problem details (RFC 9457). */
export class Problem extends Error {
  override readonly name = 'Problem';
  readonly status: number;
  /** Stable word for machines: `sign-in.needed`, `body.not-as-agreed`. */
  readonly code: string;
  /** What is wrong and how to mend it, in plain words. */
  readonly detail: string;
  /** More that a program may want to know; stands beside `detail` in the answer. */
  readonly facts: Readonly<Record<string, unknown>>;
  /** For the answer: `retry-after`, `www-authenticate`. */
  readonly headers: Readonly<Record<string, string>>;

  constructor(parts: ProblemParts) {
    super(parts.detail);
    this.status = parts.status;
    this.code = parts.code;
    this.detail = parts.detail;
    this.facts = parts.facts ?? {};
    this.headers = parts.headers ?? {};
  }
}

interface ProblemParts {
  readonly status: number;
  readonly code: string;
  readonly detail: string;
  readonly facts?: Readonly<Record<string, unknown>>;
  readonly headers?: Readonly<Record<string, string>>;
}
