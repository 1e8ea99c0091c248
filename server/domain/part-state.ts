/** What a part can be to the piece: of its first making, put in since, taken from an earlier piece, or worked over. */
export const PART_STATES = ["original", "later", "reused", "reworked"] as const;
export type PartState = (typeof PART_STATES)[number];
