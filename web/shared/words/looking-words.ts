import type { Aid, Move } from "../apollo/schema-types.graphql.ts";

/** What has to be moved to see a feature, with the caution that goes with it. */
export const moveWords: Readonly<Record<Move, { moved: string; caution?: string }>> = {
  NOTHING: { moved: "Nothing is moved" },
  DRAWER_OUT: { moved: "With the drawer out, or the door open" },
  PIECE_TURNED: {
    moved: "With the piece turned or lifted",
    caution: "Two people, loose parts out first, weight never on a leg or a moulding.",
  },
  SOMETHING_UNFASTENED: {
    moved: "With something unfastened",
    caution:
      "Only with the owner's leave, and by hands that do it daily: a strained screw or a torn edge is damage.",
  },
  SAMPLE_TAKEN: {
    moved: "By a sample, or by instruments",
    caution: "For a conservator or a laboratory, with the owner's written leave.",
  },
};

export const aidWords: Readonly<Record<Aid, string>> = {
  RAKING_LIGHT: "raking light",
  MIRROR: "mirror",
  LENS: "lens",
  FINGERTIP: "fingertip",
  RULE: "rule or tape",
  SQUARE: "square",
  MAGNET: "magnet",
  ULTRAVIOLET_LAMP: "ultraviolet lamp",
  LABORATORY: "laboratory",
};
