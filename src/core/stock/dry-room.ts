/** What a dry room is held to. */
export interface DryRoomLimits {
  readonly leastC: number;
  readonly mostC: number;
  /** Share of saturation, 0 to 1. */
  readonly mostHumidity: number;
}

/**
 * Where the shop has settled nothing: a room to sit in, and air in which bright steel stays bright. Common practice, no
 * source.
 */
export const DRY_ROOM_PRACTICE: DryRoomLimits = { leastC: 15, mostC: 27, mostHumidity: 0.5 };

/** Whether a reading lies within the limits; their edges do. */
export const isDryEnough = (
  { temperatureC, relativeHumidity }: { readonly temperatureC: number; readonly relativeHumidity: number },
  { leastC, mostC, mostHumidity }: DryRoomLimits,
): boolean => temperatureC >= leastC && temperatureC <= mostC && relativeHumidity <= mostHumidity;
