import { useMemo, useState } from "react";
import { id } from "#server/domain/ids.ts";
import { ActionButton } from "../actions/ActionButton.tsx";
import { printPage } from "../actions/print-page.ts";
import { useAnswer } from "../answers/use-answer.ts";
import { FeatureDrawing } from "../drawings/FeatureDrawing.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { LessonAnswer } from "./LessonAnswer.tsx";
import styles from "./LessonView.module.css";
import type { Lesson } from "./lesson.ts";
import { LESSONS, pieceOfLesson } from "./lessons.ts";
import { markGoneThrough } from "./progress.ts";
import { Question } from "./Question.tsx";

const LARGE = 220;

/** One lesson: what is before one, drawn; one question; and after a choice what the evidence says, with chain and sources. */
export function LessonView({ lesson }: { lesson: Lesson }) {
  const piece = useMemo(() => pieceOfLesson(lesson), [lesson]);
  const answer = useAnswer(piece);
  /** The choice the answer was asked with; none until then. */
  const [asked, setAsked] = useState<string>();
  const next = LESSONS[LESSONS.indexOf(lesson) + 1];
  const chosen = lesson.choices.find((choice) => choice.id === asked);
  return (
    <article className={styles["lesson"]}>
      <header className={styles["head"]}>
        <nav aria-label="Where it stands" className={styles["kicker"]}>
          <ol>
            <li>
              <TextLink to="/learn">learn</TextLink>
            </li>
            <li>{lesson.subject}</li>
          </ol>
        </nav>
        <PageHeading title={lesson.title}>{lesson.title}</PageHeading>
      </header>
      <div className={styles["before"]}>
        <div className={styles["words"]}>
          {lesson.before.map((line) => (
            <p key={line}>{line}</p>
          ))}
          <p className={styles["invented"]}>Invented for teaching: no such object exists.</p>
        </div>
        <div className={styles["drawings"]}>
          {lesson.look.map(({ term, says }) => (
            <figure key={term}>
              <FeatureDrawing term={id<"term">(term)} size={LARGE} />
              <figcaption>
                {says} <TextLink to={`/terms/${term}`}>More of it</TextLink>
              </figcaption>
            </figure>
          ))}
        </div>
      </div>
      <Question
        lesson={lesson}
        onAsk={(choice) => {
          setAsked(choice);
          markGoneThrough(lesson.id);
        }}
      />
      {chosen ? (
        <LessonAnswer key={chosen.id} lesson={lesson} piece={piece} chosen={chosen} answer={answer} />
      ) : null}
      <footer className={`screen-only ${styles["foot"]}`}>
        {next ? (
          <TextLink to={`/learn/${next.id}`}>Next: {next.title}</TextLink>
        ) : (
          <TextLink to="/learn">All lessons</TextLink>
        )}
        <ActionButton action={printPage} context={undefined} look="quiet" />
      </footer>
    </article>
  );
}
