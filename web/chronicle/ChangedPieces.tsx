import { Link } from "wouter";
import type { ShiftLine } from "#server/domain/shift-words.ts";
import { sayDay } from "../shared/words/say-day.ts";
import styles from "./chronicle.module.css";

/** A piece of which something that its answer is read from changed. */
export interface ChangedPiece {
  readonly examination: string;
  readonly title: string;
  readonly why: "signed" | "followed" | "here";
  readonly signedAt?: string;
  readonly since: number;
  readonly lines: readonly ShiftLine[];
  readonly headlineBefore?: string;
  readonly says: string;
}

/** The pieces that changed, each in a sentence, then what is said otherwise. */
export const ChangedPieces = ({ pieces }: { pieces: readonly ChangedPiece[] }) => (
  <section className={styles["section"]} aria-labelledby="pieces">
    <h2 id="pieces">Your pieces</h2>
    {pieces.length === 0 ? <p className={styles["note"]}>Nothing changed under any of them.</p> : null}
    <ul className={styles["list"]}>
      {pieces.map(({ examination, title, signedAt, since, lines, headlineBefore, says }) => (
        <li key={examination}>
          <h3>
            <Link href={`/pieces/${examination}`}>{title}</Link>
          </h3>
          <p className={styles["says"]}>{says}</p>
          {lines.length > 1 ? (
            <ul className={styles["lines"]}>
              {lines.map(({ kind, strip, says: about, before, now }) => (
                <li key={`${kind} ${strip} ${about}`}>
                  {about}: <strong>now {now}</strong>, it was {before}
                </li>
              ))}
            </ul>
          ) : null}
          {headlineBefore === undefined ? null : (
            <p className={styles["beside"]}>The conclusion was: {headlineBefore}</p>
          )}
          <p className={styles["beside"]}>
            {signedAt === undefined ? "" : `Signed ${sayDay(signedAt)} · `}since revision {since}
          </p>
        </li>
      ))}
    </ul>
  </section>
);
