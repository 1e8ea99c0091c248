import { useSyncExternalStore } from "react";
import { id } from "#server/domain/ids.ts";
import { FeatureDrawing } from "../drawings/FeatureDrawing.tsx";
import { Button } from "../shared/ui/Button.tsx";
import { PageHeading } from "../shared/ui/PageHeading.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import styles from "./LearnPage.module.css";
import type { Lesson } from "./lesson.ts";
import { LESSONS } from "./lessons.ts";
import { forgetAll, goneThrough, watchProgress } from "./progress.ts";

const SUBJECTS = [...new Set(LESSONS.map((lesson) => lesson.subject))];
const SMALL = 72;

/** Where one learns to read the evidence: how a finding is made, and short lessons with one question each. */
export function LearnPage() {
  const gone = useSyncExternalStore(watchProgress, goneThrough);
  return (
    <article className={styles["page"]}>
      <header className={styles["head"]}>
        <PageHeading title="Learn">Learn to read what a piece shows</PageHeading>
        <p>
          <TextLink to="/method">How a finding is made</TextLink> shows on small examples how one gets from a
          saw mark to a year, and what a finding is not. The lessons below have one question each: look at the
          drawing, choose, and see the chain and its sources. The pieces are invented; the evidence is real,
          and the answers are what it says now.
        </p>
        <p>
          To take to a piece: <TextLink to="/sheets">field sheets by form</TextLink>, with what to look for on
          each part and boxes to tick.
        </p>
      </header>
      {SUBJECTS.map((subject) => (
        <section key={subject} className={styles["subject"]}>
          <h2>{subject}</h2>
          <ul>
            {LESSONS.filter((lesson) => lesson.subject === subject).map((lesson) => (
              <LessonRow key={lesson.id} lesson={lesson} isGone={gone.includes(lesson.id)} />
            ))}
          </ul>
        </section>
      ))}
      <section className={`screen-only ${styles["kept"]}`} aria-label="What is kept">
        <p role="status">
          {gone.length === 0
            ? "Which lessons you went through is kept in this browser and nowhere else."
            : "The lessons you went through are marked. That is kept in this browser and nowhere else."}
        </p>
        {gone.length > 0 ? <Button onPress={forgetAll}>Forget what I went through</Button> : null}
      </section>
    </article>
  );
}

function LessonRow({ lesson, isGone }: { lesson: Lesson; isGone: boolean }) {
  const [first] = lesson.look;
  return (
    <li className={styles["row"]}>
      <div className={styles["drawing"]} aria-hidden="true">
        {first ? <FeatureDrawing term={id<"term">(first.term)} size={SMALL} /> : null}
      </div>
      <div className={styles["words"]}>
        <h3>
          <TextLink to={`/learn/${lesson.id}`}>{lesson.title}</TextLink>
        </h3>
        <p>{lesson.question}</p>
      </div>
      {isGone ? <p className={styles["gone"]}>gone through</p> : null}
    </li>
  );
}
