interface ReadingChoice {
  readonly value: string;
  readonly label: string;
  /** Where the answers stand beside each other. */
  readonly short: string;
}

/** How a measurement around the body was taken. */
export const READING_WAYS: readonly ReadingChoice[] = [
  { value: "flat", label: "laid flat, one width (Sizewright doubles it)", short: "flat, one width" },
  { value: "flat doubled", label: "laid flat, already doubled", short: "flat, doubled" },
  { value: "around", label: "all around", short: "all around" },
];

export const READING_STATES: readonly ReadingChoice[] = [
  { value: "washed", label: "washed and dried", short: "washed and dried" },
  { value: "unwashed", label: "not washed yet", short: "not washed yet" },
];
