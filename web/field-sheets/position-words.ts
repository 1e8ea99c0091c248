import type { Position } from "../shared/apollo/schema-types.graphql.ts";

interface PositionWords {
  readonly title: string;
  /** How one comes there without doing harm. */
  readonly how: string;
}

/** Where one stands or what one has opened, as a heading, with how to come there. */
export const positionWords: Readonly<Record<Position, PositionWords>> = {
  FRONT: {
    title: "As it stands",
    how: "Daylight first, then a lamp held low at the side. Nothing is moved.",
  },
  DRAWERS_OUT: {
    title: "Drawers out, doors open",
    how: "Draw with both hands and lay each drawer on a cloth, in its order. Look at what has come out, then into the case. Force nothing that sticks.",
  },
  BACK: {
    title: "From behind",
    how: "Two people lift it off the wall by the carcase or the rails; never drag it on its feet.",
  },
  UNDERNEATH: {
    title: "From underneath",
    how: "Loose parts, marble and glass off first, then two people, onto a blanket, weight never on a leg or a moulding. If that is not safe: a mirror and a lamp from the floor.",
  },
};
