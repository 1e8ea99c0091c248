import type { PartSummary } from "#server/domain/report.ts";
import type { PieceFile } from "../answers/read-piece-file.ts";
import type { Turn } from "../answers/turn-piece.ts";
import type { StripMark } from "../strips/strip-row.ts";

/** What a whole piece comes to, as its headline says it. */
export type Whole = "cannot-be" | "unusual" | "nothing-against" | "does-not-discriminate";

/** What the engine has to say for a choice to be right. */
export type Condition =
  | {
      readonly observation: string;
      readonly mark: StripMark;
      /** Open only because sources disagree, or not; left out where that is not asked. */
      readonly disputed?: boolean;
    }
  /** A feature that would void the finding, if it were found. */
  | { readonly observation: string; readonly voidedBy: string }
  | { readonly part: string; readonly speaks: PartSummary["speaks"] }
  | { readonly whole: Whole };

export interface LessonChoice {
  readonly id: string;
  readonly says: string;
  /** Term whose drawing stands beside it. */
  readonly drawing?: string;
  readonly holds: readonly Condition[];
  readonly because: string;
}

/** A lesson as its file holds it: docs/formats/lesson.schema.json. It has a piece of its own, or names a demonstration. */
export interface Lesson {
  readonly id: string;
  readonly subject: string;
  readonly title: string;
  readonly before: readonly string[];
  readonly piece?: PieceFile;
  readonly demonstration?: string;
  readonly shows: readonly string[];
  readonly asks: readonly string[];
  readonly look: readonly { readonly term: string; readonly says: string }[];
  readonly question: string;
  readonly choices: readonly LessonChoice[];
  /** The choice its words were written for; whether it is right, the engine says. */
  readonly answer: string;
  readonly keep: string;
  readonly asItIs?: string;
  readonly turns?: readonly Turn[];
}
