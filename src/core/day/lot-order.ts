/** For each machine the lots it is to make, first to last. */
export type LotOrder = readonly { readonly machineId: string; readonly lotIds: readonly string[] }[];
