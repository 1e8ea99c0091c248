/** Where one stands, or what one has opened, to look at a piece: in the order in which one goes round it. */
export const POSITIONS = ["front", "drawers out", "back", "underneath"] as const;
export type Position = (typeof POSITIONS)[number];
