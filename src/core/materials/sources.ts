/** Key of a source in the list of sources. */
export type SourceKey = string;
