import { TextLink } from "../shared/ui/TextLink.tsx";
import { basisWords } from "../shared/words/claim-words.ts";
import { aidWords, moveWords } from "../shared/words/looking-words.ts";
import type { LookingNotesFragment } from "./LookingNotes.graphql.ts";
import styles from "./LookingNotes.module.css";
import reading from "./reading.module.css";

/** How a feature is looked for, what it is mistaken for and what innocent causes it has, with the basis of the notes. */
export function LookingNotes({ looking }: { looking: LookingNotesFragment }) {
  const { moved, caution } = moveWords[looking.move];
  return (
    <section className={reading["section"]}>
      <h2>How to look</h2>
      <dl className={styles["notes"]}>
        <div>
          <dt>
            {moved}
            {looking.aids.length > 0 ? (
              <span className={styles["aids"]}>{looking.aids.map((aid) => aidWords[aid]).join(", ")}</span>
            ) : null}
          </dt>
          <dd>
            <p>{looking.how}</p>
            {caution ? <p className={styles["caution"]}>Caution: {caution}</p> : null}
          </dd>
        </div>
        {looking.mistakenFor.length > 0 ? (
          <div>
            <dt>Mistaken for</dt>
            <dd>
              <ul className={styles["alike"]}>
                {looking.mistakenFor.map(({ what, term, apart }) => (
                  <li key={what}>
                    <b>{term ? <TextLink to={`/terms/${term.id}`}>{what}</TextLink> : what}</b>
                    <span>{apart}</span>
                  </li>
                ))}
              </ul>
            </dd>
          </div>
        ) : null}
        {looking.innocent ? (
          <div>
            <dt>Innocent causes</dt>
            <dd>{looking.innocent}</dd>
          </div>
        ) : null}
      </dl>
      <p className={styles["basis"]}>These notes: {basisWords[looking.basis]}.</p>
    </section>
  );
}
