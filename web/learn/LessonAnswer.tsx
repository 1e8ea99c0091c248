import { useEffect, useRef } from "react";
import type { Piece } from "#server/domain/examination.ts";
import { AnswerInStrips } from "../answers/AnswerInStrips.tsx";
import { TurningPiece } from "../answers/TurningPiece.tsx";
import type { Answered, Examined } from "../answers/use-answer.ts";
import { Disclosure } from "../shared/ui/Disclosure.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { findAnswer } from "./judge-choice.ts";
import styles from "./LessonAnswer.module.css";
import type { Lesson, LessonChoice } from "./lesson.ts";

interface Props {
  lesson: Lesson;
  piece: Piece;
  chosen: LessonChoice;
  answer: Answered;
}

/** Unfolded strips say it themselves. */
const NOTHING: readonly string[] = [];

/** What the evidence says to a choice: words, strips with chain and sources, the other choices, and one thing to change. */
export function LessonAnswer({ lesson, piece, chosen, answer }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  // The headline speaks of the whole piece: where a lesson asks about one thing, that is told instead.
  const isOfWhole = lesson.choices.some(({ holds }) => holds.some((one) => "whole" in one));
  return (
    <section className={styles["answer"]} aria-labelledby="answer-heading">
      <h2 id="answer-heading" ref={heading} tabIndex={-1}>
        What the evidence says
      </h2>
      {answer.kind === "examined" ? <Judgement lesson={lesson} chosen={chosen} answer={answer} /> : null}
      <AnswerInStrips
        answer={answer}
        shows={lesson.shows}
        unfolds={lesson.asks}
        tells={isOfWhole ? undefined : NOTHING}
        hasLegend
      />
      {answer.kind === "examined" ? (
        <>
          <div className={styles["keep"]}>
            <h3>To keep</h3>
            <p>{lesson.keep}</p>
          </div>
          {lesson.turns && lesson.asItIs ? (
            <div className={styles["turns"]}>
              <h3>Change one thing</h3>
              <TurningPiece
                piece={piece}
                asItIs={lesson.asItIs}
                turns={lesson.turns}
                label="And if it were otherwise?"
                shows={lesson.shows}
                tells={isOfWhole ? undefined : lesson.asks}
              />
            </div>
          ) : null}
          {lesson.demonstration ? (
            <p>
              <TextLink to={`/pieces/${lesson.demonstration}`}>See the whole piece examined</TextLink>
            </p>
          ) : null}
        </>
      ) : null}
    </section>
  );
}

/** A choice as it was read, with a stop where it has none. */
const quote = ({ says }: LessonChoice): string => `“${says}${/[.?!]$/.test(says) ? "" : "."}”`;

/** Whether the choice and the evidence agree, and why; then the other choices. */
function Judgement({ lesson, chosen, answer }: Omit<Props, "piece" | "answer"> & { answer: Examined }) {
  const right = findAnswer(lesson, answer);
  if (right === undefined)
    return (
      <p className={styles["otherwise"]}>
        The evidence of this store is not what the lesson was written on, so its explanations do not fit. Here
        is what the evidence says now.
      </p>
    );
  const others = lesson.choices.filter((choice) => choice !== chosen && choice !== right);
  const isAgreed = chosen === right;
  return (
    <div className={styles["judgement"]}>
      <p>
        <b>{isAgreed ? "So it says." : "It says otherwise."}</b> You chose: {quote(chosen)} {chosen.because}
      </p>
      {isAgreed ? null : (
        <p>
          <b>The evidence says:</b> {quote(right)} {right.because}
        </p>
      )}
      {others.length > 0 ? (
        <Disclosure summary={others.length === 1 ? "And the other choice" : "And the other choices"}>
          <ul>
            {others.map((choice) => (
              <li key={choice.id}>
                <p>
                  {quote(choice)} {choice.because}
                </p>
              </li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </div>
  );
}
