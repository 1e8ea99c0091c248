import type { Edit } from "../../change.ts";

/** Why something that stands may be the same as what is proposed, the surest first. */
export const ALIKE_BY = ["same claim", "same label", "same source", "same source and place"] as const;
export type AlikeBy = (typeof ALIKE_BY)[number];

/** Something of the graph that may be what is proposed. */
export interface Alike {
  readonly kind: Edit["kind"];
  readonly id: string;
  readonly by: AlikeBy;
}
