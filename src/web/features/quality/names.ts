/** The name of what an id stands for; the id itself where it is not among what was told. */
export const nameIn = (
  names: readonly { readonly id: string; readonly name: string }[],
  id: string,
): string => names.find((each) => each.id === id)?.name ?? id;
